package org.vanewright.campaign;

import org.jspecify.annotations.Nullable;
import org.vanewright.record.RevisionRef;

/**
 * One state of the aircraft that is compared.
 *
 * @param key a short mark that test points carry, such as {@code A}
 * @param name what people call it
 * @param layout exact revision fitted; absent for the unmodified aircraft
 */
public record ConfigurationDocument(
        @Nullable String key,
        @Nullable String name,
        @Nullable RevisionRef layout) {}
