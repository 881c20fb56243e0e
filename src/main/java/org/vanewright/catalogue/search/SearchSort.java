package org.vanewright.catalogue.search;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** In which order what was found stands. */
public enum SearchSort {
    /** What fits the words best comes first; without words the newest. */
    RELEVANCE("Relevance"),
    /** The newest comes first. */
    DATE("Date"),
    /** The largest measured change comes first, whatever its direction; what has none comes last. */
    EFFECT("Measured change");

    private final String label;

    SearchSort(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /** As in addresses. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Optional<SearchSort> of(String key) {
        return Arrays.stream(values()).filter(s -> s.key().equals(key)).findFirst();
    }
}
