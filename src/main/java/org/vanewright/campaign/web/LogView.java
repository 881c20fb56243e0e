package org.vanewright.campaign.web;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.vanewright.campaign.log.FlightLog;
import org.vanewright.campaign.log.LogEvent;
import org.vanewright.engineering.flightlog.EventKind;
import org.vanewright.engineering.flightlog.FoundEvent;
import org.vanewright.engineering.flightlog.TracePoint;
import org.vanewright.platform.page.Numbers;
import org.vanewright.platform.plot.Curve;
import org.vanewright.platform.plot.CurvePlot;
import org.vanewright.platform.plot.DrawnPlot;
import org.vanewright.platform.plot.PlotAxis;
import org.vanewright.platform.plot.PlotMark;
import org.vanewright.platform.plot.PlotPoint;

/** A log as it is drawn, with what was found in it. */
final class LogView {
    private static final int MOST_NUMBERED = 30;
    private static final double BREAK_STRETCHES = 8;

    private LogView() {}

    /** An event on a line. */
    public record Line(LogEvent event, String when, String words) {
        static Line of(LogEvent event) {
            FoundEvent f = event.found();
            return new Line(event, LogForms.clock(f.startS()) + " to " + LogForms.clock(f.endS()), describe(f));
        }
    }

    /** That a log holds more than is kept, and from when on something is missing. */
    static String capped(FlightLog log, List<LogEvent> events) {
        double last = events.stream().mapToDouble(e -> e.found().endS()).max().orElse(0);
        return "Only the first " + events.size() + " events are kept, and this log holds " + log.left()
                + " more. From about " + LogForms.clock(last)
                + " on, stalls and all else may be missing from the list. Send the rest of the log as a file of its own.";
    }

    /** What was measured of it, on a line. */
    static String describe(FoundEvent f) {
        List<String> words = new ArrayList<>();
        add(words, f.indicatedAirspeedKt(), 1, "kt indicated");
        add(words, f.entryRateKtPerS(), 2, "kt/s entry");
        add(words, f.loadFactor(), 2, "g");
        add(words, f.climbRateFtPerMin(), 0, "ft/min");
        add(words, f.groundSpeedKt(), 1, "kt over the ground");
        add(words, f.trackDeg(), 0, "° track");
        add(words, f.pressureAltitudeFt(), 0, "ft");
        add(words, f.powerPercent(), 0, "% power");
        return String.join(" · ", words);
    }

    private static void add(List<String> words, double value, int decimals, String unit) {
        if (!Double.isNaN(value)) {
            words.add(Numbers.trimmed(value, decimals) + (unit.startsWith("°") ? "" : " ") + unit);
        }
    }

    /** Airspeed and altitude over time, with the events that are not dropped. */
    static List<DrawnPlot> plots(FlightLog log, List<TracePoint> trace, List<LogEvent> all) {
        if (trace.isEmpty()) {
            return List.of();
        }
        List<LogEvent> events = all.stream()
                .filter(e -> e.decision() != LogEvent.Decision.DROPPED)
                .toList();
        double begin = trace.get(0).timeS();
        List<DrawnPlot> plots = new ArrayList<>();
        boolean indicated = trace.stream().anyMatch(t -> !Double.isNaN(t.leastKt()));
        if (indicated) {
            String what = log.format() == org.vanewright.campaign.log.LogFormat.GPX ? "Ground speed" : "Airspeed";
            plots.add(plot(what, what + ", kt", speeds(trace, begin), events, begin, e -> speed(e), "log-speed"));
        }
        if (trace.stream().anyMatch(t -> !Double.isNaN(t.altitudeFt()))) {
            List<PlotPoint> heights = trace.stream()
                    .map(t -> new PlotPoint((t.timeS() - begin) / 60, t.altitudeFt()))
                    .toList();
            plots.add(plot(
                    "Altitude",
                    "Altitude, ft",
                    heights,
                    events,
                    begin,
                    FoundEvent::pressureAltitudeFt,
                    "log-altitude"));
        }
        return plots;
    }

    private static double speed(FoundEvent e) {
        return Double.isNaN(e.indicatedAirspeedKt()) ? e.groundSpeedKt() : e.indicatedAirspeedKt();
    }

    /** Up and down between the least and the greatest of each stretch; broken where nothing was recorded. */
    private static List<PlotPoint> speeds(List<TracePoint> trace, double begin) {
        double stretch = (trace.get(trace.size() - 1).timeS() - begin) / trace.size();
        List<PlotPoint> points = new ArrayList<>();
        double last = begin;
        for (TracePoint each : trace) {
            double minutes = (each.timeS() - begin) / 60;
            if (each.timeS() - last > BREAK_STRETCHES * stretch + 5) {
                points.add(new PlotPoint(minutes, Double.NaN));
            }
            last = each.timeS();
            points.add(new PlotPoint(minutes, each.leastKt()));
            if (each.greatestKt() > each.leastKt()) {
                points.add(new PlotPoint(minutes, each.greatestKt()));
            }
        }
        return points;
    }

    private static DrawnPlot plot(
            String name,
            String label,
            List<PlotPoint> line,
            List<LogEvent> events,
            double begin,
            ToDoubleFunction<FoundEvent> height,
            String id) {
        List<Curve> curves = new ArrayList<>();
        curves.add(new Curve(name, line, Curve.Look.LINE));
        List<PlotMark> marks = new ArrayList<>();
        for (EventKind kind : EventKind.values()) {
            List<PlotPoint> points = new ArrayList<>();
            for (LogEvent event : events) {
                FoundEvent f = event.found();
                double y = height.applyAsDouble(f);
                if (f.kind() == kind && !Double.isNaN(y)) {
                    stretch(points, f, begin, y);
                    if (events.size() <= MOST_NUMBERED) {
                        marks.add(new PlotMark(String.valueOf(event.number()), (f.endS() - begin) / 60, y));
                    }
                }
            }
            if (!points.isEmpty()) {
                curves.add(
                        new Curve(kind.label(), points, kind == EventKind.STALL ? Curve.Look.POINTS : Curve.Look.LINE));
            }
        }
        CurvePlot plot = new CurvePlot(
                name + " of the log", PlotAxis.of("Minutes since its beginning"), PlotAxis.of(label), curves, marks);
        return DrawnPlot.of(
                plot,
                id,
                "Thinned to what can be drawn: each stretch of time shows its least and greatest. Numbers are those of the list.");
    }

    private static void stretch(List<PlotPoint> points, FoundEvent f, double begin, double y) {
        if (f.kind() != EventKind.STALL) {
            points.add(new PlotPoint((f.startS() - begin) / 60, y));
        }
        points.add(new PlotPoint((f.endS() - begin) / 60, y));
        if (f.kind() != EventKind.STALL) {
            points.add(new PlotPoint((f.endS() - begin) / 60, Double.NaN));
        }
    }
}
