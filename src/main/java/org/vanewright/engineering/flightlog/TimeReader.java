package org.vanewright.engineering.flightlog;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times of a log as seconds. A time of day that falls by more than half a day is the next day's. */
final class TimeReader {
    private static final Pattern CLOCK = Pattern.compile("(\\d{1,2}):([0-5]\\d)(?::([0-5]\\d(?:[.,]\\d{1,9})?))?");
    private static final double DAY_S = 86_400;

    private final LogUnit unit;
    private double daysS;
    private double lastClockS = Double.NaN;

    TimeReader(LogUnit unit) {
        this.unit = unit;
    }

    /** NaN for what is no time. */
    double read(String text) {
        return switch (unit) {
            case INSTANT -> instant(text);
            case CLOCK -> clock(text);
            default -> CsvNumbers.read(text);
        };
    }

    /** A date with a time and a zone; without a zone it counts as UTC. */
    static double instant(String text) {
        String iso = text.indexOf(' ') == 10
                ? text.substring(0, 10) + "T" + text.substring(11).trim()
                : text;
        try {
            Instant at;
            if (iso.endsWith("Z")) {
                at = Instant.parse(iso);
            } else if (iso.length() > 16 && (iso.indexOf('+', 16) > 0 || iso.indexOf('-', 16) > 0)) {
                at = OffsetDateTime.parse(iso).toInstant();
            } else {
                at = LocalDateTime.parse(iso).toInstant(ZoneOffset.UTC);
            }
            return at.getEpochSecond() + at.getNano() * 1e-9;
        } catch (DateTimeException e) {
            return Double.NaN;
        }
    }

    private double clock(String text) {
        Matcher found = CLOCK.matcher(text);
        if (!found.matches() || Integer.parseInt(found.group(1)) > 23) {
            return Double.NaN;
        }
        String seconds = found.group(3) == null ? "0" : found.group(3).replace(',', '.');
        double ofDay = Integer.parseInt(found.group(1)) * 3600
                + Integer.parseInt(found.group(2)) * 60
                + Double.parseDouble(seconds);
        if (lastClockS - ofDay > DAY_S / 2) {
            daysS += DAY_S;
        }
        lastClockS = ofDay;
        return daysS + ofDay;
    }
}
