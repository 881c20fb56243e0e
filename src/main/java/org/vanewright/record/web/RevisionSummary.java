package org.vanewright.record.web;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.RecordPage;
import org.vanewright.record.Revision;

/** A revision in a list of the API. */
public record RevisionSummary(
        String slug,
        int revision,
        String name,
        boolean invented,
        String sha256,
        String contributor,
        Instant createdAt) {
    public static RevisionSummary of(Revision<?> r) {
        return new RevisionSummary(
                r.slug(),
                r.number(),
                r.content().name(),
                r.content().invented(),
                r.sha256(),
                r.contributor(),
                r.createdAt());
    }

    /**
     * A page of a list.
     *
     * @param nextCursor to be given as {@code cursor} for the next page; absent on the last
     */
    public record Page(
            List<RevisionSummary> items, @Nullable String nextCursor) {
        public static <R extends Revision<?>> Page of(RecordPage<R> page) {
            return new Page(page.items().stream().map(RevisionSummary::of).toList(), page.nextCursor());
        }
    }
}
