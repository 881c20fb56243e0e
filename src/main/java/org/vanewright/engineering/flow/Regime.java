package org.vanewright.engineering.flow;

/** State of a boundary layer at a place. */
public enum Regime {
    LAMINAR,
    TURBULENT,
    /** Behind turbulent separation; nothing is claimed about the layer there. */
    SEPARATED
}
