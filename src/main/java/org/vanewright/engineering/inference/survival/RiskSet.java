package org.vanewright.engineering.inference.survival;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;

/**
 * Who is in place just before a time of losses.
 *
 * @param hours when
 * @param atRisk in place just before, those censored then included
 * @param lost then, at least 1
 */
record RiskSet(double hours, int atRisk, int lost) {
    /** One for each time of losses, rising. */
    static List<RiskSet> of(List<Lifetime> lifetimes) {
        TreeMap<Double, int[]> byHours = new TreeMap<>();
        for (Lifetime each : lifetimes) {
            int[] counts = byHours.computeIfAbsent(each.hours(), k -> new int[2]);
            counts[0]++;
            counts[1] += each.lost() ? 1 : 0;
        }
        List<RiskSet> sets = new ArrayList<>();
        int left = lifetimes.size();
        for (var entry : byHours.entrySet()) {
            int[] counts = entry.getValue();
            if (counts[1] > 0) {
                sets.add(new RiskSet(entry.getKey(), left, counts[1]));
            }
            left -= counts[0];
        }
        return sets;
    }
}
