package org.vanewright.engineering.template;

/** The line on the wing that the template is laid against. */
public enum Register {
    /** A fold along the leading edge, with a flap that wraps under. */
    LEADING_EDGE,
    /** The rear edge of the template lies on the trailing edge. */
    TRAILING_EDGE,
    /** One edge of the template lies on a spar line at a given chord fraction. */
    SPAR_LINE
}
