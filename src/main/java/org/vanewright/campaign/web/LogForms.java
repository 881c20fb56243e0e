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
    private static final String FROM_LOG = "From log ";
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
        begin.put("id", id);
        measured(begin, log, events.stream().map(LogEvent::found).toList());
        return begin;
    }

    /** Puts into the form what was measured; what was not recorded stays as typed. */
    static void measured(Form form, FlightLog log, List<FoundEvent> events) {
        FoundEvent first = events.get(0);
        form.put("at", at(first));
        if (form.value("remark").isBlank() || form.value("remark").startsWith(FROM_LOG)) {
            form.put("remark", remark(log, events));
        }
        put(form, "indicatedAirspeedKt", mean(events, FoundEvent::indicatedAirspeedKt), 1);
        put(form, "pressureAltitudeFt", mean(events, FoundEvent::pressureAltitudeFt), 0);
        put(form, "outsideAirTemperatureC", mean(events, FoundEvent::outsideAirTemperatureC), 1);
        put(form, "loadFactor", first.loadFactor(), 2);
        put(form, "entryRateKtPerS", first.entryRateKtPerS(), 2);
        put(form, "powerPercent", first.powerPercent(), 0);
        put(form, "climbRateFtPerMin", first.climbRateFtPerMin(), 0);
        for (int i = 0; first.kind() == EventKind.LEG && i < events.size(); i++) {
            put(form, "legs[" + i + "].groundSpeedKt", events.get(i).groundSpeedKt(), 1);
            put(form, "legs[" + i + "].trackDeg", events.get(i).trackDeg(), 0);
        }
        if (events.size() == 1) {
            put(form, "startS", first.startS(), 1);
            put(form, "endS", first.endS(), 1);
            put(form, "measuredStartS", first.startS(), 1);
            put(form, "measuredEndS", first.endS(), 1);
        }
    }

    private static void put(Form form, String field, double value, int decimals) {
        if (!Double.isNaN(value)) {
            form.put(field, Numbers.trimmed(value, decimals));
        }
    }

    private static double mean(List<FoundEvent> events, java.util.function.ToDoubleFunction<FoundEvent> of) {
        return events.stream()
                .mapToDouble(of)
                .filter(v -> !Double.isNaN(v))
                .average()
                .orElse(Double.NaN);
    }

    private static @Nullable String at(FoundEvent event) {
        double end = event.kind() == EventKind.STALL ? event.endS() : event.startS();
        return end > FIRST_DATE_S ? Instant.ofEpochSecond((long) end).toString() : null;
    }

    private static String remark(FlightLog log, List<FoundEvent> events) {
        String spans = events.stream()
                .map(e -> clock(e.startS()) + " to " + clock(e.endS()))
                .collect(Collectors.joining(", "));
        return FROM_LOG + log.name() + ", " + spans + "; found by "
                + events.get(0).how();
    }

    /** Where an event begins and ends by the form. */
    record Times(double startS, double endS) {
        /** Times are shown and typed in tenths of a second. */
        boolean differ(double otherStartS, double otherEndS) {
            return Math.abs(startS - otherStartS) > 0.06 || Math.abs(endS - otherEndS) > 0.06;
        }
    }

    /** As the person gave them; what cannot be is noted in the form. */
    static Times times(Form form, FoundEvent event) {
        double from = or(form.number("startS"), event.startS());
        double to = or(form.number("endS"), event.endS());
        if (to < from) {
            form.refuse(new FieldProblem("endS", Numbers.trimmed(to, 1), "no earlier than the beginning"));
        }
        return new Times(from, to);
    }

    /** Those for which the form's figures were measured. */
    static Times measuredTimes(Form form, FoundEvent event) {
        return new Times(
                Numbers.parse(form.value("measuredStartS")).orElse(event.startS()),
                Numbers.parse(form.value("measuredEndS")).orElse(event.endS()));
    }

    private static double or(@Nullable Double number, double otherwise) {
        return number == null ? otherwise : number;
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
