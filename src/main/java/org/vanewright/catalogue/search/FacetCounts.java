package org.vanewright.catalogue.search;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import org.vanewright.catalogue.Facet;
import org.vanewright.catalogue.FacetValue;
import org.vanewright.catalogue.search.SearchRepository.Group;

/**
 * Counts what was found from the groups of like entries. A value's count is of what would be found if it were chosen
 * instead of the others of its facet.
 */
final class FacetCounts {
    private final Map<Facet, Set<String>> choices;
    private final Map<FacetValue, Integer> counts = new TreeMap<>();
    private final Map<Facet, Integer> without = new EnumMap<>(Facet.class);
    private int total;
    private int withoutAny;

    private FacetCounts(Map<Facet, Set<String>> choices) {
        this.choices = choices;
    }

    static FacetCounts of(
            List<Group> groups, Map<Long, List<FacetValue>> signatures, Map<Facet, Set<String>> choices) {
        FacetCounts counts = new FacetCounts(choices);
        groups.forEach(g -> counts.add(signatures.getOrDefault(g.signature(), List.of()), g.entries()));
        return counts;
    }

    private void add(List<FacetValue> values, int entries) {
        withoutAny += entries;
        Set<Facet> failing = choices.isEmpty() ? Set.of() : EnumSet.copyOf(choices.keySet());
        if (!failing.isEmpty()) {
            for (FacetValue value : values) {
                if (choices.getOrDefault(value.facet(), Set.of()).contains(value.choice())) {
                    failing.remove(value.facet());
                }
            }
        }
        if (failing.size() > 1) {
            return;
        }
        if (failing.isEmpty()) {
            total += entries;
        } else {
            without.merge(failing.iterator().next(), entries, Integer::sum);
        }
        for (FacetValue value : values) {
            if (failing.isEmpty() || failing.contains(value.facet())) {
                counts.merge(value, entries, Integer::sum);
            }
        }
    }

    /** How much was found. */
    int total() {
        return total;
    }

    /** How much would be found without any facet. */
    int withoutAny() {
        return withoutAny;
    }

    /** How much would be found without one facet, where that is anything, of the facets that are chosen. */
    List<SearchResult.Loosened> loosened() {
        return choices.keySet().stream()
                .filter(facet -> total + without.getOrDefault(facet, 0) > 0)
                .map(facet -> new SearchResult.Loosened(facet, total + without.getOrDefault(facet, 0)))
                .toList();
    }

    /** The values of each facet that there are, and those chosen that there are not. */
    List<SearchResult.FacetGroup> groups() {
        Map<Facet, List<SearchResult.ValueCount>> byFacet = new EnumMap<>(Facet.class);
        counts.forEach((value, count) -> byFacet.computeIfAbsent(value.facet(), f -> new ArrayList<>())
                .add(new SearchResult.ValueCount(value, count, isChosen(value))));
        choices.forEach((facet, chosen) -> {
            List<SearchResult.ValueCount> values = byFacet.computeIfAbsent(facet, f -> new ArrayList<>());
            chosen.stream()
                    .filter(choice ->
                            values.stream().noneMatch(v -> v.value().choice().equals(choice)))
                    .forEach(choice -> values.add(
                            new SearchResult.ValueCount(new FacetValue(facet, choice, choice, 0), 0, true)));
        });
        return byFacet.entrySet().stream()
                .map(e -> new SearchResult.FacetGroup(e.getKey(), List.copyOf(e.getValue())))
                .toList();
    }

    private boolean isChosen(FacetValue value) {
        return Objects.requireNonNullElse(choices.get(value.facet()), Set.<String>of())
                .contains(value.choice());
    }
}
