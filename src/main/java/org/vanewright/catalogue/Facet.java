package org.vanewright.catalogue;

import java.util.Arrays;
import java.util.Optional;

/** What a search can be narrowed by, in the order of the page. */
public enum Facet {
    KIND("kind", "Kind"),
    BASIS("basis", "Operating basis"),
    CHORD("chord", "Wing chord"),
    SECTION("section", "Section"),
    PLANFORM("planform", "Device planform"),
    HEIGHT("height", "Device height"),
    POSITION("position", "Chord position"),
    ARRANGEMENT("arrangement", "Arrangement"),
    ADHESIVE("adhesive", "Adhesive class"),
    FLOWN("flown", "Flown or not"),
    CHANGE("change", "Size of the measured change"),
    INTERVAL("interval", "Interval of the change");

    private final String key;
    private final String label;

    Facet(String key, String label) {
        this.key = key;
        this.label = label;
    }

    /** As in addresses. */
    public String key() {
        return key;
    }

    public String label() {
        return label;
    }

    /** By its key. */
    public static Optional<Facet> of(String key) {
        return Arrays.stream(values()).filter(f -> f.key.equals(key)).findFirst();
    }
}
