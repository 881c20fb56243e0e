package org.vanewright.catalogue.search;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.catalogue.Facet;
import org.vanewright.catalogue.FacetValue;

/**
 * What was found.
 *
 * @param query that was asked
 * @param total how many there are on all pages
 * @param hits of this page
 * @param facets with what each value would give
 * @param corrections other spellings that were taken for words that nothing has
 * @param loosened where nothing was found: what would be without one of the facets
 * @param withoutFacets how many there would be without any facet
 * @param next where this page ended; null on the last
 * @param weighed how many of the newest were ordered by relevance; null where that is all of them
 */
public record SearchResult(
        SearchQuery query,
        int total,
        List<SearchHit> hits,
        List<FacetGroup> facets,
        List<Correction> corrections,
        List<Loosened> loosened,
        int withoutFacets,
        @Nullable String next,
        @Nullable Integer weighed) {
    /** A facet with its values. */
    public record FacetGroup(Facet facet, List<ValueCount> values) {}

    /**
     * A value of a facet.
     *
     * @param count what would be found with it, everything else as it is
     */
    public record ValueCount(FacetValue value, int count, boolean chosen) {}

    /** Spellings taken for a word. */
    public record Correction(String typed, List<String> near) {}

    /** What would be found without a facet. */
    public record Loosened(Facet facet, int total) {}
}
