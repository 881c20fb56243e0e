package org.vanewright.engineering.drawing;

/** What a line is for; a cutter treats each layer in its own way. */
public enum Layer {
    /** To be cut through. */
    CUT,
    /** To be folded. */
    FOLD,
    /** To be drawn: centre lines, scale bars, registration marks, the drawn object itself. */
    MARK,
    /** Lettering. */
    TEXT
}
