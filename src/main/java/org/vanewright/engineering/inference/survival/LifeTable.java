package org.vanewright.engineering.inference.survival;

import java.util.ArrayList;
import java.util.List;

/**
 * Lifetimes counted in intervals of hours. Those withdrawn within an interval count as at risk for half of it. S. J. Cutler
 * and F. Ederer, Maximum Utilization of the Life Table Method in Analyzing Survival, J. Chronic Diseases 8, 1958 (from
 * memory).
 *
 * @param rows one after another, the first from 0
 */
public record LifeTable(List<Row> rows) {
    public LifeTable {
        rows = List.copyOf(rows);
    }

    /**
     * An interval (from, to] of hours.
     *
     * @param fromHours after which it begins; the first holds 0 itself, too
     * @param toHours with which it ends
     * @param entered in place at its beginning
     * @param withdrawn last seen in place within it
     * @param lost within it
     * @param exposed entered less half of those withdrawn
     * @param conditional chance to get through it: 1 − lost/exposed
     * @param survival to its end
     */
    public record Row(
            double fromHours,
            double toHours,
            int entered,
            int withdrawn,
            int lost,
            double exposed,
            double conditional,
            double survival) {}

    /**
     * @param lifetimes one or more
     * @param limits ends of the intervals, rising, above 0; the last not before the longest lifetime
     */
    public static LifeTable of(List<Lifetime> lifetimes, List<Double> limits) {
        List<Row> rows = new ArrayList<>();
        double from = 0;
        double survival = 1;
        int entered = lifetimes.size();
        for (double to : limits) {
            int lost = 0;
            int withdrawn = 0;
            for (Lifetime each : lifetimes) {
                boolean within = each.hours() <= to && (each.hours() > from || rows.isEmpty());
                lost += within && each.lost() ? 1 : 0;
                withdrawn += within && !each.lost() ? 1 : 0;
            }
            double exposed = entered - withdrawn / 2.0;
            double conditional = exposed <= 0 ? 1 : Math.max(0, 1 - lost / exposed);
            survival *= conditional;
            rows.add(new Row(from, to, entered, withdrawn, lost, exposed, conditional, survival));
            entered -= lost + withdrawn;
            from = to;
        }
        return new LifeTable(rows);
    }
}
