package org.vanewright.catalogue.search;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.vanewright.catalogue.Facet;
import org.vanewright.catalogue.FacetValue;

/**
 * Counts what was found from the groups of like entries. A value's count is of what would be found if it were chosen
 * instead of the others of its facet.
 */
final class FacetCounts {
    private final Map<Facet, Set<String>> choices;
    private final List<FacetValue> values;
    private final int[] counts;
    private final boolean[] chosen;
    private final int[] facetBits;
    private final int wanted;
    private final Map<Facet, Integer> without = new EnumMap<>(Facet.class);
    private int total;
    private int withoutAny;

    /**
     * Entries with the same facet values.
     *
     * @param values by their numbers
     * @param entries how many
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared; there are tens of thousands
    record Group(int[] values, int entries) {}

    private FacetCounts(Map<Facet, Set<String>> choices, List<FacetValue> values) {
        this.choices = choices;
        this.values = values;
        this.counts = new int[values.size()];
        this.chosen = new boolean[values.size()];
        this.facetBits = new int[values.size()];
        for (int i = 0; i < values.size(); i++) {
            FacetValue value = values.get(i);
            facetBits[i] = bit(value.facet());
            chosen[i] = choices.getOrDefault(value.facet(), Set.of()).contains(value.choice());
        }
        this.wanted = choices.keySet().stream().mapToInt(FacetCounts::bit).reduce(0, (a, b) -> a | b);
    }

    /** @param values of the groups, by their numbers */
    static FacetCounts of(List<Group> groups, List<FacetValue> values, Map<Facet, Set<String>> choices) {
        FacetCounts counts = new FacetCounts(choices, values);
        groups.forEach(counts::add);
        return counts;
    }

    private static int bit(Facet facet) {
        return 1 << facet.ordinal();
    }

    private void add(Group group) {
        withoutAny += group.entries();
        int failing = wanted;
        for (int value : group.values()) {
            if (chosen[value]) {
                failing &= ~facetBits[value];
            }
        }
        if (Integer.bitCount(failing) > 1) {
            return;
        }
        if (failing == 0) {
            total += group.entries();
        } else {
            without.merge(Facet.values()[Integer.numberOfTrailingZeros(failing)], group.entries(), Integer::sum);
        }
        for (int value : group.values()) {
            if (failing == 0 || failing == facetBits[value]) {
                counts[value] += group.entries();
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
                .map(facet -> new SearchResult.Loosened(facet, total + without.getOrDefault(facet, 0)))
                .filter(loosened -> loosened.total() > 0)
                .toList();
    }

    /** The values of each facet that there are, and those chosen that there are not. */
    List<SearchResult.FacetGroup> groups() {
        Map<Facet, List<SearchResult.ValueCount>> byFacet = new EnumMap<>(Facet.class);
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0 || chosen[i]) {
                FacetValue value = values.get(i);
                byFacet.computeIfAbsent(value.facet(), f -> new ArrayList<>())
                        .add(new SearchResult.ValueCount(value, counts[i], chosen[i]));
            }
        }
        choices.forEach((facet, wantedOnes) ->
                addUnknown(facet, wantedOnes, byFacet.computeIfAbsent(facet, f -> new ArrayList<>())));
        return byFacet.entrySet().stream()
                .map(e -> new SearchResult.FacetGroup(
                        e.getKey(),
                        e.getValue().stream()
                                .sorted((a, b) -> a.value().compareTo(b.value()))
                                .toList()))
                .toList();
    }

    private static void addUnknown(Facet facet, Set<String> wanted, List<SearchResult.ValueCount> known) {
        List<SearchResult.ValueCount> unknown = wanted.stream()
                .filter(choice ->
                        known.stream().noneMatch(v -> v.value().choice().equals(choice)))
                .map(choice -> new SearchResult.ValueCount(new FacetValue(facet, choice, choice, 0), 0, true))
                .toList();
        known.addAll(unknown);
    }
}
