package org.vanewright.record;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Where a revision came from that was published on another instance. What the kit says of its origin is a statement of
 * the kit; only the document's hash was verified.
 *
 * @param importId the import that brought it here
 * @param instance name of the instance where it was published
 * @param url address of that instance
 * @param slug of the record there
 * @param revision number there
 * @param publishedAt when it was published there
 * @param derivedFrom what it was made from there; named for its attribution
 * @param withdrawn why it had been withdrawn there when the kit was made; absent where it had not
 * @param importedById person who brought it here
 * @param importedBy that person's name at that time
 * @param importedAt when
 * @param localSha256 hash of the document as it is read here, where it names records under other slugs than there;
 *     absent where it is the same
 */
public record ImportOrigin(
        String importId,
        String instance,
        String url,
        String slug,
        int revision,
        @Nullable Instant publishedAt,
        @Nullable RevisionRef derivedFrom,
        @Nullable String withdrawn,
        String importedById,
        String importedBy,
        Instant importedAt,
        @Nullable String localSha256) {
    /** Whether it is a revision of the same record of the same instance. */
    public boolean sameRecord(String otherUrl, String otherSlug) {
        return url.equals(otherUrl) && slug.equals(otherSlug);
    }
}
