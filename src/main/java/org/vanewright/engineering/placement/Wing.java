package org.vanewright.engineering.placement;

/** Left and right as the pilot sees them. */
public enum Wing {
    LEFT,
    RIGHT
}
