package org.vanewright.platform.plot;

/**
 * A point of a curve.
 *
 * @param x across
 * @param y up; NaN breaks the curve
 */
public record PlotPoint(double x, double y) {}
