package org.vanewright.engineering.unroll;

/** Refuses places off the panel; a place beyond its edge by rounding alone counts as on the edge. */
final class Ranges {
    private static final double ROUNDING = 1e-9;

    private Ranges() {}

    static double fraction(String name, double value) {
        return within(name, value, 1);
    }

    /** @throws IllegalArgumentException unless 0 ≤ value ≤ high, give or take rounding */
    static double within(String name, double value, double high) {
        double slack = ROUNDING * Math.max(high, 1e-300);
        if (!(value >= -slack && value <= high + slack)) {
            throw new IllegalArgumentException(name + " " + value + " is not within 0 to " + high);
        }
        return Math.min(Math.max(value, 0), high);
    }
}
