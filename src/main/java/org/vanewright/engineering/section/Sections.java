package org.vanewright.engineering.section;

import java.util.List;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Makes sections from how they are written. Making one takes about a millisecond, asking one a few microseconds.
 *
 * <p>NACA sections have their leading edge, the start of the mean line, at (0, 0). On a cambered one the skin of one
 * side reaches slightly ahead of it (x &lt; 0), up to a few ten-thousandths of the chord; x = 0 means the leading edge,
 * and where that side passes an x just behind it twice, the rearmost place is meant.
 *
 * <p>Coordinates are taken as given, neither turned nor rescaled. Their leading edge is the place of the spline through
 * them farthest from the middle of the trailing edge. Where that is not (0, 0) or the chord is not 1, positions and
 * lengths are in the coordinates' own unit, and the range of x starts at the leading edge's x.
 */
public final class Sections {
    private static final int LONGEST_TITLE = 120;

    private Sections() {}

    /**
     * The section a spec describes.
     *
     * @throws InvalidInputException fields {@code naca}, {@code trailingEdge}, {@code title}, {@code coordinates} and
     *     its entries such as {@code coordinates[3][1]}: not exactly one of NACA number and coordinates, an unknown
     *     number, fewer than 11 or more than 2,000 points, a number missing or not finite, neighbours equal, an outline
     *     that crosses itself, runs clockwise or does not start and end at its trailing edge
     */
    public static Section of(SectionSpec spec) {
        String naca = spec.naca();
        List<List<Double>> coordinates = spec.coordinates();
        Checks checks = new Checks();
        checks.require(naca != null || coordinates != null, "naca", null, "a NACA number, or else coordinates");
        checks.require(naca == null || coordinates == null, "coordinates", "both given", "none beside a NACA number");
        checks.require(
                coordinates == null || spec.trailingEdge() == null,
                "trailingEdge",
                spec.trailingEdge(),
                "absent beside coordinates, which show their own");
        checks.optionalText("title", spec.title(), LONGEST_TITLE);
        checks.throwIfAny();
        if (naca != null) {
            return NacaNumber.section(naca, spec.trailingEdge());
        }
        return GivenCoordinates.section(spec, coordinates == null ? List.of() : coordinates);
    }

    /**
     * A NACA four- or five-digit section with its trailing edge as published.
     *
     * @param digits such as {@code 2412} or {@code 23012}; {@code NACA} may stand before them
     * @throws InvalidInputException field {@code naca}
     */
    public static Section naca(String digits) {
        return of(SectionSpec.naca(digits));
    }
}
