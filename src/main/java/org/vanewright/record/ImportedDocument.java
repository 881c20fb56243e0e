package org.vanewright.record;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * A document on its way in from another instance, checked already.
 *
 * @param canonical its canonical JSON as it was published, which is kept as it is
 * @param localised the same with names of records here; null where they are the same
 * @param contributor display name of who submitted it there
 * @param createdAt when it was submitted there
 * @param licence under which it may be used
 */
public record ImportedDocument(
        String canonical,
        @Nullable String localised,
        String contributor,
        Instant createdAt,
        @Nullable Licence licence) {}
