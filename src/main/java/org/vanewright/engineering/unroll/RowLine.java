package org.vanewright.engineering.unroll;

/**
 * The line on the skin along which lengths have to stay true when the skin cannot be developed without strain.
 * Between the ends of the panel its position varies linearly with the span station. Where a distance along the skin
 * would lie beyond the trailing edge, there is no row.
 *
 * @param measure what {@code inner} and {@code outer} count
 * @param inner at the inner end of the panel
 * @param outer at the outer end of the panel
 */
public record RowLine(Measure measure, double inner, double outer) {
    /** How a chordwise position is given. */
    public enum Measure {
        /** Of the local chord, 0 to 1. */
        CHORD_FRACTION,
        /** Distance along the skin from the leading edge, mm. */
        ARC_MM
    }

    public static RowLine atChordFraction(double inner, double outer) {
        return new RowLine(Measure.CHORD_FRACTION, inner, outer);
    }

    public static RowLine atArcMm(double inner, double outer) {
        return new RowLine(Measure.ARC_MM, inner, outer);
    }

    double at(double spanFraction) {
        return inner + spanFraction * (outer - inner);
    }
}
