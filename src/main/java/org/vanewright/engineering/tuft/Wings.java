package org.vanewright.engineering.tuft;

import java.util.List;

/** The sides of the aircraft that carry tufts. */
public enum Wings {
    RIGHT(List.of(false)),
    LEFT(List.of(true)),
    BOTH(List.of(false, true));

    private final List<Boolean> left;

    Wings(List<Boolean> left) {
        this.left = left;
    }

    /** For each side in the grid's order, whether it is the left one. */
    public List<Boolean> sides() {
        return left;
    }
}
