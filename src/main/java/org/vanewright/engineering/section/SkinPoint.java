package org.vanewright.engineering.section;

/**
 * A point on one side of a section, lengths in chords.
 *
 * @param x chordwise position
 * @param y height over the chord line
 * @param arcLength along the skin from the leading edge
 * @param tangentX dx/ds, unit tangent pointing away from the leading edge
 * @param tangentY dy/ds
 * @param curvature of the skin (1/chord), positive where the skin is convex outward
 */
public record SkinPoint(double x, double y, double arcLength, double tangentX, double tangentY, double curvature) {}
