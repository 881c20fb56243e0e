package org.vanewright.record.web;

import org.jspecify.annotations.Nullable;
import org.vanewright.record.Licence;

/**
 * What a draft is submitted with.
 *
 * @param licence under which others may use it
 * @param summary what is new in it; may be absent
 * @param version the saved version that is meant
 */
public record Submission(
        @Nullable Licence licence,
        @Nullable String summary,
        @Nullable Integer version) {}
