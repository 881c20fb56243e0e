package org.vanewright.engineering.flightlog;

import java.util.Collection;

/** Means over samples; NaN where nothing was recorded. */
final class Means {
    private final Collection<FlightSample> samples;

    Means(Collection<FlightSample> samples) {
        this.samples = samples;
    }

    double of(LogQuantity quantity) {
        return samples.stream()
                .mapToDouble(s -> s.get(quantity))
                .filter(v -> !Double.isNaN(v))
                .average()
                .orElse(Double.NaN);
    }

    /** Mean direction of the unit vectors. */
    double trackDeg() {
        double east = 0;
        double north = 0;
        for (FlightSample each : samples) {
            if (!Double.isNaN(each.trackDeg())) {
                east += Math.sin(Math.toRadians(each.trackDeg()));
                north += Math.cos(Math.toRadians(each.trackDeg()));
            }
        }
        return east == 0 && north == 0 ? Double.NaN : Angles.compass(Math.toDegrees(Math.atan2(east, north)));
    }

    /** All of them as one sample, at the time of the last. */
    FlightSample at(double timeS) {
        double[] means = new double[LogQuantity.values().length];
        for (LogQuantity each : LogQuantity.values()) {
            means[each.ordinal()] = each == LogQuantity.TRACK ? trackDeg() : of(each);
        }
        means[LogQuantity.TIME.ordinal()] = timeS;
        return FlightSample.of(means);
    }
}
