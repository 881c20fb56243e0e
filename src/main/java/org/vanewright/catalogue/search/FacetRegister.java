package org.vanewright.catalogue.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.vanewright.catalogue.FacetValue;

/** Gives each facet value a small number, so that thousands of sets of them are counted in no time. */
final class FacetRegister {
    private final Map<FacetValue, Integer> numbers = new HashMap<>();
    private final List<FacetValue> values = new ArrayList<>();

    /** The numbers of those values. */
    synchronized int[] numbers(List<FacetValue> wanted) {
        return wanted.stream()
                .mapToInt(value -> numbers.computeIfAbsent(value, v -> {
                    values.add(v);
                    return values.size() - 1;
                }))
                .toArray();
    }

    /** Every value so far, by its number. */
    synchronized List<FacetValue> values() {
        return List.copyOf(values);
    }
}
