package org.vanewright.record;

/** A draft or revision stands where this step is not possible. */
public class DraftClosedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** @param reason a sentence that says where it stands */
    public DraftClosedException(String reason) {
        super(reason);
    }
}
