package org.vanewright.campaign.web;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.PointDocument;
import org.vanewright.campaign.PointKind;
import org.vanewright.campaign.log.FlightLog;
import org.vanewright.campaign.log.LogEvent;
import org.vanewright.engineering.flightlog.EventKind;
import org.vanewright.engineering.flightlog.FoundEvent;
import org.vanewright.engineering.flightlog.LogColumn;
import org.vanewright.engineering.flightlog.LogMapping;
import org.vanewright.engineering.flightlog.LogQuantity;
import org.vanewright.engineering.flightlog.LogUnit;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.Numbers;
import org.vanewright.platform.page.UnitSystem;

/** Between logs and their forms: which column is what, and the test point that an event becomes. */
final class LogForms {
    private static final String UNIT = "Unit";
    private static final double FIRST_DATE_S = 1e8;

    private LogForms() {}

    static Form columns(List<LogColumn> columns, UnitSystem units) {
        Form form = new Form(units);
        for (LogQuantity each : LogQuantity.values()) {
            String field = LogMapping.field(each);
            Optional<LogColumn> known =
                    columns.stream().filter(c -> c.quantity() == each).findFirst();
            form.put(field, known.map(c -> String.valueOf(c.column() + 1)).orElse("0"));
            form.put(
                    field + UNIT, known.map(LogColumn::unit).orElse(each.units().get(0)));
        }
        return form;
    }

    /** What was chosen; what cannot be read is noted in the form. */
    static List<LogColumn> columns(Form form) {
        List<LogColumn> columns = new ArrayList<>();
        for (LogQuantity each : LogQuantity.values()) {
            String field = LogMapping.field(each);
            Integer column = form.integer(field);
            LogUnit unit = form.choice(field + UNIT, LogUnit.class);
            if (column != null && column > 0 && unit != null) {
                columns.add(new LogColumn(each, column - 1, unit));
            }
        }
        return columns;
    }

    static PointKind kind(EventKind kind) {
        return switch (kind) {
            case STALL -> PointKind.STALL;
            case CRUISE -> PointKind.CRUISE;
            case CLIMB -> PointKind.CLIMB;
            case LEG -> PointKind.AIRSPEED;
        };
    }

    /**
     * The test point that events would become, to be looked at and changed.
     *
     * @param begin form of the next test point of that kind
     */
    static Form point(Form begin, FlightLog log, List<LogEvent> events) {
        FoundEvent first = events.get(0).found();
        // By its time, not its number, which may be another's after the log was read again.
        String times = events.stream().map(e -> clock(e.found().startS())).collect(Collectors.joining(","));
        String id = UUID.nameUUIDFromBytes(
                        (log.id() + " " + first.kind() + " " + times).getBytes(java.nio.charset.StandardCharsets.UTF_8))
                .toString();
        begin.put("id", id).put("at", at(first)).put("remark", remark(log, events));
        put(begin, "indicatedAirspeedKt", mean(events, FoundEvent::indicatedAirspeedKt), 1);
        put(begin, "pressureAltitudeFt", mean(events, FoundEvent::pressureAltitudeFt), 0);
        put(begin, "outsideAirTemperatureC", mean(events, FoundEvent::outsideAirTemperatureC), 1);
        put(begin, "loadFactor", first.loadFactor(), 2);
        put(begin, "entryRateKtPerS", first.entryRateKtPerS(), 2);
        put(begin, "powerPercent", first.powerPercent(), 0);
        put(begin, "climbRateFtPerMin", first.climbRateFtPerMin(), 0);
        if (first.kind() == EventKind.LEG) {
            for (int i = 0; i < events.size(); i++) {
                put(
                        begin,
                        "legs[" + i + "].groundSpeedKt",
                        events.get(i).found().groundSpeedKt(),
                        1);
                put(begin, "legs[" + i + "].trackDeg", events.get(i).found().trackDeg(), 0);
            }
        }
        if (events.size() == 1) {
            put(begin, "startS", first.startS(), 1);
            put(begin, "endS", first.endS(), 1);
        }
        return begin;
    }

    private static void put(Form form, String field, double value, int decimals) {
        if (!Double.isNaN(value)) {
            form.put(field, Numbers.trimmed(value, decimals));
        }
    }

    private static double mean(List<LogEvent> events, java.util.function.ToDoubleFunction<FoundEvent> of) {
        return events.stream()
                .mapToDouble(e -> of.applyAsDouble(e.found()))
                .filter(v -> !Double.isNaN(v))
                .average()
                .orElse(Double.NaN);
    }

    private static @Nullable String at(FoundEvent event) {
        double end = event.kind() == EventKind.STALL ? event.endS() : event.startS();
        return end > FIRST_DATE_S ? Instant.ofEpochSecond((long) end).toString() : null;
    }

    private static String remark(FlightLog log, List<LogEvent> events) {
        String spans = events.stream()
                .map(e -> clock(e.found().startS()) + " to " + clock(e.found().endS()))
                .collect(Collectors.joining(", "));
        return "From log " + log.name() + ", " + spans + "; found by "
                + events.get(0).found().how();
    }

    /** The event with the times that the person gave it; what cannot be is noted in the form. */
    static FoundEvent moved(Form form, FoundEvent e) {
        Double start = form.number("startS");
        Double end = form.number("endS");
        double from = start == null ? e.startS() : start;
        double to = end == null ? e.endS() : end;
        if (to < from) {
            form.refuse(new FieldProblem("endS", Numbers.trimmed(to, 1), "no earlier than the beginning"));
        }
        return new FoundEvent(
                e.kind(),
                from,
                to,
                e.indicatedAirspeedKt(),
                e.pressureAltitudeFt(),
                e.outsideAirTemperatureC(),
                e.loadFactor(),
                e.entryRateKtPerS(),
                e.powerPercent(),
                e.climbRateFtPerMin(),
                e.groundSpeedKt(),
                e.trackDeg(),
                e.how());
    }

    /** A time as hours, minutes and seconds of its day. */
    static String clock(double timeS) {
        long tenths = Math.round(timeS * 10);
        long ofDay = Math.floorMod(tenths, 864_000L);
        return String.format(
                java.util.Locale.ROOT,
                "%02d:%02d:%02d.%d",
                ofDay / 36_000,
                ofDay / 600 % 60,
                ofDay / 10 % 60,
                ofDay % 10);
    }

    static @Nullable PointDocument last(List<PointDocument> points) {
        return points.isEmpty() ? null : points.get(points.size() - 1);
    }
}
