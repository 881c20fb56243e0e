package org.vanewright.record.web;

/** Who a revision is put down to. */
public final class Contributors {
    /** Whoever used the service while editing was open to all. */
    public static final String OPEN_EDITING = "Open editing";

    private Contributors() {}
}
