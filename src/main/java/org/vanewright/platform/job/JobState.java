package org.vanewright.platform.job;

/** Where a job stands. */
public enum JobState {
    WAITING("waits for its turn"),
    RUNNING("is being done"),
    DONE("done"),
    FAILED("could not be done"),
    CANCELLED("cancelled");

    private final String label;

    JobState(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /** Whether it changes by itself. */
    public boolean isUnderWay() {
        return this == WAITING || this == RUNNING;
    }
}
