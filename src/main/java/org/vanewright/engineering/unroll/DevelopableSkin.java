package org.vanewright.engineering.unroll;

import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.section.SkinPoint;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.wing.WingPanel;

/**
 * The skin of an untwisted panel with one section shape: a cone over the section, or a cylinder where the chords are
 * equal.
 *
 * <p>With g the unit vector along the leading edge, L its length, p the inner section curve and k = (1 − c₁/c₀)/L the
 * signed inverse distance of the apex, apex = g/k, σ = |g − k p| is the apex distance of p in units of 1/k and the flat
 * polar angle about the apex is φ = k ψ with dψ = |(g − k p) × dp| / σ². The flat point of the inner curve is
 * x = σ sin φ / k, y = (1 − σ cos φ) / k; both are written so that nothing cancels as k → 0, where they become the
 * cylinder's dψ² = |dp|² − (g·dp)², y = g·p. Any other span station lies on the straight line to the apex.
 */
final class DevelopableSkin implements FlatSkin {
    private static final int FIRST_INTERVALS = 12;

    private final EndCurve curve;
    private final double chordMm;
    private final double leadingEdgeLengthMm;
    /** The inner leading edge; (0, 0, 0) unless the coordinates of the section say otherwise. */
    private final Vector3 origin;
    /** Unit vector along the leading edge. */
    private final Vector3 along;
    /** k, 1/mm; negative when the outer chord is the longer. */
    private final double apexPerMm;
    /** ψ, mm, over the arc length in chords. */
    private final RunningIntegral across;

    DevelopableSkin(WingPanel panel, SurfaceSide side) {
        this.curve = new EndCurve(panel.innerSection(), side);
        this.chordMm = panel.innerChordMm();
        this.origin = EndCurve.place(curve.atArc(0), chordMm);
        Vector3 tip = new Vector3(panel.outerLeadingEdgeMm() - panel.innerLeadingEdgeMm(), panel.spanMm(), 0);
        Vector3 leadingEdge = tip.plus(origin.times((panel.outerChordMm() - chordMm) / chordMm));
        this.leadingEdgeLengthMm = leadingEdge.norm();
        this.along = leadingEdge.times(1 / leadingEdgeLengthMm);
        this.apexPerMm = (chordMm - panel.outerChordMm()) / chordMm / leadingEdgeLengthMm;
        this.across = SampledCurve.of(
                        s -> new double[] {acrossRate(curve.atArc(s))}, edges(curve.length()), new double[] {chordMm})
                .integral(0);
    }

    /** Closer towards the leading edge, where the skin curves most. */
    private static double[] edges(double arcLength) {
        double[] edges = new double[FIRST_INTERVALS + 1];
        for (int i = 0; i <= FIRST_INTERVALS; i++) {
            double fraction = (double) i / FIRST_INTERVALS;
            edges[i] = arcLength * fraction * fraction;
        }
        return edges;
    }

    /** p, from the inner leading edge. */
    private Vector3 innerPoint(SkinPoint at) {
        return EndCurve.place(at, chordMm).minus(origin);
    }

    private Vector3 innerTangent(SkinPoint at) {
        return EndCurve.direction(at, chordMm);
    }

    /** g − k p, along the ruling outboard, length σ. */
    private Vector3 ruling(Vector3 innerPoint) {
        return along.minus(innerPoint.times(apexPerMm));
    }

    /** dψ/ds, mm per chord of arc. */
    private double acrossRate(SkinPoint at) {
        Vector3 ruling = ruling(innerPoint(at));
        return ruling.cross(innerTangent(at)).norm() / ruling.dot(ruling);
    }

    private double scale(double spanFraction) {
        return 1 - apexPerMm * leadingEdgeLengthMm * spanFraction;
    }

    private Point2 flat(double spanFraction, SkinPoint at) {
        Vector3 p = innerPoint(at);
        double sigma = ruling(p).norm();
        double psi = across.at(at.arcLength());
        double half = sinc(0.5 * apexPerMm * psi);
        double x = sigma * psi * sinc(apexPerMm * psi);
        double y = (2 * p.dot(along) - apexPerMm * p.dot(p)) / (1 + sigma)
                + 0.5 * sigma * apexPerMm * psi * psi * half * half;
        double scale = scale(spanFraction);
        return new Point2(scale * x, scale * y + spanFraction * leadingEdgeLengthMm);
    }

    private static double sinc(double angleRad) {
        return Math.abs(angleRad) < 1e-8 ? 1 : Math.sin(angleRad) / angleRad;
    }

    private SkinPoint atChord(double chordFraction) {
        return curve.atChordFraction(Ranges.fraction("chordFraction", chordFraction));
    }

    private SkinPoint atArc(double spanFraction, double arcMm) {
        double chord = chordMm * scale(spanFraction);
        return curve.atArc(Ranges.within("arcMm", arcMm, curve.length() * chord) / chord);
    }

    private SkinStation station(double spanFraction, SkinPoint at) {
        Vector3 p = innerPoint(at);
        Vector3 tangent = innerTangent(at);
        Vector3 ruling = ruling(p);
        double sigma = ruling.norm();
        double turned = apexPerMm * across.at(at.arcLength());
        double straight = ruling.dot(tangent) / sigma;
        double square = ruling.cross(tangent).norm() / sigma;
        Point2 rearward = new Point2(square, straight).rotated(turned);
        double scale = scale(spanFraction);
        double chord = chordMm * scale;
        Vector3 place = origin.plus(p.times(scale)).plus(along.times(spanFraction * leadingEdgeLengthMm));
        return new SkinStation(
                spanFraction,
                Math.min(Math.max(at.x(), 0), 1),
                place.x(),
                place.y(),
                place.z(),
                chord,
                chord * at.arcLength(),
                flat(spanFraction, at),
                rearward.times(1 / rearward.norm()),
                new Point2(0, 1).rotated(turned),
                at.curvature() / chord);
    }

    @Override
    public Point2 toFlat(double spanFraction, double chordFraction) {
        return flat(Ranges.fraction("spanFraction", spanFraction), atChord(chordFraction));
    }

    @Override
    public Point2 toFlatByArc(double spanFraction, double arcMm) {
        double t = Ranges.fraction("spanFraction", spanFraction);
        return flat(t, atArc(t, arcMm));
    }

    @Override
    public SkinStation station(double spanFraction, double chordFraction) {
        return station(Ranges.fraction("spanFraction", spanFraction), atChord(chordFraction));
    }

    @Override
    public SkinStation stationByArc(double spanFraction, double arcMm) {
        double t = Ranges.fraction("spanFraction", spanFraction);
        return station(t, atArc(t, arcMm));
    }

    @Override
    public double arcLengthMm(double spanFraction) {
        return curve.length() * chordMm * scale(Ranges.fraction("spanFraction", spanFraction));
    }

    @Override
    public Strain largestStrain() {
        return Strain.NONE;
    }

    @Override
    public boolean developable() {
        return true;
    }
}
