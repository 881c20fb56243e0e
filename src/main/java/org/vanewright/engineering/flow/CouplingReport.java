package org.vanewright.engineering.flow;

/**
 * How well outer flow and layers agree.
 *
 * @param iterations passes of the boundary layers
 * @param residual largest change of the displaced flow in the last pass, over its largest value
 * @param converged whether the residual fell below 0.002
 */
public record CouplingReport(int iterations, double residual, boolean converged) {}
