package org.vanewright.engineering.bond;

/** How a bond can give way. */
public enum BondMode {
    SHEAR("shear", "sliding along the skin"),
    TENSION("tension", "pulled straight off the skin"),
    CLEAVAGE("cleavage", "prised up from one edge");

    private final String label;
    private final String words;

    BondMode(String label, String words) {
        this.label = label;
        this.words = words;
    }

    public String label() {
        return label;
    }

    /** What somebody would see. */
    public String words() {
        return words;
    }
}
