package org.vanewright.platform.job;

/** What was asked for cannot be done; its message says why, to who asked. */
public final class JobFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public JobFailure(String words) {
        super(words);
    }
}
