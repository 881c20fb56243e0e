package org.vanewright.engineering.flow;

import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.ode.ODEIntegrator;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.ClassicalRungeKuttaIntegrator;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;
import org.hipparchus.ode.sampling.ODEStateInterpolator;

/**
 * The turbulent part of a layer by Head's entrainment, M. R. Head, "Entrainment in the turbulent boundary layer", ARC
 * R&amp;M 3152 (1958):
 *
 * <pre>
 * dθ/ds = c_f/2 − (H + 2)(θ/U) dU/ds          d(U θ H₁)/ds = U F(H₁)
 * </pre>
 *
 * <p>integrated for ln θ and H₁ from station to station by the classical Runge-Kutta method, or where the layer is too thin
 * for such steps by the Dormand-Prince 5(4) pair, until H reaches {@link HeadClosure#SEPARATION}. Behind
 * that H is held and θ follows the first equation without friction, only so that the outer flow has a body to pass.
 */
final class TurbulentLayer implements OrdinaryDifferentialEquation {
    /** Shape factor behind transition: that of a turbulent plate layer of some 10³ Re_θ (common practice). */
    static final double INITIAL_SHAPE = 1.4;

    private static final double SHORTEST_STEP = 1e-12;
    private static final double SLOWEST = 1e-3;
    /** Slowing down behind separation that thickens the stand-in layer; the flow over dead air hardly slows. */
    private static final double MOST_SLOWING = 1.4;

    /** In momentum thicknesses at transition; three times as long would still be stable. */
    private static final double LONGEST_STEP = 120;

    private static final int FEWEST_STEPS = 60;
    private static final int MOST_PARTS = 4;
    private static final int MOST_EVALUATIONS = 20_000;
    private final Layer layer;
    private final EdgeFlow edge;
    private final double viscosity;
    private final double logViscosity;
    private final int first;
    private final StationPath path;
    private int next;
    private double stopAt = Layer.NOWHERE;
    private double logMomentumAtStop;

    private TurbulentLayer(Layer layer, double viscosity, int first) {
        this.layer = layer;
        this.edge = layer.edge;
        this.viscosity = viscosity;
        this.first = first;
        next = first;
        path = new StationPath(edge, layer.transition, first, SLOWEST);
        logViscosity = Math.log(viscosity);
    }

    /**
     * @param first station behind transition
     * @param tolerance relative error of one step
     */
    static void follow(Layer layer, double viscosity, int first, double tolerance) {
        TurbulentLayer turbulent = new TurbulentLayer(layer, viscosity, first);
        turbulent.integrate(tolerance);
        turbulent.goOnSeparated();
    }

    private void integrate(double tolerance) {
        double[] state = {Math.log(layer.momentumAtTransition), HeadClosure.entrainmentShape(INITIAL_SHAPE)};
        if (next == edge.usable) {
            fill(state);
            return;
        }
        int parts = parts();
        if (parts <= MOST_PARTS) {
            goByStations(state, 1.0 / parts);
        } else {
            integrate(new DormandPrince54Integrator(SHORTEST_STEP, path.last(), tolerance, tolerance), 0, state);
        }
    }

    /** Equal steps from station to station that a layer as thin as this takes; a power of two. */
    private int parts() {
        int after = Math.min(next + 1, edge.usable - 1);
        double longest = Math.max(edge.s[after] - edge.s[after - 1], edge.s[next] - layer.transition);
        double wanted =
                Math.max(longest / (LONGEST_STEP * layer.momentumAtTransition), FEWEST_STEPS / (double) edge.s.length);
        return wanted <= 1 ? 1 : wanted <= 2 ? 2 : wanted <= MOST_PARTS ? MOST_PARTS : Integer.MAX_VALUE;
    }

    private void goByStations(double[] start, double step) {
        ClassicalRungeKuttaIntegrator integrator = new ClassicalRungeKuttaIntegrator(step);
        double[] state = start;
        for (double number = 0; next < edge.usable; number += step) {
            double[] reached = integrator.singleStep(this, number, state, number + step);
            if (!(reached[1] > SeparationDetector.SEPARATING)) {
                integrate(integrator, number, state);
                return;
            }
            state = reached;
            if (number + step == next - first + 1) {
                fill(state);
            }
        }
    }

    /** From a place on the path to its end or to separation. */
    private void integrate(ODEIntegrator integrator, double number, double[] state) {
        ODEState start = new ODEState(number, state);
        integrator.addStepHandler(this::fill);
        integrator.addEventDetector(new SeparationDetector(path.last()));
        integrator.setMaxEvaluations(MOST_EVALUATIONS);
        try {
            stoppedAt(integrator.integrate(this, start, path.last()));
        } catch (MathIllegalStateException e) {
            // an edge flow that no layer can follow: the layer ends where the integration did
            stoppedAt(lastReached(integrator, start));
        }
    }

    private void stoppedAt(ODEState reached) {
        if (reached.getTime() < path.last()) {
            stopAt = path.arcAt(reached.getTime());
            logMomentumAtStop = reached.getPrimaryState()[0];
        }
    }

    private static ODEState lastReached(ODEIntegrator integrator, ODEState start) {
        ODEState reached = integrator.getStepStart();
        return reached == null ? start : reached;
    }

    private void fill(ODEStateInterpolator step) {
        ODEState reached = step.getCurrentState();
        for (int number = next - first + 1; number <= reached.getTime(); number++) {
            ODEState state = number < reached.getTime() ? step.getInterpolatedState(number) : reached;
            fill(state.getPrimaryState());
        }
    }

    private void fill(double[] state) {
        set(Math.exp(state[0]), state[1]);
        layer.regime[next] = Regime.TURBULENT;
        next++;
    }

    private void set(double theta, double entrainmentShape) {
        double shape = HeadClosure.shapeFactor(entrainmentShape);
        layer.momentum[next] = theta;
        layer.shape[next] = shape;
        layer.excess[next] = entrainmentShape;
        layer.friction[next] = HeadClosure.friction(shape, edge.speed[next] * theta / viscosity);
    }

    private void goOnSeparated() {
        if (next >= edge.s.length) {
            return;
        }
        double from = stopAt != Layer.NOWHERE ? stopAt : edge.s[edge.usable - 1];
        layer.separation = from;
        double theta = stopAt != Layer.NOWHERE ? Math.exp(logMomentumAtStop) : layer.momentum[next - 1];
        double speed = Math.max(edge.speedAt(from), 1e-3);
        for (; next < edge.s.length; next++) {
            double ratio = Math.min(MOST_SLOWING, speed / Math.max(edge.speed[next], 0.1 * speed));
            set(theta * Math.pow(Math.max(1, ratio), HeadClosure.SEPARATION + 2), SeparationDetector.SEPARATING);
            layer.regime[next] = Regime.SEPARATED;
            layer.friction[next] = 0;
        }
    }

    @Override
    public int getDimension() {
        return 2;
    }

    @Override
    public double[] computeDerivatives(double number, double[] state) {
        path.moveTo(number);
        // trial steps may stray far; bounds keep them finite, accepted steps lie well within
        double logMomentum = Math.max(-30, Math.min(3, state[0]));
        double pace = path.length * Math.exp(-logMomentum);
        double shape = HeadClosure.shapeFactor(state[1]);
        double friction = HeadClosure.frictionByLog(shape, path.here + logMomentum - logViscosity);
        double growth = 0.5 * friction * pace - (shape + 2) * path.rise;
        double drawn = HeadClosure.entrainment(state[1]) * pace;
        return new double[] {growth, drawn - state[1] * (growth + path.rise)};
    }
}
