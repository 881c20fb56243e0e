package org.vanewright.record.photograph;

import org.jspecify.annotations.Nullable;

/**
 * A photograph that a document shows.
 *
 * @param sha256 of the picture as it is kept, 64 lower-case hexadecimal digits; its name
 * @param caption what stands beneath it
 * @param alt what it shows, for whoever does not see it
 */
public record PhotographUse(
        @Nullable String sha256,
        @Nullable String caption,
        @Nullable String alt) {}
