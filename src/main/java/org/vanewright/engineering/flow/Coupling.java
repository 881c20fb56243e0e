package org.vanewright.engineering.flow;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.section.SurfaceSide;

/**
 * Outer flow and boundary layers, each following from the other: the layers displace the outer flow as sources d(U
 * δ*)/ds on the skin would (M. J. Lighthill, "On displacement thickness", Journal of Fluid Mechanics 4 (1958) 383-392), and
 * the outer flow so changed is the edge of the layers.
 *
 * <p>{@link Displacement} says what of the displaced flow the outer flow feels. The change of a pass is smoothed before it
 * is applied, because the direct iteration amplifies ripples. {@link Mixing} takes the place of a fixed under-relaxation.
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
    private final DisplacementGrid grid;
    private final double viscosity;
    private final double upperX;
    private final double lowerX;

    /**
     * @param viscosity ν over free-stream speed, in the section's unit
     * @param upperX where the upper layer is made turbulent; NaN for free transition
     * @param lowerX likewise for the lower layer
     */
    Coupling(PotentialFlow flow, double viscosity, double upperX, double lowerX) {
        this.flow = flow;
        grid = new DisplacementGrid(flow.geometry().arc);
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
        double[] guess = grid.pick(start == null ? new double[flow.geometry().ends()] : start);
        int pass = 0;
        // a later try starts from the best of the one before, with nothing remembered and shorter steps
        for (int go = 0; go < TRIES; go++) {
            double limit = go == 0 && start == null ? 1 : LONGEST_STEP / (1 << go);
            Mixing mixing = new Mixing();
            int bestPass = pass;
            while (pass - bestPass < PATIENCE && pass < MOST_PASSES) {
                pass++;
                double[] whole = grid.expand(guess);
                CoupledFlow now = pass(outer.with(flow.response(whole)), whole);
                Displacement displacement = new Displacement(now, grid, viscosity);
                double[] change = displacement.felt();
                double largest = largest(change);
                for (int i = 0; i < change.length; i++) {
                    change[i] -= guess[i];
                }
                double residual = largest(change) / largest;
                guess = mixing.next(guess, displacement.step(change), limit * largest);
                limit = Math.min(limit, LONGEST_STEP);
                if (best == null || residual < best.residual()) {
                    best = now.after(pass, residual, grid.expand(guess));
                    bestPass = pass;
                }
                if (residual < TOLERANCE) {
                    return best;
                }
            }
            guess = best == null ? guess : grid.pick(best.displaced());
        }
        if (best == null) {
            throw new IllegalStateException("no pass was made");
        }
        return best.after(pass, best.residual(), best.displaced());
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
