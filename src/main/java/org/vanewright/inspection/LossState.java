package org.vanewright.inspection;

/** What was found of a device that is not in order; both count as lost, since neither does its work. */
public enum LossState {
    MISSING("Missing"),
    LOOSE("Loose");

    private final String label;

    LossState(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
