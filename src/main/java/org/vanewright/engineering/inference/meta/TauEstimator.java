package org.vanewright.engineering.inference.meta;

import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** How the variance of true effects between studies, τ², is estimated. */
public enum TauEstimator {
    /**
     * By moments, without iteration:
     *
     * <pre>
     * τ² = max(0, (Q − (k − 1)) / (Σ w − Σ w²/Σ w)),     w = 1/v
     * </pre>
     *
     * R. DerSimonian, N. Laird, Meta-Analysis in Clinical Trials, Controlled Clinical Trials 7, 1986 (from memory).
     */
    DERSIMONIAN_LAIRD("DerSimonian and Laird's moments") {
        @Override
        double estimate(List<Effect> effects) {
            Weighted fixed = Weighted.at(0, effects);
            double scale = fixed.sum() - fixed.squares() / fixed.sum();
            return Math.max(0, (fixed.q() - (effects.size() - 1)) / scale);
        }
    },
    /**
     * By restricted maximum likelihood, where
     *
     * <pre>
     * ℓ(τ²) = −½ Σ ln(v + τ²) − ½ ln Σ w − ½ Σ w (y − μ)²,     w = 1/(v + τ²)
     * dℓ/dτ² = −½ (Σ w − Σ w²/Σ w − Σ w² (y − μ)²)
     * </pre>
     *
     * W. Viechtbauer, Bias and Efficiency of Meta-Analytic Variance Estimators in the Random-Effects Model, Journal of
     * Educational and Behavioral Statistics 30, 2005 (from memory). The largest of several maxima is taken.
     */
    REML("restricted maximum likelihood (REML)") {
        @Override
        double estimate(List<Effect> effects) {
            double[] grid = grid(effects);
            int best = 0;
            for (int i = 1; i < grid.length; i++) {
                if (likelihood(grid[i], effects) > likelihood(grid[best], effects)) {
                    best = i;
                }
            }
            return root(best, grid, effects);
        }
    };

    private static final int GRID = 400;
    private static final double FINEST = 1e-8;
    private static final double RELATIVE = 1e-13;
    private static final double ABSOLUTE = 1e-14;
    private static final int MOST_STEPS = 500;

    private final String words;

    TauEstimator(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** τ², 0 or more, in the square of the effects' unit. */
    abstract double estimate(List<Effect> effects);

    /** From 0 in equal ratios to the square of the effects' range, which no maximum lies beyond. */
    private static double[] grid(List<Effect> effects) {
        double low = effects.stream().mapToDouble(Effect::value).min().orElse(0);
        double high = effects.stream().mapToDouble(Effect::value).max().orElse(0);
        double widest = (high - low) * (high - low);
        if (!(widest > 0)) {
            return new double[] {0};
        }
        double[] grid = new double[GRID + 1];
        for (int i = 1; i <= GRID; i++) {
            grid[i] = widest * Math.pow(FINEST, 1 - (double) i / GRID);
        }
        return grid;
    }

    /** Where the slope is 0 beside the best of the grid. */
    private static double root(int best, double[] grid, List<Effect> effects) {
        boolean rising = slope(grid[best], effects) > 0;
        double low = rising ? grid[best] : grid[Math.max(0, best - 1)];
        double high = rising ? grid[Math.min(grid.length - 1, best + 1)] : grid[best];
        if (!(slope(low, effects) > 0 && slope(high, effects) < 0)) {
            return grid[best];
        }
        UnivariateFunction slope = t -> slope(t, effects);
        return new BracketingNthOrderBrentSolver(RELATIVE, high * ABSOLUTE, 5).solve(MOST_STEPS, slope, low, high);
    }

    private static double likelihood(double tauSquared, List<Effect> effects) {
        Weighted at = Weighted.at(tauSquared, effects);
        double logs = effects.stream()
                .mapToDouble(e -> Math.log(e.variance() + tauSquared))
                .sum();
        return -(logs + Math.log(at.sum()) + at.q()) / 2;
    }

    private static double slope(double tauSquared, List<Effect> effects) {
        Weighted at = Weighted.at(tauSquared, effects);
        return -(at.sum() - at.squares() / at.sum() - at.score()) / 2;
    }
}
