package org.vanewright.engineering.inference.meta;

import java.util.ArrayList;
import java.util.List;

/** Data of published examples, by which the methods are checked. */
public final class WorkedExamples {
    /**
     * Thirteen trials of a vaccine: of those vaccinated with and without the disease, then of those not vaccinated. G. A.
     * Colditz et al., Efficacy of BCG Vaccine in the Prevention of Tuberculosis: Meta-Analysis of the Published Literature,
     * JAMA 271, 1994; read from the data set {@code dat.bcg} of the R package metadat 1.2-0 (Debian r-cran-metadat).
     */
    private static final int[][] TRIALS = {
        {4, 119, 11, 128},
        {6, 300, 29, 274},
        {3, 228, 11, 209},
        {62, 13536, 248, 12619},
        {33, 5036, 47, 5761},
        {180, 1361, 372, 1079},
        {8, 2537, 10, 619},
        {505, 87886, 499, 87892},
        {29, 7470, 45, 7232},
        {17, 1699, 65, 1600},
        {186, 50448, 141, 27197},
        {5, 2493, 3, 2338},
        {27, 16886, 29, 17825}
    };

    /**
     * Nine comparisons of two kinds of hospital care: count, mean and standard deviation of days of stay in either. S.-L. T.
     * Normand, Meta-Analysis: Formulating, Evaluating, Combining, and Reporting, Statistics in Medicine 18, 1999; read from
     * the data set {@code dat.normand1999} of the same package.
     */
    private static final double[][] STAYS = {
        {155, 55, 47, 156, 75, 64},
        {31, 27, 7, 32, 29, 4},
        {75, 64, 17, 71, 119, 29},
        {18, 66, 20, 18, 137, 48},
        {8, 14, 8, 13, 18, 11},
        {57, 19, 7, 52, 18, 4},
        {34, 52, 45, 33, 41, 34},
        {110, 21, 16, 183, 31, 27},
        {60, 30, 27, 52, 23, 20}
    };

    private WorkedExamples() {}

    /** Logarithms of the risk ratios of the vaccine's trials. */
    public static List<Effect> vaccine() {
        List<Effect> effects = new ArrayList<>();
        for (int[] t : TRIALS) {
            double first = t[0] + t[1];
            double second = t[2] + t[3];
            effects.add(new Effect(
                    Math.log(t[0] / first / (t[2] / second)),
                    Math.sqrt(1.0 / t[0] - 1 / first + 1.0 / t[2] - 1 / second)));
        }
        return List.copyOf(effects);
    }

    /** Differences of the mean stay, days. */
    public static List<Effect> stays() {
        List<Effect> effects = new ArrayList<>();
        for (double[] s : STAYS) {
            effects.add(new Effect(s[1] - s[4], Math.sqrt(s[2] * s[2] / s[0] + s[5] * s[5] / s[3])));
        }
        return List.copyOf(effects);
    }
}
