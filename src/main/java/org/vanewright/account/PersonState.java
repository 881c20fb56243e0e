package org.vanewright.account;

/** Whether an account can be used. */
public enum PersonState {
    /** Registered, not yet admitted by a steward. */
    PENDING("Waiting to be admitted"),
    ACTIVE("Open"),
    /** Ended by a steward; what the person published stays. */
    CLOSED("Closed");

    private final String label;

    PersonState(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
