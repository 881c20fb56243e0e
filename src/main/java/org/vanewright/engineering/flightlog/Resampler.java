package org.vanewright.engineering.flightlog;

/** Means over equal steps of time, so that what follows keeps windows of bounded size whatever the logger's rate. */
final class Resampler implements SampleSink {
    private static final LogQuantity[] ALL = LogQuantity.values();
    private static final int COUNT = ALL.length;
    private static final int TRACK = LogQuantity.TRACK.ordinal();

    private final double stepS;
    private final SampleSink next;
    private final double[] sums = new double[COUNT];
    private final int[] counts = new int[COUNT];
    private double northSum;
    private long step = Long.MIN_VALUE;

    Resampler(double stepS, SampleSink next) {
        this.stepS = stepS;
        this.next = next;
    }

    @Override
    public void accept(FlightSample sample) {
        long now = (long) Math.floor(sample.timeS() / stepS);
        if (now != step) {
            flush();
            step = now;
        }
        for (LogQuantity each : ALL) {
            double value = sample.get(each);
            if (!Double.isNaN(value)) {
                int i = each.ordinal();
                sums[i] += i == TRACK ? Math.sin(Math.toRadians(value)) : value;
                northSum += i == TRACK ? Math.cos(Math.toRadians(value)) : 0;
                counts[i]++;
            }
        }
    }

    /** Hands on what is left. */
    void flush() {
        if (counts[0] > 0) {
            double[] means = new double[COUNT];
            for (int i = 0; i < COUNT; i++) {
                means[i] = counts[i] == 0 ? Double.NaN : sums[i] / counts[i];
            }
            if (counts[TRACK] > 0) {
                means[TRACK] = Angles.compass(Math.toDegrees(Math.atan2(sums[TRACK], northSum)));
            }
            next.accept(FlightSample.of(means));
        }
        java.util.Arrays.fill(sums, 0);
        java.util.Arrays.fill(counts, 0);
        northSum = 0;
    }
}
