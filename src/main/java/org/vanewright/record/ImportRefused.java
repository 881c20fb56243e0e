package org.vanewright.record;

/**
 * A reviewer refuses an imported revision. Told within the transaction that closes it.
 *
 * @param refused which one
 * @param reason for those who read it
 */
record ImportRefused(RecordUse refused, String reason) {}
