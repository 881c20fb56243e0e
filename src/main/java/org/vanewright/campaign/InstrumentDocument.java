package org.vanewright.campaign;

import org.jspecify.annotations.Nullable;

/**
 * What something was read from.
 *
 * @param name its class, without a brand
 * @param quantity what it shows
 * @param resolution smallest step that can be read, in the quantity's unit
 * @param calibratedOn day of its last check, as {@code 2026-03-14}; absent where it never was
 */
public record InstrumentDocument(
        @Nullable String name,
        @Nullable Quantity quantity,
        @Nullable Double resolution,
        @Nullable String calibratedOn) {

    /** What can be read, with the unit in which it is recorded. */
    public enum Quantity {
        AIRSPEED("Airspeed", "kt", 20),
        ALTITUDE("Altitude", "ft", 500),
        TEMPERATURE("Outside air temperature", "°C", 10),
        MASS("Mass", "kg", 100),
        FUEL("Fuel used", "kg", 100),
        GROUND_SPEED("Ground speed", "kt", 20),
        TRACK("Track or heading", "°", 20),
        LOAD_FACTOR("Load factor", "", 0.5),
        POWER("Power", "%", 25),
        TIME("Time", "s", 1000);

        private final String label;
        private final String unit;
        private final double coarsest;

        Quantity(String label, String unit, double coarsest) {
            this.label = label;
            this.unit = unit;
            this.coarsest = coarsest;
        }

        public String label() {
            return label;
        }

        public String unit() {
            return unit;
        }

        /** A step that is read no finer is a mistyped one: common practice, no source. */
        double coarsest() {
            return coarsest;
        }
    }
}
