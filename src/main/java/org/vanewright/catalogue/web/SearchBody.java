package org.vanewright.catalogue.web;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.catalogue.search.SearchHit;
import org.vanewright.catalogue.search.SearchResult;

/**
 * What was found, as the API says it.
 *
 * @param total results on all pages
 * @param items of this page
 * @param facets with what each value would give
 * @param corrections spellings taken for words that nothing has
 * @param withOneFacetLess where nothing was found: how many there would be without each of the facets
 * @param nextAfter to be given as {@code after} for the next page; absent on the last
 */
record SearchBody(
        int total,
        List<Item> items,
        List<FacetItem> facets,
        List<SearchResult.Correction> corrections,
        List<LessItem> withOneFacetLess,
        @Nullable String nextAfter) {
    /**
     * A published revision.
     *
     * @param path of its page
     * @param drawing path of a small drawing, absent where there is none
     * @param measuredChange size of the most precise measured change over the unmodified aircraft's mean; absent where
     *     none was measured
     * @param measured that change in words
     */
    record Item(
            String kind,
            String slug,
            int revision,
            String name,
            String summary,
            String path,
            @Nullable String drawing,
            boolean invented,
            String contributor,
            Instant publishedAt,
            @Nullable Double measuredChange,
            @Nullable String measured) {}

    /** A facet. */
    record FacetItem(String facet, String label, List<ValueItem> values) {}

    /** A value of it; {@code parameter} asks for it. */
    record ValueItem(String parameter, String label, int count, boolean chosen) {}

    /** How many there would be without a facet. */
    record LessItem(String facet, int total) {}

    static SearchBody of(SearchResult result, SearchViews views) {
        return new SearchBody(
                result.total(),
                result.hits().stream().map(hit -> item(hit, views)).toList(),
                result.facets().stream().map(SearchBody::facet).toList(),
                result.corrections(),
                result.loosened().stream()
                        .map(l -> new LessItem(l.facet().key(), l.total()))
                        .toList(),
                result.next());
    }

    private static Item item(SearchHit hit, SearchViews views) {
        return new Item(
                hit.kind(),
                hit.slug(),
                hit.revision(),
                hit.name(),
                hit.summary(),
                views.address(hit),
                hit.picture(),
                hit.invented(),
                hit.contributor(),
                hit.publishedAt(),
                hit.change(),
                hit.effect());
    }

    private static FacetItem facet(SearchResult.FacetGroup group) {
        return new FacetItem(
                group.facet().key(),
                group.facet().label(),
                group.values().stream()
                        .map(v -> new ValueItem(v.value().key(), v.value().label(), v.count(), v.chosen()))
                        .toList());
    }
}
