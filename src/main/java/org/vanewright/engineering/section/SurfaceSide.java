package org.vanewright.engineering.section;

/** Side of a lifting surface. */
public enum SurfaceSide {
    UPPER,
    LOWER
}
