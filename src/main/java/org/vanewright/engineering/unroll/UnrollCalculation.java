package org.vanewright.engineering.unroll;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SectionSpec;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.wing.WingPanel;

/** Places of one panel's skin on its flat sheet, from numbers as a person or program gives them. */
public final class UnrollCalculation {
    static final int MOST_POINTS = 5000;

    /** 1 mm per metre: what a tape on a wing resolves. Common practice, no source. */
    private static final double NOTICEABLE_STRAIN = 0.001;

    /** A chord that misses its unit length by more than this was probably given in another unit. */
    private static final double UNIT_CHORD_SLACK = 0.02;

    private static final String FRAME = " Sheet: origin at the root leading edge, y along the leading edge outboard,"
            + " x square to it and rearward over the skin, mm.";
    private static final String EXACT_METHOD = "Both sections have one shape and there is no twist, so the skin is a"
            + " cylinder or a cone and rolls out without strain: distance from the apex (or along the generators) and"
            + " swept angle (or arc square to them), integrated over the skin's arc length by Gauss-Legendre"
            + " quadrature.";
    private static final String STRIP_METHOD = "The skin is twisted or blended and cannot be developed exactly. It is"
            + " laid flat by triangulated strips between straight rulings of equal chord fraction, in the limit of"
            + " narrow strips: rulings and both end sections keep their lengths; the strain is what is left square to"
            + " the rulings.";
    private static final List<String> SOURCES = List.of(
            "D. J. Struik, Lectures on Classical Differential Geometry, 2nd ed., 1961, section 2-4"
                    + " (developable surfaces)",
            "M. Abramowitz, I. A. Stegun (eds.), Handbook of Mathematical Functions, 1964, 25.4.30"
                    + " (Gauss-Legendre quadrature)");

    private UnrollCalculation() {}

    /**
     * @throws InvalidInputException fields {@code panel.spanMm}, {@code panel.rootChordMm}, {@code panel.tipChordMm},
     *     {@code panel.tipLeadingEdgeOffsetMm}, {@code panel.twistDeg}, {@code panel.rootSection…},
     *     {@code panel.tipSection…}, {@code side}, {@code points[i].spanFraction}, {@code points[i].chordFraction}
     */
    public static UnrollResult run(UnrollRequest request) {
        Checks checks = new Checks();
        WingPanel panel = panel(checks, request.panel());
        SurfaceSide side = request.side();
        checks.present("side", side, "UPPER or LOWER");
        List<Point2> places = places(checks, request.points());
        checks.throwIfAny();
        if (panel == null || side == null) {
            throw new IllegalStateException("a missing part went unnoticed");
        }
        FlatSkin skin = Unroller.unroll(panel, side);
        List<Point2> points =
                places.stream().map(p -> skin.toFlat(p.x(), p.y())).toList();
        return new UnrollResult(
                points,
                skin.maximumStrain(),
                (skin.developable() ? EXACT_METHOD : STRIP_METHOD) + FRAME,
                SOURCES,
                validity(panel, side, skin.largestStrain()));
    }

    private static @Nullable WingPanel panel(Checks checks, UnrollRequest.@Nullable Panel given) {
        if (given == null) {
            checks.present("panel", null, "a panel");
            return null;
        }
        Checks inside = new Checks();
        PanelRules.span(inside, "spanMm", given.spanMm());
        PanelRules.chord(inside, "rootChordMm", given.rootChordMm());
        PanelRules.chord(inside, "tipChordMm", given.tipChordMm());
        PanelRules.offset(inside, "tipLeadingEdgeOffsetMm", given.tipLeadingEdgeOffsetMm());
        PanelRules.twist(inside, "twistDeg", given.twistDeg());
        Section root = section(inside, "rootSection", given.rootSection());
        Section tip = section(inside, "tipSection", given.tipSection());
        checks.addUnder("panel", inside.problems());
        if (!inside.isClean() || root == null || tip == null) {
            return null;
        }
        return new WingPanel(
                0,
                number(given.spanMm()),
                number(given.rootChordMm()),
                number(given.tipChordMm()),
                0,
                number(given.tipLeadingEdgeOffsetMm()),
                root,
                tip,
                number(given.twistDeg()));
    }

    private static double number(@Nullable Double checked) {
        return checked == null ? Double.NaN : checked;
    }

    private static @Nullable Section section(Checks checks, String field, @Nullable SectionSpec spec) {
        if (spec == null) {
            checks.present(field, null, "a NACA number or coordinates");
            return null;
        }
        try {
            return Sections.of(spec);
        } catch (InvalidInputException e) {
            checks.addUnder(field, e.problems());
            return null;
        }
    }

    /** Span and chord fraction of each place. */
    private static List<Point2> places(Checks checks, @Nullable List<UnrollRequest.@Nullable Place> given) {
        List<Point2> places = new ArrayList<>();
        int count = given == null ? 0 : given.size();
        boolean few = checks.require(
                count >= 1 && count <= MOST_POINTS, "points", count + " points", "1 to " + MOST_POINTS + " points");
        if (!few || given == null) {
            return places;
        }
        for (int i = 0; i < count; i++) {
            UnrollRequest.Place place = given.get(i);
            String field = "points[" + i + "]";
            if (checks.present(field, place, "a span fraction and a chord fraction") && place != null) {
                Double span = place.spanFraction();
                Double chord = place.chordFraction();
                boolean spanOk = checks.range(field + ".spanFraction", span, 0, 1, "");
                boolean chordOk = checks.range(field + ".chordFraction", chord, 0, 1, "");
                if (spanOk && chordOk) {
                    places.add(new Point2(number(span), number(chord)));
                }
            }
        }
        return places;
    }

    private static List<String> validity(WingPanel panel, SurfaceSide side, Strain strain) {
        List<String> warnings = new ArrayList<>();
        if (strain.value() > NOTICEABLE_STRAIN) {
            warnings.add(String.format(
                    Locale.ROOT,
                    "Lengths on the flat sheet are off by up to %.2f %%, most at span fraction %.2f, chord fraction"
                            + " %.2f; measure on the wing there.",
                    100 * strain.value(),
                    strain.spanFraction(),
                    strain.chordFraction()));
        }
        unitChord(warnings, "rootSection", panel.innerSection(), side);
        unitChord(warnings, "tipSection", panel.outerSection(), side);
        return warnings;
    }

    private static void unitChord(List<String> warnings, String name, Section section, SurfaceSide side) {
        double front = section.atArcLength(side, 0).x();
        double rear = section.maximumX(side);
        if (Math.abs(front) > UNIT_CHORD_SLACK || Math.abs(rear - 1) > UNIT_CHORD_SLACK) {
            warnings.add(String.format(
                    Locale.ROOT,
                    "%s runs from x = %.4f to %.4f; its numbers were taken in chords, as given.",
                    name,
                    front,
                    rear));
        }
    }
}
