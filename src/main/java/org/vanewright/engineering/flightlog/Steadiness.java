package org.vanewright.engineering.flightlog;

import java.util.List;

/**
 * What counts as steady.
 *
 * @param kind what is found so
 * @param leastS for so long
 * @param needed spreads of quantities that must be recorded
 * @param ifRecorded spreads of quantities that count where they are recorded
 */
record Steadiness(EventKind kind, double leastS, List<Spread> needed, List<Spread> ifRecorded) {
    /** From the least to the greatest five-second mean. */
    record Spread(LogQuantity quantity, double most) {}

    static final Steadiness CRUISE = new Steadiness(
            EventKind.CRUISE,
            30,
            List.of(new Spread(LogQuantity.AIRSPEED, 5), new Spread(LogQuantity.ALTITUDE, 80)),
            List.of(new Spread(LogQuantity.TRACK, 10), new Spread(LogQuantity.POWER, 5)));

    static final Steadiness LEG = new Steadiness(
            EventKind.LEG,
            30,
            List.of(new Spread(LogQuantity.GROUND_SPEED, 3), new Spread(LogQuantity.TRACK, 6)),
            List.of(new Spread(LogQuantity.AIRSPEED, 5), new Spread(LogQuantity.ALTITUDE, 120)));

    String words() {
        StringBuilder words = new StringBuilder();
        for (Spread each : needed) {
            add(words, each);
        }
        for (Spread each : ifRecorded) {
            add(words, each);
        }
        return words + " (where recorded), for " + (int) leastS + " s or more";
    }

    private static void add(StringBuilder words, Spread spread) {
        String unit = spread.quantity.units().get(0).label();
        words.append(words.isEmpty() ? "" : ", ")
                .append(spread.quantity.label().toLowerCase(java.util.Locale.ROOT))
                .append(" within ")
                .append((int) spread.most)
                .append(unit.equals("°") ? unit : " " + unit);
    }
}
