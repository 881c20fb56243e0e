package org.vanewright.account;

/** Whether an account can be used. */
public enum PersonState {
    /** Registered, not yet admitted by a steward. */
    PENDING,
    ACTIVE,
    /** Ended by a steward; what the person published stays. */
    CLOSED
}
