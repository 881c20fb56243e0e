package org.vanewright.engineering.flow;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;

/**
 * Next guess of a fixed-point iteration from the last few: D. G. Anderson, "Iterative procedures for nonlinear integral
 * equations", Journal of the ACM 12 (1965) 547-560, with the differences' least squares by their normal equations.
 */
final class Mixing {
    private static final int DEPTH = 3;
    /** Keeps nearly equal differences apart. */
    private static final double RIDGE = 1e-8;

    private final Deque<double[]> guessSteps = new ArrayDeque<>();
    private final Deque<double[]> changeSteps = new ArrayDeque<>();
    private double[] lastGuess = {};
    private double[] lastChange = {};

    /**
     * @param guess the last one
     * @param change what one pass would add to it
     * @param longest the largest element of the step from the last guess to the next
     */
    double[] next(double[] guess, double[] change, double longest) {
        if (lastGuess.length > 0) {
            remember(difference(guess, lastGuess), difference(change, lastChange));
        }
        lastGuess = guess;
        lastChange = change;
        double[] step = change.clone();
        double[] weights = weights(change);
        Iterator<double[]> guesses = guessSteps.iterator();
        Iterator<double[]> changes = changeSteps.iterator();
        for (double weight : weights) {
            subtract(step, guesses.next(), weight);
            subtract(step, changes.next(), weight);
        }
        return added(guess, step, longest);
    }

    private double[] weights(double[] change) {
        double[][] steps = changeSteps.toArray(double[][]::new);
        int n = steps.length;
        double[][] normal = new double[n][n];
        double[] right = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                normal[i][j] = DenseFactorisation.dot(steps[i], steps[j], 0, change.length);
                normal[j][i] = normal[i][j];
            }
            normal[i][i] += RIDGE;
            right[i] = DenseFactorisation.dot(steps[i], change, 0, change.length);
        }
        return new DenseFactorisation(normal).solve(right);
    }

    private static double[] added(double[] guess, double[] step, double longest) {
        double largest = 0;
        for (double element : step) {
            largest = Math.max(largest, Math.abs(element));
        }
        double factor = largest > longest ? longest / largest : 1;
        double[] next = guess.clone();
        subtract(next, step, -factor);
        return next;
    }

    /** Both scaled so that the change is of length 1: steps differ in length, and all are to count alike. */
    private void remember(double[] guessStep, double[] changeStep) {
        double square = DenseFactorisation.dot(changeStep, changeStep, 0, changeStep.length);
        if (square == 0) {
            return;
        }
        if (guessSteps.size() == DEPTH) {
            guessSteps.removeFirst();
            changeSteps.removeFirst();
        }
        double scale = 1 / Math.sqrt(square);
        guessSteps.addLast(scaled(guessStep, scale));
        changeSteps.addLast(scaled(changeStep, scale));
    }

    private static double[] scaled(double[] values, double by) {
        for (int i = 0; i < values.length; i++) {
            values[i] *= by;
        }
        return values;
    }

    private static double[] difference(double[] a, double[] b) {
        double[] difference = a.clone();
        subtract(difference, b, 1);
        return difference;
    }

    private static void subtract(double[] from, double[] what, double factor) {
        for (int i = 0; i < from.length; i++) {
            from[i] -= factor * what[i];
        }
    }
}
