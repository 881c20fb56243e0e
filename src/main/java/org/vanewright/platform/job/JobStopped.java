package org.vanewright.platform.job;

/** Ends a run that must not go on. */
public final class JobStopped extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** Why. */
    public enum Reason {
        /** Somebody does not want it any more. */
        CANCELLED,
        /** Another run of the same job took over. */
        TAKEN_OVER,
        /** This process ends; another one begins again. */
        PROCESS_ENDS
    }

    private final Reason reason;

    public JobStopped(Reason reason) {
        super(reason.name(), null, false, false);
        this.reason = reason;
    }

    public Reason reason() {
        return reason;
    }
}
