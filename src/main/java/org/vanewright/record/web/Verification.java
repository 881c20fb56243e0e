package org.vanewright.record.web;

import org.vanewright.record.Revision;

/**
 * Whether a revision still has the hash it was published with.
 *
 * @param matches the hash, computed again from the stored document, is the recorded one
 */
public record Verification(String slug, int revision, String sha256, boolean matches) {
    public static Verification of(Revision<?> r, boolean matches) {
        return new Verification(r.slug(), r.number(), r.sha256(), matches);
    }
}
