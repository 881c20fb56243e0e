package org.vanewright.engineering.inference;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * In which order to fly configurations, so that what drifts (fuel, sun, the pilot's hand) does not pass for a change. Every
 * block holds each configuration once, the baseline among them.
 *
 * @param plan how the order came about
 * @param seed of chance; the same seed gives the same order on every machine
 * @param blocks numbers of configurations in the order of flying; 0 is the baseline
 */
public record FlyingOrder(Plan plan, long seed, List<List<Integer>> blocks) {
    public static final int MOST_CONFIGURATIONS = 12;
    public static final int MOST_BLOCKS = 200;

    /** Ways to guard against drift. */
    public enum Plan {
        /** There and back again (0 1 2, 2 1 0, …): a steady drift takes nearly as much from each. Needs no chance. */
        INTERLEAVED,
        /** An order by chance in each block. */
        RANDOMISED_BLOCKS
    }

    /**
     * @param configurations with the baseline, 2 to 12
     * @param blocks 1 to 200
     * @throws InvalidInputException fields {@code configurations}, {@code blocks}: out of range
     */
    public static FlyingOrder of(Plan plan, int configurations, int blocks, long seed) {
        Checks checks = new Checks();
        checks.range("configurations", (double) configurations, 2, MOST_CONFIGURATIONS, "");
        checks.range("blocks", (double) blocks, 1, MOST_BLOCKS, "");
        checks.throwIfAny();
        // a generator whose numbers its library fixes, not the machine's
        RandomGenerator chance = new Well19937c(seed);
        List<List<Integer>> order = new ArrayList<>();
        for (int block = 0; block < blocks; block++) {
            order.add(plan == Plan.INTERLEAVED ? thereOrBack(configurations, block) : shuffled(configurations, chance));
        }
        return new FlyingOrder(plan, seed, List.copyOf(order));
    }

    private static List<Integer> thereOrBack(int configurations, int block) {
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < configurations; i++) {
            order.add(block % 2 == 0 ? i : configurations - 1 - i);
        }
        return List.copyOf(order);
    }

    /** By Fisher and Yates: every order is equally likely. */
    private static List<Integer> shuffled(int configurations, RandomGenerator chance) {
        List<Integer> order = new ArrayList<>(thereOrBack(configurations, 0));
        for (int i = configurations - 1; i > 0; i--) {
            int other = chance.nextInt(i + 1);
            int kept = order.get(i);
            order.set(i, order.get(other));
            order.set(other, kept);
        }
        return List.copyOf(order);
    }
}
