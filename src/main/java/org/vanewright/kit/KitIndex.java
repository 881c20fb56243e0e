package org.vanewright.kit;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.RevisionRef;

/**
 * The index of a kit, {@value #NAME}: what an importing instance reads.
 *
 * @param format always {@value #FORMAT}
 * @param version of the format
 * @param layout path of the layout's document
 * @param results paths of the documents of the campaigns whose results are in the kit
 * @param revisions every revision that is involved, a named one before what names it
 * @param photographs of them
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record KitIndex(
        @Nullable String format,
        @Nullable Integer version,
        @Nullable String layout,
        @Nullable List<@Nullable String> results,
        @Nullable List<@Nullable Entry> revisions,
        @Nullable List<@Nullable Photograph> photographs) {
    static final String NAME = "kit.json";
    static final String FORMAT = "vanewright-kit";
    static final int VERSION = 1;

    /**
     * One revision.
     *
     * @param plural of its kind, as in addresses
     * @param slug of the record at its origin
     * @param revision number there
     * @param path of its canonical JSON in the kit
     * @param sha256 of that
     * @param provenance path of its history in the kit
     * @param instance name of its origin
     * @param url address of its origin
     * @param name of the record
     * @param contributor display name of who submitted it there
     * @param createdAt when it was submitted
     * @param publishedAt when it was published there
     * @param licence identifier in the SPDX License List
     * @param derivedFrom what it was made from
     * @param withdrawn why it has been withdrawn; absent where it has not
     * @param references where in the kit each revision is that the document names
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record Entry(
            @Nullable String plural,
            @Nullable String slug,
            @Nullable Integer revision,
            @Nullable String path,
            @Nullable String sha256,
            @Nullable String provenance,
            @Nullable String instance,
            @Nullable String url,
            @Nullable String name,
            @Nullable String contributor,
            @Nullable Instant createdAt,
            @Nullable Instant publishedAt,
            @Nullable String licence,
            @Nullable RevisionRef derivedFrom,
            @Nullable String withdrawn,
            @Nullable List<@Nullable Reference> references) {}

    /** A name in a document, and the path of the document it stands for. */
    public record Reference(
            @Nullable String plural,
            @Nullable String slug,
            @Nullable Integer revision,
            @Nullable String path) {}

    /** A photograph, named by its hash. */
    public record Photograph(
            @Nullable String sha256, @Nullable String path) {}
}
