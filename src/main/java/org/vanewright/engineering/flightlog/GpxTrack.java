package org.vanewright.engineering.flightlog;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Ground speed and track of the points of a track, from the positions about {@value #SPAN_S} s apart that lie round
 * each: the great-circle distance over the time, and the bearing of the great circle at its beginning. That smooths over
 * as much time, and delays nothing.
 */
final class GpxTrack {
    /** Over so much time speed and track are taken; a fix is good to metres, a second's way is 30 m. */
    static final double SPAN_S = 4;

    /** Mean radius of the earth (IUGG), in nautical miles. */
    private static final double EARTH_NM = 6_371_008.8 / 1852;

    private static final double LONGEST_STEP_S = 30;
    private static final int MOST_KEPT = 10_000;

    private record Fix(double timeS, double latDeg, double lonDeg, double altitudeFt) {}

    private final SampleSink sink;
    private final RowTally tally;
    /** Fixes round the one that is next to be handed on. */
    private final Deque<Fix> before = new ArrayDeque<>();

    private final Deque<Fix> after = new ArrayDeque<>();
    private double latDeg = Double.NaN;
    private double lonDeg = Double.NaN;
    private double altitudeFt = Double.NaN;
    private double timeS = Double.NaN;
    private boolean inPoint;
    private long number;
    private double lastS = Double.NEGATIVE_INFINITY;

    GpxTrack(SampleSink sink, RowTally tally) {
        this.sink = sink;
        this.tally = tally;
    }

    void segment() {
        flush();
    }

    void point(double lat, double lon) {
        latDeg = lat;
        lonDeg = lon;
        altitudeFt = Double.NaN;
        timeS = Double.NaN;
        inPoint = true;
    }

    void end(String element, String text) {
        if (!inPoint) {
            return;
        }
        switch (element) {
            case "ele" -> altitudeFt = LogUnit.M.toTrade(CsvNumbers.read(text));
            case "time" -> timeS = TimeReader.instant(text);
            case "trkpt" -> close();
            default -> {}
        }
    }

    private void close() {
        inPoint = false;
        number++;
        if (!(Math.abs(latDeg) <= 90 && Math.abs(lonDeg) <= 180)) {
            tally.bad(number, "has no latitude and longitude");
        } else if (Double.isNaN(timeS)) {
            tally.bad(number, "has no time");
        } else if (timeS <= lastS) {
            tally.bad(number, "its time is not after that of the point before");
        } else {
            tally.good();
            if (timeS - lastS > LONGEST_STEP_S || after.size() >= MOST_KEPT) {
                flush();
            }
            lastS = timeS;
            boolean known = LogQuantity.ALTITUDE.allows(altitudeFt);
            after.addLast(new Fix(timeS, latDeg, lonDeg, known ? altitudeFt : Double.NaN));
            while (after.getLast().timeS - after.getFirst().timeS >= SPAN_S / 2) {
                handOn();
            }
        }
    }

    void finish() {
        flush();
        if (number == 0) {
            throw Refused.file("no track points", "a GPX file with a track");
        }
    }

    private void flush() {
        while (!after.isEmpty()) {
            handOn();
        }
        before.clear();
    }

    private void handOn() {
        Fix here = after.getFirst();
        while (before.size() > 1 && here.timeS - before.getFirst().timeS > SPAN_S / 2 + 1e-6) {
            before.removeFirst();
        }
        Fix from = before.isEmpty() ? here : before.getFirst();
        Fix to = after.getLast();
        double[] values = new double[LogQuantity.values().length];
        java.util.Arrays.fill(values, Double.NaN);
        values[LogQuantity.TIME.ordinal()] = here.timeS;
        values[LogQuantity.ALTITUDE.ordinal()] = here.altitudeFt;
        if (to.timeS > from.timeS) {
            double speedKt = distanceNm(from, to) / (to.timeS - from.timeS) * 3600;
            if (LogQuantity.GROUND_SPEED.allows(speedKt)) {
                values[LogQuantity.GROUND_SPEED.ordinal()] = speedKt;
                values[LogQuantity.TRACK.ordinal()] = bearingDeg(from, to);
            }
        }
        sink.accept(FlightSample.of(values));
        before.addLast(after.removeFirst());
    }

    /** By the haversine formula (R. W. Sinnott, Sky and Telescope 68, 1984), which is exact for short ways, too. */
    private static double distanceNm(Fix from, Fix to) {
        double lat = Math.toRadians(to.latDeg - from.latDeg);
        double lon = Math.toRadians(to.lonDeg - from.lonDeg);
        double h = square(Math.sin(lat / 2))
                + Math.cos(Math.toRadians(from.latDeg))
                        * Math.cos(Math.toRadians(to.latDeg))
                        * square(Math.sin(lon / 2));
        return 2 * EARTH_NM * Math.asin(Math.min(1, Math.sqrt(h)));
    }

    private static double bearingDeg(Fix from, Fix to) {
        double lat1 = Math.toRadians(from.latDeg);
        double lat2 = Math.toRadians(to.latDeg);
        double lon = Math.toRadians(to.lonDeg - from.lonDeg);
        double east = Math.sin(lon) * Math.cos(lat2);
        double north = Math.cos(lat1) * Math.sin(lat2) - Math.sin(lat1) * Math.cos(lat2) * Math.cos(lon);
        return Angles.compass(Math.toDegrees(Math.atan2(east, north)));
    }

    private static double square(double x) {
        return x * x;
    }
}
