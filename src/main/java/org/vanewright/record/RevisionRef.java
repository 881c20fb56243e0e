package org.vanewright.record;

/**
 * Names one exact revision.
 *
 * @param slug identity of the record
 * @param revision counts from 1
 */
public record RevisionRef(String slug, int revision) {}
