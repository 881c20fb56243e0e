package org.vanewright.campaign;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.vanewright.engineering.inference.FlyingOrder.Plan;

/**
 * The order of flying.
 *
 * @param sorties one after the other
 * @param seed of the drawing of lots; shown so that anybody can draw again
 * @param blocked whether each block holds every configuration
 */
public record Schedule(List<Sortie> sorties, int seed, boolean blocked) {
    /**
     * One flight in one configuration.
     *
     * @param number from 1
     * @param block it belongs to, from 1
     * @param key of the configuration
     * @param points test points to be flown
     */
    public record Sortie(int number, int block, String key, int points) {}

    /** Empty while the plan does not say how many, how, or what. */
    public static Optional<Schedule> of(PlanDocument plan) {
        RepeatsDocument repeats = plan.repeats();
        Integer each = repeats.perConfiguration();
        int together = repeats.perSortieOrOne();
        List<String> keys = plan.keys();
        if (each == null
                || each < 1
                || each > CampaignRules.MAX_REPEATS
                || together < 1
                || repeats.order() == null
                || keys.isEmpty()
                || keys.size() > CampaignRules.MAX_CONFIGURATIONS) {
            return Optional.empty();
        }
        boolean blocked = repeats.order().isBlocked() && keys.size() > 1;
        int flights = (each + together - 1) / together;
        List<List<String>> order = blocked
                ? drawn(repeats, keys, flights)
                : keys.stream().map(k -> copies(k, flights)).toList();
        return Optional.of(new Schedule(sorties(order, each, together, blocked), repeats.seedOrFirst(), blocked));
    }

    private static List<String> copies(String key, int count) {
        return Collections.nCopies(count, key);
    }

    private static List<List<String>> drawn(RepeatsDocument repeats, List<String> keys, int blocks) {
        Plan plan = repeats.order() == FlyingOrder.INTERLEAVED ? Plan.INTERLEAVED : Plan.RANDOMISED_BLOCKS;
        List<List<String>> drawn = new ArrayList<>();
        org.vanewright.engineering.inference.FlyingOrder.of(plan, keys.size(), blocks, repeats.seedOrFirst())
                .blocks()
                .forEach(block -> drawn.add(block.stream().map(keys::get).toList()));
        drawn.set(0, unmodifiedFirst(drawn.get(0), keys.get(0)));
        return drawn;
    }

    /** Whatever the lots say, nobody flies devices before the aircraft is known without them. */
    private static List<String> unmodifiedFirst(List<String> block, String unmodified) {
        List<String> order = new ArrayList<>(block);
        order.remove(unmodified);
        order.add(0, unmodified);
        return List.copyOf(order);
    }

    /** The last flight of each configuration holds what is left. */
    private static List<Sortie> sorties(List<List<String>> order, int each, int together, boolean blocked) {
        List<Sortie> sorties = new ArrayList<>();
        for (int block = 0; block < order.size(); block++) {
            for (int place = 0; place < order.get(block).size(); place++) {
                int before = (blocked ? block : place) * together;
                sorties.add(new Sortie(
                        sorties.size() + 1, block + 1, order.get(block).get(place), Math.min(together, each - before)));
            }
        }
        return List.copyOf(sorties);
    }
}
