package org.vanewright.printrun;

/** What is found wrong with a printed piece. */
public enum DefectKind {
    WARPED("Warped"),
    ROUGH_FOOT("Rough foot"),
    LAYER_SPLIT("Layer split"),
    UNDER_SIZE("Under size"),
    OTHER("Other");

    private final String label;

    DefectKind(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
