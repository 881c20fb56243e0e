package org.vanewright.campaign;

/** How configurations follow each other, so that drift does not look like a change. */
public enum FlyingOrder {
    /** In each block every configuration once, in an order drawn by lot. */
    RANDOMISED_BLOCKS("Blocks, the order in each drawn by lot"),
    /** In each block every configuration once, every other block the other way round. */
    INTERLEAVED("Blocks, every other one the other way round"),
    /** All of one configuration, then all of the next, where refitting each time is not possible. */
    ONE_AFTER_ANOTHER("One configuration after another");

    private final String label;

    FlyingOrder(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /** Whether configurations stand in the same block, so that they can be compared within it. */
    public boolean isBlocked() {
        return this != ONE_AFTER_ANOTHER;
    }
}
