package org.vanewright.record;

/**
 * A revision moved. Sent after the change is committed.
 *
 * @param kind such as {@code "layout"}
 * @param ref which revision
 * @param state what it is now
 */
public record RevisionEvent(String kind, RevisionRef ref, RecordState state) {}
