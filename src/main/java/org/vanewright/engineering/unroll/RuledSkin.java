package org.vanewright.engineering.unroll;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.wing.WingPanel;

/**
 * The skin of a twisted or blended panel, developed by triangulated strips between rulings, in the limit of narrow
 * strips: rulings stay straight and keep their lengths and their angles to the curve they cross along the row line;
 * what is left over is strain square to the rulings.
 */
final class RuledSkin implements FlatSkin {
    /** Quantities sampled over u. */
    private static final int STRAIGHT = 0;

    private static final int SQUARE = 1;
    private static final int TURNING = 2;
    private static final int STRAIN = 3;
    private static final int COUNT = 4;

    private static final double CURVATURE_STEP = 1e-4;

    /** Makes a turn of the section curve positive where the skin is convex outward. */
    private final int convexSign;

    private final Rulings rulings;
    private final LocalArc arc;
    private final RowCrossing crossing;
    private final RunningIntegral turned;
    private final RunningIntegral innerX;
    private final RunningIntegral innerY;
    private final Strain strain;

    /** @param line along which lengths stay true; without one the end sections keep theirs */
    RuledSkin(WingPanel panel, SurfaceSide side, @Nullable RowLine line, ChordRange region) {
        this.convexSign = side == SurfaceSide.UPPER ? -1 : 1;
        this.rulings = new Rulings(panel, side);
        this.arc = new LocalArc(rulings);
        this.crossing = line == null ? RowCrossing.NONE : RowCrossing.of(line, rulings, arc);
        SampledCurve grid = grid();
        this.turned = grid.integral(TURNING);
        double[][] x = new double[grid.intervals()][GaussRule.SIZE];
        double[][] y = new double[grid.intervals()][GaussRule.SIZE];
        for (int k = 0; k < grid.intervals(); k++) {
            for (int i = 0; i < GaussRule.SIZE; i++) {
                Point2 rate = new Point2(grid.sample(k, SQUARE, i), grid.sample(k, STRAIGHT, i))
                        .rotated(turned.at(grid.parameter(k, i)));
                x[k][i] = rate.x();
                y[k][i] = rate.y();
            }
        }
        this.innerX = grid.integral(x);
        this.innerY = grid.integral(y);
        this.strain = strain(grid, region);
    }

    private SampledCurve grid() {
        double[] edges = concatenated(rulings.edges(), crossing.edges());
        double chord = rulings.longestChordMm();
        return SampledCurve.of(
                u -> {
                    FlatStrip strip = strip(u);
                    return new double[] {
                        strip.ends().straight(0),
                        strip.innerSquare(),
                        strip.turning(),
                        strip.strain(0).value()
                    };
                },
                edges,
                scales(chord));
    }

    private static double[] scales(double chord) {
        double[] scale = new double[COUNT];
        Arrays.fill(scale, chord);
        scale[TURNING] = 1;
        // only looked at, never integrated
        scale[STRAIN] = Double.POSITIVE_INFINITY;
        return scale;
    }

    private static double[] concatenated(double[] a, double[] b) {
        double[] both = Arrays.copyOf(a, a.length + b.length);
        System.arraycopy(b, 0, both, a.length, b.length);
        Arrays.sort(both);
        return both;
    }

    private FlatStrip strip(double u) {
        return FlatStrip.of(rulings.at(u), crossing.at(u));
    }

    private Strain strain(SampledCurve grid, ChordRange region) {
        double from = rulings.parameter(region.from());
        double to = rulings.parameter(region.to());
        Strain worst = worse(strip(from).strain(region.from()), strip(to).strain(region.to()));
        for (int k = 0; k < grid.intervals(); k++) {
            for (int i = 0; i < GaussRule.SIZE; i++) {
                double u = grid.parameter(k, i);
                if (u > from && u < to && grid.sample(k, STRAIN, i) > worst.value()) {
                    worst = worse(worst, strip(u).strain(Rulings.chordFraction(u)));
                }
            }
        }
        return worst;
    }

    private static Strain worse(Strain a, Strain b) {
        return b.value() > a.value() ? b : a;
    }

    private Point2 flat(double spanFraction, double u) {
        return new Point2(innerX.at(u), innerY.at(u))
                .plus(outboard(u).times(spanFraction * rulings.at(u).length()));
    }

    private Point2 outboard(double u) {
        return new Point2(0, 1).rotated(turned.at(u));
    }

    private double parameterAtArc(double spanFraction, double arcMm) {
        return arc.parameter(spanFraction, Ranges.within("arcMm", arcMm, arc.lengthMm(spanFraction)));
    }

    private SkinStation station(double spanFraction, double u, double chordFraction) {
        Vector3 place = rulings.at(u).point(spanFraction);
        return new SkinStation(
                spanFraction,
                chordFraction,
                place.x(),
                place.y(),
                place.z(),
                rulings.chordMm(spanFraction),
                arc.arcMm(spanFraction, u),
                flat(spanFraction, u),
                rearward(spanFraction, u),
                outboard(u),
                curvature(spanFraction, u));
    }

    private Point2 rearward(double spanFraction, double u) {
        double inside = inside(u, 1e-6);
        FlatStrip strip = strip(inside);
        Point2 rate = new Point2(strip.square(spanFraction), strip.ends().straight(spanFraction));
        return rate.rotated(turned.at(inside)).times(1 / rate.norm());
    }

    /** Off the places where rulings stand still for an instant: the ends, and where a brow ends. */
    private double inside(double u, double margin) {
        double within = Math.min(Math.max(u, rulings.first() + margin), rulings.last() - margin);
        return Math.abs(within) < margin ? margin : within;
    }

    /** By how much the local section curve turns over a short piece of it. */
    private double curvature(double spanFraction, double u) {
        double middle = inside(u, 2 * CURVATURE_STEP);
        RulingEnds before = rulings.at(middle - CURVATURE_STEP);
        RulingEnds behind = rulings.at(middle + CURVATURE_STEP);
        Vector3 a = before.rate(spanFraction);
        Vector3 b = behind.rate(spanFraction);
        double turn = Math.atan2(b.z() * a.x() - b.x() * a.z(), a.x() * b.x() + a.z() * b.z());
        double distance =
                behind.point(spanFraction).minus(before.point(spanFraction)).norm();
        return convexSign * turn / distance;
    }

    @Override
    public Point2 toFlat(double spanFraction, double chordFraction) {
        double u = rulings.parameter(Ranges.fraction("chordFraction", chordFraction));
        return flat(Ranges.fraction("spanFraction", spanFraction), u);
    }

    @Override
    public Point2 toFlatByArc(double spanFraction, double arcMm) {
        double t = Ranges.fraction("spanFraction", spanFraction);
        return flat(t, parameterAtArc(t, arcMm));
    }

    @Override
    public SkinStation station(double spanFraction, double chordFraction) {
        double fraction = Ranges.fraction("chordFraction", chordFraction);
        return station(Ranges.fraction("spanFraction", spanFraction), rulings.parameter(fraction), fraction);
    }

    @Override
    public SkinStation stationByArc(double spanFraction, double arcMm) {
        double t = Ranges.fraction("spanFraction", spanFraction);
        double u = parameterAtArc(t, arcMm);
        return station(t, u, Rulings.chordFraction(u));
    }

    @Override
    public double arcLengthMm(double spanFraction) {
        return arc.lengthMm(Ranges.fraction("spanFraction", spanFraction));
    }

    @Override
    public Strain largestStrain() {
        return strain;
    }

    @Override
    public boolean developable() {
        return false;
    }
}
