package org.vanewright.engineering.drawing;

/** How a closed outline is filled. */
public enum Fill {
    NONE,
    /** A faint tint behind other lines. */
    TINT,
    /** A tint that calls for attention: keep-outs, devices in a plan. */
    ACCENT,
    /** Solid ink: arrows, scale-bar blocks. */
    SOLID
}
