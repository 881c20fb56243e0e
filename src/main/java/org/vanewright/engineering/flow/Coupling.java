package org.vanewright.engineering.flow;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.section.SurfaceSide;

/**
 * Outer flow and boundary layers, each following from the other: the layers displace the outer flow as sources d(U
 * δ*)/ds on the skin would (M. J. Lighthill, "On displacement thickness", Journal of Fluid Mechanics 4 (1958) 383-392), and
 * the outer flow so changed is the edge of the layers.
 *
 * <p>{@link Displacement} says what of the displaced flow the outer flow feels, {@link Interaction} what step answers to the
 * change of a pass, and {@link Mixing} mends the step by what the last ones did.
 */
final class Coupling {
    static final double TOLERANCE = 2e-3;

    private static final int MOST_PASSES = 40;
    /** Passes without a better agreement after which a try ends: transition, for one, can jump to and fro. */
    private static final int PATIENCE = 7;

    private static final int TRIES = 3;

    private static final double STEP_ERROR = 1e-6;
    /** Longest step of one pass over the largest displaced flow. */
    private static final double LONGEST_STEP = 0.3;

    private static final int LIFT_STEPS = 20;
    private static final double LIFT_WITHIN = 1e-10;

    private final PotentialFlow flow;
    private final OuterResponse response;
    private final double viscosity;
    private final double upperX;
    private final double lowerX;

    /**
     * @param response of that flow
     * @param viscosity ν over free-stream speed, in the section's unit
     * @param upperX where the upper layer is made turbulent; NaN for free transition
     * @param lowerX likewise for the lower layer
     */
    Coupling(PotentialFlow flow, OuterResponse response, double viscosity, double upperX, double lowerX) {
        this.flow = flow;
        this.response = response;
        this.viscosity = viscosity;
        this.upperX = upperX;
        this.lowerX = lowerX;
    }

    CoupledFlow atAngle(double angleRad, double @Nullable [] start) {
        return solve(added -> flow.at(angleRad, added), start);
    }

    CoupledFlow atLift(double liftCoefficient, double @Nullable [] start) {
        return solve(added -> withLift(liftCoefficient, added), start);
    }

    /** Arc lengths of the places that displaced flow is known at. */
    double[] grid() {
        return response.grid.arc();
    }

    /** One pass over given flow: the layers without their effect on it. */
    CoupledFlow pass(PanelSolution outer, double[] displaced) {
        StagnationPoint stagnation = StagnationPoint.of(outer);
        EdgeFlow up = EdgeFlow.of(outer, stagnation, SurfaceSide.UPPER);
        EdgeFlow low = EdgeFlow.of(outer, stagnation, SurfaceSide.LOWER);
        return new CoupledFlow(
                outer,
                stagnation,
                BoundaryLayer.follow(up, viscosity, upperX, STEP_ERROR),
                BoundaryLayer.follow(low, viscosity, lowerX, STEP_ERROR),
                displaced,
                displaced,
                1,
                1);
    }

    private interface Outer {
        PanelSolution with(double[] addedVorticity);
    }

    private CoupledFlow solve(Outer outer, double @Nullable [] start) {
        CoupledFlow best = null;
        double[] guess = start == null ? new double[response.grid.arc().length] : start;
        int pass = 0;
        // a later try starts from the best of the one before, with nothing remembered and shorter steps
        for (int go = 0; go < TRIES; go++) {
            double limit = go == 0 && start == null ? 1 : LONGEST_STEP / (1 << go);
            Steps steps = new Steps(response, start == null || go > 0 ? Steps.FROM_AFAR : Steps.FROM_NEARBY);
            int bestPass = pass;
            while (pass - bestPass < PATIENCE && pass < MOST_PASSES) {
                pass++;
                CoupledFlow now = pass(outer.with(response.to(guess)), guess);
                Displacement displacement = new Displacement(now, response.grid, viscosity);
                double[] change = displacement.felt();
                double largest = largest(change);
                for (int i = 0; i < change.length; i++) {
                    change[i] -= guess[i];
                }
                double residual = largest(change) / largest;
                guess = steps.next(guess, change, displacement, limit * largest, residual < TOLERANCE);
                limit = Math.min(limit, LONGEST_STEP);
                if (best == null || residual < best.residual()) {
                    best = now.after(pass, residual, guess);
                    bestPass = pass;
                }
                if (residual < TOLERANCE) {
                    return best;
                }
            }
            guess = best == null ? guess : best.displaced();
        }
        if (best == null) {
            throw new IllegalStateException("no pass was made");
        }
        return best.after(pass, best.residual(), best.displaced());
    }

    /** From one guess to the next; a law of interaction serves for several passes, for it changes little. */
    private static final class Steps {
        /** Laws for a guess that is nothing like what comes of it, and for one that a like angle leads to. */
        private static final int FROM_AFAR = 3;

        private static final int FROM_NEARBY = 2;

        private final int laws;
        private final OuterResponse response;
        private final Mixing mixing = new Mixing();
        private @Nullable Interaction interaction;
        private int passes;

        Steps(OuterResponse response, int laws) {
            this.response = response;
            this.laws = laws;
        }

        double[] next(double[] guess, double[] change, Displacement displacement, double longest, boolean done) {
            Interaction law = interaction;
            if (law == null || passes < laws && !done) {
                law = displacement.interaction(response);
                interaction = law;
            }
            passes++;
            return mixing.next(guess, law.step(change), longest);
        }
    }

    private PanelSolution withLift(double wanted, double[] added) {
        double angle = flow.angleForLift(wanted);
        PanelSolution solution = flow.at(angle, added);
        for (int i = 0; i < LIFT_STEPS; i++) {
            double miss = wanted - solution.liftCoefficient();
            if (Math.abs(miss) < LIFT_WITHIN) {
                return solution;
            }
            angle = Math.max(-0.6, Math.min(0.6, angle + miss / flow.liftSlope()));
            solution = flow.at(angle, added);
        }
        return solution;
    }

    private static double largest(double[] values) {
        double largest = 1e-300;
        for (double value : values) {
            largest = Math.max(largest, Math.abs(value));
        }
        return largest;
    }
}
