package org.vanewright.engineering.flightlog;

/** What can be found in a log. */
public enum EventKind {
    STALL("Stall"),
    CRUISE("Stabilised cruise"),
    CLIMB("Climb"),
    LEG("GPS leg");

    private final String label;

    EventKind(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
