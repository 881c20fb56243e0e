package org.vanewright.platform;

/** Records may not be changed on this instance. */
public class EditingClosedException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public EditingClosedException() {
        super("Editing is closed on this instance: records can be read and computed with, but not changed.");
    }
}
