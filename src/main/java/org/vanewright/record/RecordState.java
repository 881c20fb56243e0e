package org.vanewright.record;

/** Where a revision stands on its way to the public record. */
public enum RecordState {
    DRAFT,
    SUBMITTED,
    RETURNED,
    PUBLISHED,
    SUPERSEDED,
    WITHDRAWN
}
