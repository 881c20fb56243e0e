package org.vanewright.record.provenance;

/** How somebody came to know a figure. */
public enum Origin {
    MEASURED("measured"),
    CALCULATED("calculated"),
    FROM_MAKER("from the maker"),
    LITERATURE("from literature"),
    ESTIMATED("estimated");

    private final String label;

    Origin(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
