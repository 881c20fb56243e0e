package org.vanewright.engineering.inference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Several configurations against one baseline: p-values adjusted so that the chance of any false alarm at all stays at the
 * significance asked for, whatever the comparisons have in common.
 *
 * <pre>
 * p̃₍ᵢ₎ = max over j ≤ i of min(1, (m − j + 1) p₍ⱼ₎),        p₍₁₎ ≤ … ≤ p₍ₘ₎
 * </pre>
 *
 * S. Holm, A Simple Sequentially Rejective Multiple Test Procedure, Scandinavian Journal of Statistics 6, 1979, 65-70 (from
 * memory). Dunnett's test would be a little sharper, but no library here has its distribution.
 */
public final class Holm {
    private Holm() {}

    /**
     * One configuration among several.
     *
     * @param comparison with an interval that holds for this comparison by itself
     * @param adjustedPValue by Holm's rule
     * @param jointInterval by Bonferroni's: all of them hold together with the confidence of the comparisons
     */
    public record Adjusted(Comparison comparison, double adjustedPValue, Interval jointInterval) {}

    /** In the order given. */
    public static List<Adjusted> adjust(List<Comparison> comparisons) {
        double[] adjusted = adjustedPValues(
                comparisons.stream().mapToDouble(Comparison::pValue).toArray());
        List<Adjusted> result = new ArrayList<>();
        for (int i = 0; i < adjusted.length; i++) {
            Comparison c = comparisons.get(i);
            double joint = 1 - (1 - c.confidence()) / adjusted.length;
            result.add(new Adjusted(c, adjusted[i], c.at(joint).interval()));
        }
        return List.copyOf(result);
    }

    static double[] adjustedPValues(double... pValues) {
        int count = pValues.length;
        List<Integer> byValue = IntStream.range(0, count)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> pValues[i]))
                .toList();
        double[] adjusted = new double[count];
        double largest = 0;
        for (int rank = 0; rank < count; rank++) {
            int i = byValue.get(rank);
            largest = Math.max(largest, Math.min(1, (count - rank) * pValues[i]));
            adjusted[i] = largest;
        }
        return adjusted;
    }
}
