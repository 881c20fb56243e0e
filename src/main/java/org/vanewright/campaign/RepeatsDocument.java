package org.vanewright.campaign;

import org.jspecify.annotations.Nullable;

/**
 * How much is flown, and in which order.
 *
 * @param scatter guessed standard deviation of one test point, in the measure's unit
 * @param change smallest change worth finding, in the measure's unit
 * @param significance chance of a false alarm that is accepted; 0.05 where absent
 * @param power chance of finding that change; 0.8 where absent
 * @param perConfiguration test points for each configuration
 * @param perSortie test points of one flight; 1 where absent
 * @param order how configurations follow each other
 * @param seed of the drawing of lots, so that anybody can draw again; 1 where absent
 */
public record RepeatsDocument(
        @Nullable Double scatter,
        @Nullable Double change,
        @Nullable Double significance,
        @Nullable Double power,
        @Nullable Integer perConfiguration,
        @Nullable Integer perSortie,
        @Nullable FlyingOrder order,
        @Nullable Integer seed) {
    public static final double SIGNIFICANCE = 0.05;
    public static final double POWER = 0.8;

    static final RepeatsDocument NONE = new RepeatsDocument(null, null, null, null, null, null, null, null);

    public double significanceOrUsual() {
        return significance == null ? SIGNIFICANCE : significance;
    }

    public double powerOrUsual() {
        return power == null ? POWER : power;
    }

    public int perSortieOrOne() {
        return perSortie == null ? 1 : perSortie;
    }

    public int seedOrFirst() {
        return seed == null ? 1 : seed;
    }
}
