package org.vanewright.record;

/**
 * Counts that only grow, and one of which grows with every change of what is public.
 *
 * @param revisions that are public
 * @param withdrawn of those
 */
public record PublicCount(long revisions, long withdrawn) {}
