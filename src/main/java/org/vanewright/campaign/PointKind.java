package org.vanewright.campaign;

/** What a test point is. */
public enum PointKind {
    STALL("Stall"),
    CRUISE("Stabilised cruise"),
    CLIMB("Climb"),
    /** Ground speeds along several legs at one indicated airspeed. */
    AIRSPEED("Airspeed calibration");

    private final String label;

    PointKind(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
