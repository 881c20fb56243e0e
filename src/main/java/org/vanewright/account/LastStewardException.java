package org.vanewright.account;

import org.vanewright.record.NotAllowedException;

/** Nobody could run the instance afterwards. */
public class LastStewardException extends NotAllowedException {
    private static final long serialVersionUID = 1L;

    LastStewardException() {
        super("The last steward cannot leave. Make somebody else a steward first.");
    }
}
