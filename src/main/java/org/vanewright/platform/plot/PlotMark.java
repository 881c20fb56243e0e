package org.vanewright.platform.plot;

import org.jspecify.annotations.Nullable;

/**
 * A place that a plot points out: a line across it, or a point.
 *
 * @param label beside it
 * @param x across; a line upward where {@code y} is absent
 * @param y up; null for a line
 */
public record PlotMark(String label, double x, @Nullable Double y) {}
