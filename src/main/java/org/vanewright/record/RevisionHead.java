package org.vanewright.record;

import java.time.Instant;

/**
 * A published revision without what it says.
 *
 * @param slug identity of the record
 * @param number of the revision
 * @param sha256 of its canonical JSON
 * @param publishedAt when it became public
 */
public record RevisionHead(String slug, int number, String sha256, Instant publishedAt) {
    public RevisionRef ref() {
        return new RevisionRef(slug, number);
    }
}
