package org.vanewright.engineering.vane;

import org.jspecify.annotations.Nullable;

/**
 * What somebody recommends for one ratio.
 *
 * @param id short name that does not change
 * @param quantity the ratio it speaks of
 * @param arrangement the rows it speaks of
 * @param low lower end of what is recommended; null for none
 * @param high upper end; null for none
 * @param text in a sentence
 * @param citation author, title, year; null for common practice
 * @param known how its figures are known
 * @param range the conditions it comes from
 */
public record Recommendation(
        String id,
        Quantity quantity,
        Rows arrangement,
        @Nullable Double low,
        @Nullable Double high,
        String text,
        @Nullable String citation,
        Known known,
        String range) {
    /** Ratios that recommendations speak of. */
    public enum Quantity {
        HEIGHT_TO_THICKNESS("Height over boundary-layer thickness"),
        LENGTH_TO_HEIGHT("Length over height"),
        ANGLE_DEG("Angle to the air"),
        PITCH_TO_HEIGHT("Pitch over height"),
        GAP_TO_HEIGHT("Gap of a pair over height"),
        DISTANCE_TO_HEIGHT("Distance to separation over height"),
        CHORD_FRACTION("Fraction of the chord");

        private final String label;

        Quantity(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }

        /** The ratio of a row; null where the row has none. */
        public @Nullable Double of(VaneProportions row) {
            return switch (this) {
                case HEIGHT_TO_THICKNESS -> row.heightToThickness();
                case LENGTH_TO_HEIGHT -> row.lengthToHeight();
                case ANGLE_DEG -> row.angleDeg();
                case PITCH_TO_HEIGHT -> row.pitchToHeight();
                case GAP_TO_HEIGHT -> row.gapToHeight();
                case DISTANCE_TO_HEIGHT -> row.distanceToHeight();
                case CHORD_FRACTION -> row.chordFraction();
            };
        }
    }

    /** Which rows a recommendation is for. */
    public enum Rows {
        ANY,
        CO_ROTATING,
        PAIRS;

        /** Whether it is for such a row. */
        public boolean fits(boolean pairs) {
            return this == ANY || (this == PAIRS) == pairs;
        }
    }

    /** How the figures are known. */
    public enum Known {
        READ("read in the source"),
        SECOND_HAND("quoted second-hand"),
        FROM_MEMORY("from memory, not read again"),
        COMMON_PRACTICE("common practice, no source");

        private final String label;

        Known(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }
}
