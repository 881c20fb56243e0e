package org.vanewright.record;

/** Somebody else published a revision since the one this change started from; carries the one that now stands. */
public class RevisionConflictException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient RevisionRef base;
    private final transient Revision<?> current;

    /**
     * @param base what the refused change started from
     * @param current what is published now
     */
    public RevisionConflictException(RevisionRef base, Revision<?> current) {
        super("“" + base.slug() + "” was changed meanwhile: this change started from revision " + base.revision()
                + ", but revision " + current.number() + " is published.");
        this.base = base;
        this.current = current;
    }

    public RevisionRef base() {
        return base;
    }

    public Revision<?> current() {
        return current;
    }
}
