package org.vanewright.engineering.bond;

/** Units by definition, without rounding. */
final class Exact {
    /** 0.45359237 kg times 9.80665 m/s². */
    static final double POUND_FORCE_N = 4.4482216152605;

    static final double KILOGRAM_FORCE_N = 9.80665;
    static final double INCH_CM = 2.54;

    private Exact() {}
}
