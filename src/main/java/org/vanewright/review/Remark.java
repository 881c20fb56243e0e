package org.vanewright.review;

import java.time.Instant;
import org.vanewright.record.PersonRef;

/**
 * What a reviewer said about a revision. It is kept for ever and seen by its authors and by reviewers only.
 *
 * @param field path such as {@code masses.emptyKg}; empty for the whole
 * @param text in the reviewer's words
 * @param person who said it
 * @param at when
 */
public record Remark(String field, String text, PersonRef person, Instant at) {
    /** Whether it is about the whole and not about one field. */
    public boolean general() {
        return field.isEmpty();
    }
}
