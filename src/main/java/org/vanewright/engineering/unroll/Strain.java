package org.vanewright.engineering.unroll;

/**
 * How far lengths on the flat sheet differ from those on the skin, and where.
 *
 * @param value largest |flat length / true length − 1| of a short line in any direction; 0 where the skin is
 *     developable
 * @param spanFraction where it occurs, 0 at the inner end, 1 at the outer
 * @param chordFraction where it occurs
 */
public record Strain(double value, double spanFraction, double chordFraction) {
    static final Strain NONE = new Strain(0, 0, 0);
}
