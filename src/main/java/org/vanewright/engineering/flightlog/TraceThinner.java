package org.vanewright.engineering.flightlog;

import java.util.ArrayList;
import java.util.List;

/** A trace that can be drawn: equal stretches of time, twice as long whenever they become too many. */
final class TraceThinner implements SampleSink {
    private static final int MOST = 1200;

    private final List<TracePoint> points = new ArrayList<>();
    private double stretchS = 0.5;
    private double beginS = Double.NaN;

    @Override
    public void accept(FlightSample sample) {
        double speed =
                Double.isNaN(sample.indicatedAirspeedKt()) ? sample.groundSpeedKt() : sample.indicatedAirspeedKt();
        TracePoint point = new TracePoint(sample.timeS(), speed, speed, sample.pressureAltitudeFt());
        if (points.isEmpty() || sample.timeS() >= beginS + stretchS) {
            points.add(point);
            beginS = sample.timeS();
            if (points.size() > MOST) {
                halve();
            }
        } else {
            points.set(points.size() - 1, points.get(points.size() - 1).with(point));
        }
    }

    private void halve() {
        List<TracePoint> half = new ArrayList<>();
        for (int i = 0; i + 1 < points.size(); i += 2) {
            half.add(points.get(i).with(points.get(i + 1)));
        }
        if (points.size() % 2 == 1) {
            half.add(points.get(points.size() - 1));
        }
        points.clear();
        points.addAll(half);
        stretchS *= 2;
    }

    List<TracePoint> points() {
        return List.copyOf(points);
    }
}
