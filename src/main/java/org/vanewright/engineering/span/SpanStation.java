package org.vanewright.engineering.span;

/**
 * A wing's section at one span station.
 *
 * @param chordMm local chord
 * @param liftSlopePerRad of the section in two-dimensional flow
 * @param zeroLiftRad angle of the root's chord line at which this section has no lift: its own zero-lift angle less its
 *     twist against the root
 */
public record SpanStation(double chordMm, double liftSlopePerRad, double zeroLiftRad) {}
