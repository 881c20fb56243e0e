package org.vanewright.catalogue.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.vanewright.catalogue.FacetValue;

/** Gives each facet value a small number, so that thousands of sets of them are counted in no time. */
final class FacetRegister {
    /** By the key, so that two ways to write the same value are one. */
    private final Map<String, Integer> numbers = new HashMap<>();

    private final List<FacetValue> values = new ArrayList<>();

    /** The numbers of those values. */
    synchronized int[] numbers(List<FacetValue> wanted) {
        return wanted.stream().mapToInt(this::number).distinct().toArray();
    }

    private int number(FacetValue value) {
        return numbers.computeIfAbsent(value.key(), key -> {
            values.add(value);
            return values.size() - 1;
        });
    }

    /** Whether a value has a number, by its key. */
    synchronized boolean knows(String key) {
        return numbers.containsKey(key);
    }

    /** Every value so far, by its number. */
    synchronized List<FacetValue> values() {
        return List.copyOf(values);
    }
}
