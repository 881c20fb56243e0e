package org.vanewright.campaign.reduction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.FlyingOrder;
import org.vanewright.campaign.Measure;
import org.vanewright.campaign.PlanDocument;
import org.vanewright.engineering.inference.Blocked;
import org.vanewright.engineering.inference.Claim;
import org.vanewright.engineering.inference.Comparison;
import org.vanewright.engineering.inference.Holm;
import org.vanewright.engineering.inference.Sample;
import org.vanewright.engineering.inference.SampleSize;
import org.vanewright.engineering.inference.Welch;
import org.vanewright.engineering.input.InvalidInputException;

/** Every configuration against the unmodified aircraft: within blocks where all of them are complete, else by Welch's test. */
final class Comparisons {
    private static final int FEWEST_BLOCKS = 3;

    private final PlanDocument plan;
    private final Measure measure;
    private final List<ReducedConfiguration> all;
    private final @Nullable List<double[]> blocks;
    private boolean severalInABlock;

    Comparisons(PlanDocument plan, Measure measure, List<ReducedConfiguration> all) {
        this.plan = plan;
        this.measure = measure;
        this.all = all;
        this.blocks = all.size() < 2 ? null : completeBlocks();
    }

    String design() {
        if (blocks != null) {
            return "Compared within " + blocks.size()
                    + " blocks, each of which holds every configuration (complete blocks"
                    + (severalInABlock ? "; of several test points in a block their mean counts" : "") + ")"
                    + correction();
        }
        return "Compared by Welch's test on independent test points, since " + why() + correction();
    }

    private String why() {
        FlyingOrder order = plan.repeats().order();
        return order == null || !order.isBlocked()
                ? "the configurations were not flown in blocks"
                : "there are not three blocks that all hold every configuration";
    }

    private String correction() {
        return all.size() > 2
                ? "; probabilities are corrected for " + (all.size() - 1)
                        + " comparisons by Holm's method (no library here offers Dunnett's)."
                : ".";
    }

    /**
     * Means by block and configuration, where each block holds every configuration; null where there are none such. The
     * stalls of one flight have more in common than those of another, so it is the flights that count.
     */
    private @Nullable List<double[]> completeBlocks() {
        FlyingOrder order = plan.repeats().order();
        if (order == null || !order.isBlocked()) {
            return null;
        }
        Map<Integer, double[]> sums = new LinkedHashMap<>();
        Map<Integer, int[]> counts = new LinkedHashMap<>();
        for (int c = 0; c < all.size(); c++) {
            for (ReducedPoint point : all.get(c).points()) {
                Integer block = point.raw().block();
                if (block == null) {
                    return null;
                }
                sums.computeIfAbsent(block, b -> new double[all.size()])[c] += point.compared();
                counts.computeIfAbsent(block, b -> new int[all.size()])[c]++;
            }
        }
        counts.forEach((block, count) -> severalInABlock |= Arrays.stream(count).anyMatch(n -> n > 1));
        boolean complete =
                counts.values().stream().allMatch(n -> Arrays.stream(n).noneMatch(one -> one == 0));
        return complete && sums.size() >= FEWEST_BLOCKS ? means(sums, counts) : null;
    }

    private static List<double[]> means(Map<Integer, double[]> sums, Map<Integer, int[]> counts) {
        List<double[]> means = new ArrayList<>();
        sums.forEach((block, sum) -> {
            int[] count = counts.getOrDefault(block, new int[sum.length]);
            double[] mean = new double[sum.length];
            Arrays.setAll(mean, c -> sum[c] / count[c]);
            means.add(mean);
        });
        return List.copyOf(means);
    }

    List<Conclusion> conclusions() {
        List<@Nullable Comparison> comparisons = new ArrayList<>();
        List<@Nullable String> missing = new ArrayList<>();
        List<Comparison> made = blocks == null ? List.of() : blocked();
        for (int i = 1; i < all.size(); i++) {
            String why = made.isEmpty() ? tooFew(all.get(0), all.get(i)) : null;
            Comparison comparison = null;
            if (why == null) {
                try {
                    comparison = made.isEmpty() ? welch(all.get(i)) : made.get(i - 1);
                } catch (InvalidInputException e) {
                    why = "Nothing can be said: " + e.problems().get(0).value() + ".";
                }
            }
            comparisons.add(comparison);
            missing.add(why);
        }
        return concluded(comparisons, missing);
    }

    private List<Comparison> blocked() {
        try {
            return Blocked.compare(blocks == null ? List.of() : blocks, CampaignReducer.CONFIDENCE)
                    .againstBaseline();
        } catch (InvalidInputException e) {
            return List.of(); // without any scatter within blocks
        }
    }

    private Comparison welch(ReducedConfiguration modified) {
        return Welch.compare(Sample.of(all.get(0).values()), Sample.of(modified.values()), CampaignReducer.CONFIDENCE);
    }

    /** Why these cannot be compared; null where they can. */
    private @Nullable String tooFew(ReducedConfiguration... configurations) {
        for (ReducedConfiguration each : configurations) {
            int count = each.points().size();
            if (count < 2) {
                return "Nothing can be said yet: " + each.label() + " has "
                        + (count == 0 ? "no " + measure.many() : "one " + measure.one()) + ", and scatter needs two.";
            }
        }
        return null;
    }

    private List<Conclusion> concluded(List<@Nullable Comparison> comparisons, List<@Nullable String> missing) {
        List<Comparison> present = new ArrayList<>();
        comparisons.forEach(c -> {
            if (c != null) {
                present.add(c);
            }
        });
        List<Holm.Adjusted> adjusted = Holm.adjust(present);
        List<Conclusion> conclusions = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < comparisons.size(); i++) {
            Comparison comparison = comparisons.get(i);
            if (comparison == null) {
                conclusions.add(new Conclusion(all.get(i + 1), null, null, null, missing.get(i)));
                continue;
            }
            Holm.Adjusted one = adjusted.get(next++);
            Claim claim = Claim.of(
                    one, present.size(), measure.unit(), blocks != null && severalInABlock ? "blocks" : measure.many());
            conclusions.add(new Conclusion(all.get(i + 1), comparison, claim, one.adjustedPValue(), null));
        }
        return List.copyOf(conclusions);
    }

    /** How many are needed, at the scatter that the unmodified aircraft showed. */
    @Nullable
    SampleSize power() {
        Double scatter = all.get(0).standardDeviation();
        Double change = plan.repeats().change();
        if (scatter == null || change == null || !(scatter > 0)) {
            return null;
        }
        try {
            return SampleSize.twoGroups(
                    scatter,
                    change,
                    plan.repeats().significanceOrUsual(),
                    plan.repeats().powerOrUsual());
        } catch (InvalidInputException e) {
            return null;
        }
    }
}
