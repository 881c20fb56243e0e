package org.vanewright.engineering.flightlog;

/** A unit in which a logger writes: the trade's value is {@code factor · written + offset}. */
public enum LogUnit {
    SECONDS("seconds", 1, 0),
    INSTANT("date and time, such as 2026-05-02T09:14:00Z", 1, 0),
    CLOCK("time of day, hh:mm:ss", 1, 0),
    KT("kt", 1, 0),
    M_PER_S("m/s", 3600 / 1852.0, 0),
    KM_PER_H("km/h", 1 / 1.852, 0),
    MPH("mph", 1.609344 / 1.852, 0),
    FT("ft", 1, 0),
    M("m", 1 / 0.3048, 0),
    DEG("°", 1, 0),
    RAD("rad", 180 / Math.PI, 0),
    G("g", 1, 0),
    M_PER_S2("m/s²", 1 / 9.80665, 0),
    DEG_PER_S("°/s", 1, 0),
    RAD_PER_S("rad/s", 180 / Math.PI, 0),
    CELSIUS("°C", 1, 0),
    FAHRENHEIT("°F", 5 / 9.0, -160 / 9.0),
    PERCENT("%", 1, 0);

    private final String label;
    private final double factor;
    private final double offset;

    LogUnit(String label, double factor, double offset) {
        this.label = label;
        this.factor = factor;
        this.offset = offset;
    }

    public String label() {
        return label;
    }

    /** In the unit of {@link FlightSample}. */
    public double toTrade(double written) {
        return factor * written + offset;
    }
}
