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
        AIRSPEED("Airspeed", "kt"),
        ALTITUDE("Altitude", "ft"),
        TEMPERATURE("Outside air temperature", "°C"),
        MASS("Mass", "kg"),
        FUEL("Fuel used", "kg"),
        GROUND_SPEED("Ground speed", "kt"),
        TRACK("Track or heading", "°"),
        LOAD_FACTOR("Load factor", ""),
        POWER("Power", "%"),
        TIME("Time", "s");

        private final String label;
        private final String unit;

        Quantity(String label, String unit) {
            this.label = label;
            this.unit = unit;
        }

        public String label() {
            return label;
        }

        public String unit() {
            return unit;
        }
    }
}
