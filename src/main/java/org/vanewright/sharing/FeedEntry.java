package org.vanewright.sharing;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.Licence;
import org.vanewright.record.Revision;

/**
 * One published revision in a feed.
 *
 * @param kind such as {@code layout}
 * @param path of its page at that revision, which never comes to mean anything else
 * @param name what people call it
 * @param revision counts from 1
 * @param contributor who made it
 * @param publishedAt when it became public
 * @param summary what the contributor said of the change; null for nothing
 * @param licence null for what came with the service
 * @param invented true for demonstration data
 */
public record FeedEntry(
        String kind,
        String path,
        String name,
        int revision,
        String contributor,
        Instant publishedAt,
        @Nullable String summary,
        @Nullable Licence licence,
        boolean invented) {
    static FeedEntry of(String kind, String plural, Revision<?> revision) {
        return new FeedEntry(
                kind,
                "/" + plural + "/" + revision.slug() + "/revisions/" + revision.number(),
                revision.content().name(),
                revision.number(),
                revision.contributor(),
                revision.shownAt(),
                revision.standing().summary(),
                revision.standing().licence(),
                revision.content().invented());
    }
}
