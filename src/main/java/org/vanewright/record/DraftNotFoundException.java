package org.vanewright.record;

/** There is no such draft, or it is somebody else's: the two cannot be told apart. */
public class DraftNotFoundException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public DraftNotFoundException() {
        super("You have no such draft.");
    }
}
