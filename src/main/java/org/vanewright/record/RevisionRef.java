package org.vanewright.record;

import org.jspecify.annotations.Nullable;

/**
 * Names one exact revision.
 *
 * @param slug identity of the record
 * @param revision counts from 1
 */
public record RevisionRef(String slug, int revision) {
    /** As problems name it; null for none. */
    public static @Nullable String words(@Nullable RevisionRef ref) {
        return ref == null ? null : ref.slug() + " revision " + ref.revision();
    }
}
