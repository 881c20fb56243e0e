package org.vanewright.campaign.log;

/** How far a log has come. */
public enum LogState {
    UPLOADED("waits for its columns to be named"),
    MAPPED("waits to be read"),
    READING("is being read"),
    READ("read"),
    FAILED("could not be read");

    private final String label;

    LogState(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /** Whether it changes by itself. */
    public boolean isUnderWay() {
        return this == MAPPED || this == READING;
    }
}
