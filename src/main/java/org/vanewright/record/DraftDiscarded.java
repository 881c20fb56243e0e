package org.vanewright.record;

/**
 * A draft was given up. Sent within the transaction that gives it up, so that what is kept beside it goes with it or stays.
 *
 * @param kind such as {@code "campaign"}
 * @param draftId of the draft
 */
public record DraftDiscarded(String kind, String draftId) {}
