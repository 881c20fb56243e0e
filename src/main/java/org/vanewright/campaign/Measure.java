package org.vanewright.campaign;

/** What a campaign compares. */
public enum Measure {
    /** Calibrated airspeed of the stall at the standard mass, one times gravity. */
    STALL_SPEED("Stall speed", "kt", PointKind.STALL, "stall", "stalls"),
    /** True airspeed at equal power, standard mass and density. */
    CRUISE_SPEED("Cruising speed", "kt", PointKind.CRUISE, "cruise point", "cruise points"),
    /** Rate of climb at standard mass and temperature. */
    CLIMB_RATE("Rate of climb", "ft/min", PointKind.CLIMB, "climb", "climbs");

    private final String label;
    private final String unit;
    private final PointKind kind;
    private final String one;
    private final String many;

    Measure(String label, String unit, PointKind kind, String one, String many) {
        this.label = label;
        this.unit = unit;
        this.kind = kind;
        this.one = one;
        this.many = many;
    }

    public String label() {
        return label;
    }

    public String unit() {
        return unit;
    }

    /** The test points it is read from. */
    public PointKind kind() {
        return kind;
    }

    /** So many of its test points, in words. */
    public String counted(int number) {
        return number + " " + (number == 1 ? one : many);
    }

    /** What one of its test points is called. */
    public String one() {
        return one;
    }

    /** What several of its test points are called. */
    public String many() {
        return many;
    }
}
