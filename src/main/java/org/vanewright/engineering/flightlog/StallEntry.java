package org.vanewright.engineering.flightlog;

import org.vanewright.engineering.flightlog.Recent.Low;

/** The way into a stall: where 1.1 of its speed was passed, and how fast it was slowed down from there. */
record StallEntry(Recent recent, Low stall) {
    private static final double FACTOR = 1.1;
    private static final double SMOOTH_S = 1.0;
    private static final double LONGEST_S = 60;
    /** So long may nothing be recorded within it. */
    static final double GAP_S = 3;

    /** When the smoothed airspeed was last at 1.1 of the stall's; NaN where it was not, or a gap lies between. */
    double passedS() {
        double after = stall.timeS();
        for (int i = recent.size() - 1; i >= 0 && recent.get(i).timeS() >= stall.timeS() - LONGEST_S; i--) {
            double at = recent.get(i).timeS();
            if (at < stall.timeS()) {
                if (after - at > GAP_S) {
                    return Double.NaN;
                }
                if (recent.mean(LogQuantity.AIRSPEED, at - SMOOTH_S / 2, at + SMOOTH_S / 2) >= FACTOR * stall.level()) {
                    return at;
                }
                after = at;
            }
        }
        return Double.NaN;
    }

    /** How fast the airspeed falls from then until the stall, by least squares; NaN with fewer than two samples. */
    double rateKtPerS(double fromS) {
        LineFit fit = new LineFit();
        for (int i = 0; i < recent.size(); i++) {
            FlightSample each = recent.get(i);
            if (each.timeS() >= fromS && each.timeS() <= stall.timeS() && !Double.isNaN(each.indicatedAirspeedKt())) {
                fit.add(each.timeS() - stall.timeS(), each.indicatedAirspeedKt());
            }
        }
        return -fit.slope();
    }

    /** All that belongs to a stall. */
    FoundEvent event(double fromS, double breakS, double rate, String how) {
        double at = stall.timeS();
        double first = Math.min(at, breakS);
        return new FoundEvent(
                EventKind.STALL,
                fromS,
                Math.max(breakS, at),
                stall.level(),
                recent.mean(LogQuantity.ALTITUDE, at - 1, at + 1),
                recent.mean(LogQuantity.TEMPERATURE, fromS, at),
                recent.mean(LogQuantity.LOAD_FACTOR, first - 2.3, first - 0.3),
                rate,
                recent.mean(LogQuantity.POWER, fromS, at),
                Double.NaN,
                Double.NaN,
                Double.NaN,
                how);
    }
}
