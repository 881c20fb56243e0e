package org.vanewright.kit;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * What becomes of one revision of a kit.
 *
 * @param plural of its kind, as in addresses
 * @param name of the record
 * @param slug at its origin
 * @param revision there
 * @param sha256 of its document
 * @param instance name of its origin, as the kit says
 * @param url of that
 * @param contributor there
 * @param createdAt when it was submitted there
 * @param licence identifier in the SPDX License List; absent where none is stated
 * @param withdrawn why it has been withdrawn at its origin
 * @param known whether the same is here already, so that nothing is added
 * @param localSlug under which it stands here, or will
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record KitItem(
        String plural,
        String name,
        String slug,
        int revision,
        String sha256,
        String instance,
        String url,
        String contributor,
        Instant createdAt,
        @Nullable String licence,
        @Nullable String withdrawn,
        boolean known,
        String localSlug,
        int localRevision) {
    /** Whether its slug is another's here. */
    public boolean renamed() {
        return !localSlug.equals(slug);
    }

    /** Of its page here. */
    public String path() {
        return "/" + plural + "/" + localSlug + "/revisions/" + localRevision;
    }

    public String shortHash() {
        return sha256.substring(0, 12);
    }
}
