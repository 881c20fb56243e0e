package org.vanewright.engineering.printing;

import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * How fast a machine prints, as its own last print shows.
 *
 * @param kind what the figure is
 * @param value of it
 */
public record PrintRate(Kind kind, double value) {
    /** About 15 minutes for a small piece in ABS: common practice, no source. */
    public static final PrintRate USUAL = new PrintRate(Kind.MINUTES_PER_PIECE, 15);

    /** Ways to state a rate. */
    public enum Kind {
        MINUTES_PER_PIECE("Minutes per piece", "min", 0.1, 1440),
        CM3_PER_HOUR("Material per hour", "cm³/h", 0.1, 2000);

        private final String label;
        private final String unit;
        private final double low;
        private final double high;

        Kind(String label, String unit, double low, double high) {
            this.label = label;
            this.unit = unit;
            this.low = low;
            this.high = high;
        }

        public String label() {
            return label;
        }

        public String unit() {
            return unit;
        }
    }

    /** @throws InvalidInputException for a value out of range, as {@code rate} */
    public PrintRate {
        Checks checks = new Checks();
        checks.range("rate", value, kind.low, kind.high, kind.unit);
        checks.throwIfAny();
    }

    /**
     * The rate that a finished print shows.
     *
     * @param minutes it took
     * @param pieces it gave
     * @param depositedMm3 laid down for each piece
     */
    public static PrintRate byVolume(double minutes, int pieces, double depositedMm3) {
        return new PrintRate(Kind.CM3_PER_HOUR, cm3PerHour(minutes, pieces, depositedMm3));
    }

    /** As {@link #byVolume}, in range or not. */
    public static double cm3PerHour(double minutes, int pieces, double depositedMm3) {
        return pieces * depositedMm3 / 1000 / (minutes / 60);
    }

    /** Minutes for so many pieces. */
    public double minutes(int pieces, PieceMaterial material) {
        return switch (kind) {
            case MINUTES_PER_PIECE -> pieces * value;
            case CM3_PER_HOUR -> pieces * material.depositedMm3() / 1000 / value * 60;
        };
    }
}
