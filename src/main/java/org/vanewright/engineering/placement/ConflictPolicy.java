package org.vanewright.engineering.placement;

/** What happens to devices that would land in a keep-out, across a panel joint or off the surface. */
public enum ConflictPolicy {
    /** Moved along the span to the nearest free place within the row. */
    MOVE,
    LEAVE_OUT
}
