package org.vanewright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SectionSpec;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.section.SkinPoint;
import org.vanewright.engineering.section.SurfaceSide;

/** Heights and arc lengths on the skin of a section. */
public final class SectionCalculation {
    static final int MOST_STATIONS = 2000;

    /** A chord that misses its unit length by more than this was probably given in another unit. */
    private static final double UNIT_CHORD_SLACK = 0.02;

    /** The blunt trailing edges of one section may end this much apart. */
    private static final double REAR_END_SLACK = 1e-9;

    private static final String NACA_METHOD = "Thickness form and mean line by their published formulas, thickness laid"
            + " off square to the mean line; arc length by quadrature along the skin from the leading edge.";
    private static final String SPLINE_METHOD = "A parametric spline through the coordinates as given, neither turned"
            + " nor rescaled; the leading edge is the place farthest from the middle of the trailing edge; arc length by"
            + " quadrature along the spline.";
    private static final List<String> NACA_SOURCES = List.of(
            "E. N. Jacobs, K. E. Ward, R. M. Pinkerton, The Characteristics of 78 Related Airfoil Sections from Tests in"
                    + " the Variable-Density Wind Tunnel, NACA Report 460, 1933",
            "E. N. Jacobs, R. M. Pinkerton, Tests in the Variable-Density Wind Tunnel of Related Airfoils Having the"
                    + " Maximum Camber Unusually Far Forward, NACA Report 537, 1935",
            "I. H. Abbott, A. E. von Doenhoff, L. S. Stivers, Summary of Airfoil Data, NACA Report 824, 1945");
    private static final List<String> SPLINE_SOURCES =
            List.of("C. de Boor, A Practical Guide to Splines, 1978 (cubic spline interpolation)");

    private SectionCalculation() {}

    /**
     * @throws InvalidInputException fields {@code section…} and {@code stations[i]}: no section, an unusable one, no
     *     stations or too many, a station off the section
     */
    public static SectionResult run(SectionRequest request) {
        Checks checks = new Checks();
        SectionSpec spec = request.section();
        Section section = section(checks, spec);
        List<Double> stations = stations(checks, request.stations(), section);
        checks.throwIfAny();
        if (section == null || spec == null) {
            throw new IllegalStateException("a missing section went unnoticed");
        }
        boolean naca = spec.naca() != null;
        return new SectionResult(
                places(section, SurfaceSide.UPPER, stations),
                places(section, SurfaceSide.LOWER, stations),
                section.maximumThickness(),
                section.maximumCamber(),
                section.leadingEdgeRadius(),
                naca ? NACA_METHOD : SPLINE_METHOD,
                naca ? NACA_SOURCES : SPLINE_SOURCES,
                validity(section));
    }

    private static @Nullable Section section(Checks checks, @Nullable SectionSpec spec) {
        if (spec == null) {
            checks.present("section", null, "a section: naca or coordinates");
            return null;
        }
        try {
            return Sections.of(spec);
        } catch (InvalidInputException e) {
            checks.addUnder("section", e.problems());
            return null;
        }
    }

    private static List<Double> stations(
            Checks checks, @Nullable List<@Nullable Double> given, @Nullable Section section) {
        int count = given == null ? 0 : given.size();
        String allowed = "1 to " + MOST_STATIONS + " numbers";
        if (given == null
                || !checks.require(count >= 1 && count <= MOST_STATIONS, "stations", count + " numbers", allowed)) {
            checks.require(given != null, "stations", null, allowed);
            return List.of();
        }
        double front = section == null ? 0 : first(section);
        double rear = section == null ? 1 : last(section);
        List<Double> stations = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Double x = given.get(i);
            if (checks.range("stations[" + i + "]", x, front, rear, "") && x != null) {
                stations.add(x);
            }
        }
        return stations;
    }

    private static double first(Section section) {
        double front = Math.max(
                section.atArcLength(SurfaceSide.UPPER, 0).x(),
                section.atArcLength(SurfaceSide.LOWER, 0).x());
        // the leading edge of a NACA section is exactly 0
        return Math.abs(front) < REAR_END_SLACK ? 0 : front;
    }

    /** x = 1 is meant as the trailing edge also where one side of a slanting blunt edge ends a little before it. */
    private static double last(Section section) {
        return Math.max(section.maximumX(SurfaceSide.UPPER), section.maximumX(SurfaceSide.LOWER));
    }

    private static List<SectionResult.Place> places(Section section, SurfaceSide side, List<Double> stations) {
        double rear = section.maximumX(side);
        return stations.stream()
                .map(x -> section.atX(side, Math.min(x, rear)))
                .map(SectionCalculation::place)
                .toList();
    }

    private static SectionResult.Place place(SkinPoint p) {
        return new SectionResult.Place(p.x(), p.y(), p.arcLength());
    }

    private static List<String> validity(Section section) {
        double front = first(section);
        double rear = last(section);
        if (Math.abs(front) <= UNIT_CHORD_SLACK && Math.abs(rear - 1) <= UNIT_CHORD_SLACK) {
            return List.of();
        }
        return List.of(String.format(
                Locale.ROOT,
                "The section runs from x = %.4f to %.4f; lengths are in the coordinates' own unit, as given.",
                front,
                rear));
    }
}
