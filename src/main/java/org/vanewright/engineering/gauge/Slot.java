package org.vanewright.engineering.gauge;

/**
 * Where a gauge holds one device of the unit.
 *
 * @param offsetMm of the base's centre from the middle of the unit along the span, outboard positive
 * @param arcMm of that centre along the skin from the leading edge
 * @param angleDeg to the local chordwise direction, toe-in positive
 */
public record Slot(double offsetMm, double arcMm, double angleDeg) {}
