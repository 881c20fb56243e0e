package org.vanewright.catalogue.search;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.catalogue.FacetValue;

/**
 * What the index keeps of a published revision.
 *
 * @param kind of record
 * @param slug of the record
 * @param revision that is published
 * @param name what people call it
 * @param summary one line
 * @param picture address of a small drawing
 * @param invented true for demonstration data
 * @param contributor who submitted it
 * @param publishedAt when it became public
 * @param effectPpm size of the measured change in millionths; {@value #NO_EFFECT} where none was measured
 * @param effect that change in words
 * @param prominence how much its kind counts, of 100
 * @param facets sorted, each once
 * @param words it is found by
 */
record SearchEntry(
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
        int prominence,
        List<FacetValue> facets,
        WordBag words) {
    static final int NO_EFFECT = -1;
}
