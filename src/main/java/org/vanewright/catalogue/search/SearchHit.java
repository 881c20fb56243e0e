package org.vanewright.catalogue.search;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One published revision that was found.
 *
 * @param id of its entry
 * @param kind of record, such as {@code layout}
 * @param slug of the record
 * @param revision that is published
 * @param name what people call it
 * @param summary one line
 * @param picture address of a small drawing; null where there is none
 * @param invented true for demonstration data
 * @param contributor who submitted it
 * @param publishedAt when it became public
 * @param effectPpm size of the measured change in millionths, below 0 where none was measured
 * @param effect what may be said of that change
 * @param weight by which it was ordered
 */
public record SearchHit(
        long id,
        String kind,
        String slug,
        int revision,
        String name,
        String summary,
        @Nullable String picture,
        boolean invented,
        String contributor,
        Instant publishedAt,
        int effectPpm,
        @Nullable String effect,
        long weight) {
    SearchCursor cursor() {
        return new SearchCursor(weight, publishedAt, id);
    }

    /** Size of the measured change over the unmodified aircraft's mean; null where none was measured. */
    public @Nullable Double change() {
        return effectPpm < 0 ? null : effectPpm / 1e6;
    }
}
