package org.vanewright.review;

import java.time.Instant;
import org.vanewright.record.PersonRef;

/**
 * Somebody looks at a submitted revision.
 *
 * @param person who
 * @param at since when
 */
public record Claim(PersonRef person, Instant at) {}
