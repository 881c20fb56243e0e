package org.vanewright.airframe;

import org.vanewright.engineering.section.SurfaceSide;

/** On which skin no device may sit. */
public enum KeepOutSide {
    UPPER("upper"),
    LOWER("lower"),
    BOTH("upper and lower");

    private final String label;

    KeepOutSide(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    public boolean covers(SurfaceSide side) {
        return this == BOTH || name().equals(side.name());
    }
}
