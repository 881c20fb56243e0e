package org.vanewright.catalogue.search;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.roaringbitmap.RoaringBitmap;
import org.vanewright.catalogue.Facet;
import org.vanewright.catalogue.FacetValue;

/**
 * Counts what was found. A value's count is of what would be found if it were chosen instead of the others of its facet.
 */
final class FacetCounts {
    private final FacetIndex index;
    private final Map<Facet, Set<String>> choices;
    private final Map<Facet, RoaringBitmap> chosen = new EnumMap<>(Facet.class);
    private final RoaringBitmap fit;
    private final RoaringBitmap found;

    /** @param fit entries that fit the words */
    FacetCounts(RoaringBitmap fit, FacetIndex index, Map<Facet, Set<String>> choices) {
        this.index = index;
        this.choices = choices;
        this.fit = fit;
        choices.forEach((facet, values) -> chosen.put(facet, index.any(facet, values)));
        this.found = without(null);
    }

    /** What fits all facets that are chosen but one. */
    private RoaringBitmap without(@Nullable Facet one) {
        RoaringBitmap left = fit.clone();
        chosen.forEach((facet, entries) -> {
            if (facet != one) {
                left.and(entries);
            }
        });
        return left;
    }

    /** What was found. */
    RoaringBitmap found() {
        return found;
    }

    /** How much was found. */
    int total() {
        return found.getCardinality();
    }

    /** How much would be found without any facet. */
    int withoutAny() {
        return fit.getCardinality();
    }

    /** How much would be found without one facet, where that is anything, of the facets that are chosen. */
    List<SearchResult.Loosened> loosened() {
        return choices.keySet().stream()
                .map(facet -> new SearchResult.Loosened(facet, without(facet).getCardinality()))
                .filter(loosened -> loosened.total() > 0)
                .toList();
    }

    /**
     * The values of each facet that there are, and those chosen that there are not.
     *
     * @param names of values that are chosen and that no entry has
     */
    List<SearchResult.FacetGroup> groups(List<FacetValue> names) {
        List<SearchResult.FacetGroup> groups = new ArrayList<>();
        for (Facet facet : Facet.values()) {
            List<SearchResult.ValueCount> counts = new ArrayList<>(counted(facet));
            counts.addAll(unknown(facet, names));
            if (!counts.isEmpty()) {
                counts.sort((a, b) -> a.value().compareTo(b.value()));
                groups.add(new SearchResult.FacetGroup(facet, List.copyOf(counts)));
            }
        }
        return List.copyOf(groups);
    }

    private List<SearchResult.ValueCount> counted(Facet facet) {
        Set<String> wanted = choices.getOrDefault(facet, Set.of());
        RoaringBitmap others = wanted.isEmpty() ? found : without(facet);
        return index.values(facet).stream()
                .map(known -> new SearchResult.ValueCount(
                        known.value(),
                        RoaringBitmap.andCardinality(others, known.entries()),
                        wanted.contains(known.value().choice())))
                .filter(count -> count.count() > 0 || count.chosen())
                .toList();
    }

    private List<SearchResult.ValueCount> unknown(Facet facet, List<FacetValue> names) {
        return choices.getOrDefault(facet, Set.of()).stream()
                .filter(choice -> index.value(facet, choice) == null)
                .map(choice -> names.stream()
                        .filter(v -> v.facet() == facet && v.choice().equals(choice))
                        .findFirst()
                        .orElseGet(() -> new FacetValue(facet, choice, choice, 0)))
                .map(value -> new SearchResult.ValueCount(value, 0, true))
                .toList();
    }
}
