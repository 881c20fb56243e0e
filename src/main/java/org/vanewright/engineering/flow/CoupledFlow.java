package org.vanewright.engineering.flow;

/**
 * Outer flow and boundary layers that go together.
 *
 * @param outer flow outside the layers
 * @param stagnation where it parts
 * @param upper layer of the upper side
 * @param lower layer of the lower side
 * @param displaced flow displaced by the layers on the grid, positive along the order of the panels
 * @param onward the same as the passes would go on with it: a start for a like angle
 * @param iterations passes of the layers that were made
 * @param residual largest change of the displaced flow in the last pass, over its largest value
 */
record CoupledFlow(
        PanelSolution outer,
        StagnationPoint stagnation,
        Layer upper,
        Layer lower,
        double[] displaced,
        double[] onward,
        int iterations,
        double residual) {

    CoupledFlow after(int passes, double remaining, double[] next) {
        return new CoupledFlow(outer, stagnation, upper, lower, displaced, next, passes, remaining);
    }

    boolean converged() {
        return residual < Coupling.TOLERANCE;
    }
}
