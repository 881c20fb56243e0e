package org.vanewright.engineering.inference.survival;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;
import org.hipparchus.linear.SingularValueDecomposition;
import org.jspecify.annotations.Nullable;

/**
 * Whether groups lose at the same rate: at each time of losses the expected share of each group follows from who is at
 * risk, and the statistic is (O − E)ᵀ V⁻ (O − E) with the hypergeometric covariance V, χ² with one degree of freedom less
 * than groups. N. Mantel, Cancer Chemotherapy Reports 50, 1966; R. Peto and J. Peto, J. R. Stat. Soc. A 135, 1972 (from
 * memory). Not Σ (O − E)²/E, which is smaller.
 *
 * @param chiSquared the statistic
 * @param degreesOfFreedom groups that had anything at risk, less one
 * @param pValue chance of so large a statistic when there is no difference
 * @param observed losses of each group
 * @param expected losses of each group if there were no difference
 */
public record LogRank(
        double chiSquared, int degreesOfFreedom, double pValue, List<Integer> observed, List<Double> expected) {
    public LogRank {
        observed = List.copyOf(observed);
        expected = List.copyOf(expected);
    }

    /**
     * @param groups two or more
     * @return null where nothing was lost, or at no time more than one group was at risk, so that nothing is compared
     */
    public static @Nullable LogRank of(List<List<Lifetime>> groups) {
        int count = groups.size();
        if (count < 2) {
            throw new IllegalArgumentException("two groups are needed");
        }
        double[] expected = new double[count];
        double[][] covariance = new double[count][count];
        List<Lifetime> all = groups.stream().flatMap(List::stream).toList();
        for (RiskSet set : RiskSet.of(all)) {
            int[] atRisk = groups.stream()
                    .mapToInt(g -> KaplanMeier.atRisk(g, set.hours()))
                    .toArray();
            add(set, atRisk, expected, covariance);
        }
        int[] lost = groups.stream()
                .mapToInt(g -> (int) g.stream().filter(Lifetime::lost).count())
                .toArray();
        List<Integer> varying = IntStream.range(0, count)
                .filter(i -> covariance[i][i] > 0)
                .boxed()
                .toList();
        return varying.size() < 2 ? null : statistic(varying, lost, expected, covariance);
    }

    private static void add(RiskSet set, int[] atRisk, double[] expected, double[][] covariance) {
        double n = set.atRisk();
        double spread = n < 2 ? 0 : set.lost() * (n - set.lost()) / (n - 1);
        for (int i = 0; i < atRisk.length; i++) {
            double share = atRisk[i] / n;
            expected[i] += set.lost() * share;
            for (int j = 0; j < atRisk.length; j++) {
                covariance[i][j] += spread * share * ((i == j ? 1 : 0) - atRisk[j] / n);
            }
        }
    }

    private static LogRank statistic(List<Integer> varying, int[] lost, double[] expected, double[][] covariance) {
        int size = varying.size() - 1; // the last group follows from the others
        Array2DRowRealMatrix v = new Array2DRowRealMatrix(size, size);
        RealVector difference = new ArrayRealVector(size);
        for (int i = 0; i < size; i++) {
            int row = varying.get(i);
            difference.setEntry(i, lost[row] - expected[row]);
            for (int j = 0; j < size; j++) {
                v.setEntry(i, j, covariance[row][varying.get(j)]);
            }
        }
        SingularValueDecomposition decomposed = new SingularValueDecomposition(v);
        double chiSquared = difference.dotProduct(decomposed.getSolver().solve(difference));
        int freedom = decomposed.getRank();
        List<Integer> observed = new ArrayList<>();
        List<Double> awaited = new ArrayList<>();
        for (int i = 0; i < lost.length; i++) {
            observed.add(lost[i]);
            awaited.add(expected[i]);
        }
        double pValue = 1 - new ChiSquaredDistribution(freedom).cumulativeProbability(chiSquared);
        return new LogRank(chiSquared, freedom, pValue, observed, awaited);
    }
}
