package org.vanewright.record;

/** Where a contribution stands for its authors. */
public enum DraftState {
    /** Being written. */
    DRAFT("draft"),
    /** Waits for a review; cannot be changed, but taken back. */
    SUBMITTED("submitted"),
    /** Came back with reasons; can be changed and submitted again. */
    RETURNED("returned"),
    /** Is on the public record; a change is another draft. */
    PUBLISHED("published"),
    /** Given up by its author. */
    DISCARDED("discarded");

    private final String label;

    DraftState(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /** Whether its text can be changed. */
    public boolean isOpen() {
        return this == DRAFT || this == RETURNED;
    }
}
