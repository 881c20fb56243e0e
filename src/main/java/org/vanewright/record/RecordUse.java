package org.vanewright.record;

/**
 * Another record that a document builds on.
 *
 * @param plural of its kind, as in addresses, such as {@code airframes}
 * @param ref the exact revision
 */
public record RecordUse(String plural, RevisionRef ref) {}
