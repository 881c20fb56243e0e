package org.vanewright.campaign;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The order of flying.
 *
 * @param blocks keys of the configurations as they follow each other
 * @param seed of the drawing of lots; shown so that anybody can draw again
 */
public record Schedule(List<Block> blocks, int seed) {
    /** Configurations flown close together. */
    public record Block(int number, List<String> keys) {}

    /** Empty while the plan does not say how many, how, or what. */
    public static Optional<Schedule> of(PlanDocument plan) {
        Integer repeats = plan.repeats().perConfiguration();
        FlyingOrder order = plan.repeats().order();
        List<String> keys = plan.keys();
        if (repeats == null
                || repeats < 1
                || repeats > CampaignRules.MAX_REPEATS
                || order == null
                || keys.isEmpty()
                || keys.size() > CampaignRules.MAX_CONFIGURATIONS) {
            return Optional.empty();
        }
        int seed = plan.repeats().seedOrFirst();
        return Optional.of(new Schedule(
                order.isBlocked() && keys.size() > 1 ? blocks(order, keys, repeats, seed) : runs(keys, repeats), seed));
    }

    private static List<Block> blocks(FlyingOrder order, List<String> keys, int repeats, int seed) {
        org.vanewright.engineering.inference.FlyingOrder.Plan plan = order == FlyingOrder.INTERLEAVED
                ? org.vanewright.engineering.inference.FlyingOrder.Plan.INTERLEAVED
                : org.vanewright.engineering.inference.FlyingOrder.Plan.RANDOMISED_BLOCKS;
        List<List<Integer>> drawn =
                org.vanewright.engineering.inference.FlyingOrder.of(plan, keys.size(), repeats, seed).blocks();
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < drawn.size(); i++) {
            blocks.add(new Block(i + 1, drawn.get(i).stream().map(keys::get).toList()));
        }
        return List.copyOf(blocks);
    }

    /** Each configuration as often as planned, one after the other. */
    private static List<Block> runs(List<String> keys, int repeats) {
        List<Block> blocks = new ArrayList<>();
        for (String key : keys) {
            blocks.add(new Block(blocks.size() + 1, Collections.nCopies(repeats, key)));
        }
        return List.copyOf(blocks);
    }
}
