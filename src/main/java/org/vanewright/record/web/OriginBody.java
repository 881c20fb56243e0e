package org.vanewright.record.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.ImportOrigin;
import org.vanewright.record.RevisionRef;

/**
 * Where an imported revision was published, as its kit says.
 *
 * @param instance name of that instance
 * @param url its address
 * @param slug of the record there
 * @param revision number there
 * @param withdrawn why it had been withdrawn there
 * @param importedBy display name of who brought it here
 * @param renamed whether {@code content} names records by other slugs than the document that was hashed
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record OriginBody(
        String instance,
        String url,
        String slug,
        int revision,
        @Nullable Instant publishedAt,
        @Nullable RevisionRef derivedFrom,
        @Nullable String withdrawn,
        String importedBy,
        Instant importedAt,
        boolean renamed) {
    static @Nullable OriginBody of(@Nullable ImportOrigin o) {
        return o == null
                ? null
                : new OriginBody(
                        o.instance(),
                        o.url(),
                        o.slug(),
                        o.revision(),
                        o.publishedAt(),
                        o.derivedFrom(),
                        o.withdrawn(),
                        o.importedBy(),
                        o.importedAt(),
                        o.localSha256() != null);
    }
}
