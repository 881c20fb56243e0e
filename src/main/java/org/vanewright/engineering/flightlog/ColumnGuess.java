package org.vanewright.engineering.flightlog;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** What columns most likely hold, by their names; for a person to correct. */
public final class ColumnGuess {
    private record Name(LogQuantity quantity, Pattern pattern) {
        Name(LogQuantity quantity, String pattern) {
            this(quantity, Pattern.compile(pattern));
        }
    }

    private static final List<Name> NAMES = List.of(
            new Name(LogQuantity.TIME, "\\b(time|utc|t|timestamp|seconds|sec)\\b"),
            new Name(LogQuantity.GROUND_SPEED, "ground ?speed|\\bgs\\b|gps ?speed"),
            new Name(LogQuantity.AIRSPEED, "\\bias\\b|air ?speed|indicated"),
            new Name(LogQuantity.PITCH_RATE, "pitch ?rate|\\bq\\b|gyro ?y"),
            new Name(LogQuantity.LOAD_FACTOR, "\\bnz\\b|load ?factor|normal ?acc|vert\\w* ?acc|acc\\w* ?z|\\bg\\b"),
            new Name(LogQuantity.TRACK, "\\btrack\\b|\\bcourse\\b|\\bcog\\b|\\btrk\\b"),
            new Name(LogQuantity.ALTITUDE, "pressure ?alt|\\balt\\w*\\b|\\bhp\\b"),
            new Name(LogQuantity.TEMPERATURE, "\\boat\\b|outside|temp"),
            new Name(LogQuantity.POWER, "power|\\bpwr\\b"));

    private static final List<java.util.Map.Entry<LogUnit, Pattern>> UNITS = List.of(
            unit(LogUnit.KM_PER_H, "km ?/? ?h|kph"),
            unit(LogUnit.M_PER_S2, "m/s(2|²|\\^2)"),
            unit(LogUnit.M_PER_S, "m/s|mps"),
            unit(LogUnit.MPH, "mph"),
            unit(LogUnit.RAD_PER_S, "rad/s"),
            unit(LogUnit.RAD, "\\brad\\b"),
            unit(LogUnit.FAHRENHEIT, "°f|\\bdegf\\b|\\bf\\b|fahrenheit"),
            unit(LogUnit.M, "\\bm\\b|\\bmetres?\\b|\\bmeters?\\b"),
            unit(LogUnit.CLOCK, "hh:?mm|clock"),
            unit(LogUnit.INSTANT, "\\butc\\b|iso|date|timestamp"));

    private ColumnGuess() {}

    private static java.util.Map.Entry<LogUnit, Pattern> unit(LogUnit unit, String pattern) {
        return java.util.Map.entry(unit, Pattern.compile(pattern));
    }

    /**
     * At most one column for each quantity; perhaps none at all.
     *
     * @param header names of the columns
     */
    public static List<LogColumn> of(List<String> header) {
        List<LogColumn> guessed = new ArrayList<>();
        Set<Integer> taken = new HashSet<>();
        for (Name each : NAMES) {
            for (int i = 0; i < header.size(); i++) {
                String name = header.get(i).toLowerCase(Locale.ROOT).replace('_', ' ');
                if (!taken.contains(i) && each.pattern.matcher(name).find()) {
                    guessed.add(new LogColumn(each.quantity, i, unitOf(each.quantity, name)));
                    taken.add(i);
                    break;
                }
            }
        }
        return guessed;
    }

    private static LogUnit unitOf(LogQuantity quantity, String name) {
        return UNITS.stream()
                .filter(u -> quantity.units().contains(u.getKey())
                        && u.getValue().matcher(name).find())
                .map(java.util.Map.Entry::getKey)
                .findFirst()
                .orElse(quantity.units().get(0));
    }
}
