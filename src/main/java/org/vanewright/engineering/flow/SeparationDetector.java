package org.vanewright.engineering.flow;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;

/** Stops an integration where H₁, the second of its state, falls to that of turbulent separation. */
final class SeparationDetector implements ODEEventDetector {
    static final double SEPARATING = HeadClosure.entrainmentShape(HeadClosure.SEPARATION);

    private final double longest;
    private final BracketedUnivariateSolver<UnivariateFunction> solver =
            new BracketingNthOrderBrentSolver(0, 1e-7, 0, 5);

    /** @param longest length of the integration */
    SeparationDetector(double longest) {
        this.longest = longest;
    }

    @Override
    public double g(ODEStateAndDerivative state) {
        return state.getPrimaryState()[1] - SEPARATING;
    }

    @Override
    public AdaptableInterval getMaxCheckInterval() {
        return AdaptableInterval.of(longest);
    }

    @Override
    public int getMaxIterationCount() {
        return 50;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
        return solver;
    }

    @Override
    public ODEEventHandler getHandler() {
        return (state, detector, increasing) -> Action.STOP;
    }
}
