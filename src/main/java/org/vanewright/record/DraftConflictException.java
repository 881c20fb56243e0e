package org.vanewright.record;

/** Somebody else saved the draft since; carries what stands now. */
public class DraftConflictException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int startedFrom;
    private final transient Draft<?> current;

    /**
     * @param startedFrom the version the refused change started from
     * @param current what is saved now
     */
    public DraftConflictException(int startedFrom, Draft<?> current) {
        super("This draft was saved by somebody else meanwhile: this change started from version " + startedFrom
                + ", but version " + current.version() + " is saved.");
        this.startedFrom = startedFrom;
        this.current = current;
    }

    public int startedFrom() {
        return startedFrom;
    }

    public Draft<?> current() {
        return current;
    }
}
