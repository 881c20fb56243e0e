package org.vanewright.adhesive;

/** What a test method measures. */
public enum Property {
    PEEL("peel strength, a force for each width of tape"),
    CLEAVAGE("cleavage strength, a force for each width of a rigid joint"),
    SHEAR("shear strength, a force for each area"),
    TENSILE("tensile strength, a force for each area"),
    HOLDING("how long a hung mass stays up");

    private final String words;

    Property(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
