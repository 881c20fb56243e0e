package org.vanewright.engineering.flightlog;

import java.util.List;

/** What a column of a log may hold, with the units it may be written in and what an aircraft of the trade can show. */
public enum LogQuantity {
    TIME("Time", -1e12, 1e12, LogUnit.SECONDS, LogUnit.INSTANT, LogUnit.CLOCK),
    AIRSPEED("Indicated airspeed", -10, 500, LogUnit.KT, LogUnit.M_PER_S, LogUnit.KM_PER_H, LogUnit.MPH),
    ALTITUDE("Pressure altitude", -3000, 60_000, LogUnit.FT, LogUnit.M),
    GROUND_SPEED("Ground speed", 0, 800, LogUnit.KT, LogUnit.M_PER_S, LogUnit.KM_PER_H, LogUnit.MPH),
    TRACK("Track over the ground", -360, 720, LogUnit.DEG, LogUnit.RAD),
    LOAD_FACTOR("Normal acceleration", -15, 15, LogUnit.G, LogUnit.M_PER_S2),
    PITCH_RATE("Pitch rate", -720, 720, LogUnit.DEG_PER_S, LogUnit.RAD_PER_S),
    TEMPERATURE("Outside air temperature", -90, 90, LogUnit.CELSIUS, LogUnit.FAHRENHEIT),
    POWER("Power", -5, 200, LogUnit.PERCENT);

    private final String label;
    private final double low;
    private final double high;
    private final List<LogUnit> units;

    LogQuantity(String label, double low, double high, LogUnit... units) {
        this.label = label;
        this.low = low;
        this.high = high;
        this.units = List.of(units);
    }

    public String label() {
        return label;
    }

    /** The first is the one of {@link FlightSample}. */
    public List<LogUnit> units() {
        return units;
    }

    /** Whether a value, in the first unit, can be one. */
    boolean allows(double value) {
        return value >= low && value <= high;
    }

    String allowed() {
        return String.format(
                java.util.Locale.ROOT,
                "%.0f to %.0f %s",
                low,
                high,
                units.get(0).label());
    }
}
