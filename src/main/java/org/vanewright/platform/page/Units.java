package org.vanewright.platform.page;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Writes measures in the reader's units, with no more digits than they deserve; {@code "–"} where there is none.
 * Templates find it as {@code units}.
 */
public record Units(UnitSystem system) {
    private static final String NONE = "–";
    private static final DateTimeFormatter DAY =
            DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH).withZone(ZoneOffset.UTC);
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern(
                    "d MMM uuuu, HH:mm 'UTC'", Locale.ENGLISH)
            .withZone(ZoneOffset.UTC);
    private static final char SPACE = '\u00a0';

    /** Chords and stations: mm or in. */
    public String length(@Nullable Double mm) {
        return metric()
                ? shown(mm, Quantity.LENGTH, large(mm, 100) ? 0 : 1)
                : shown(mm, Quantity.LENGTH, large(mm, 2540) ? 1 : 2);
    }

    /** Spans: m or ft, from mm. */
    public String span(@Nullable Double mm) {
        return shown(mm, Quantity.SPAN, metric() ? 2 : 1);
    }

    public String mass(@Nullable Double kg) {
        return shown(kg, Quantity.MASS, large(kg, 20) ? 0 : 1);
    }

    public String area(@Nullable Double squareMetres) {
        return shown(squareMetres, Quantity.AREA, metric() ? 2 : 1);
    }

    /** Knots in both systems, as on the instrument. */
    public String speed(@Nullable Double knots) {
        return knots == null ? NONE : Numbers.trimmed(knots, 1) + SPACE + "kt";
    }

    /** Degrees Celsius, or Fahrenheit in US units. */
    public String temperature(@Nullable Double celsius) {
        if (celsius == null) {
            return NONE;
        }
        return metric()
                ? Numbers.trimmed(celsius, 1) + SPACE + "°C"
                : Numbers.trimmed(celsius * 9 / 5 + 32, 0) + SPACE + "°F";
    }

    public String angle(@Nullable Double degrees) {
        return degrees == null ? NONE : Numbers.trimmed(degrees, 2) + "°";
    }

    /** A fraction of the chord with four decimals. */
    public String share(@Nullable Double fraction) {
        return fraction == null ? NONE : Numbers.fixed(fraction, 4);
    }

    /** A fraction as a percentage with one decimal at most. */
    public String percent(@Nullable Double fraction) {
        return fraction == null ? NONE : Numbers.trimmed(fraction * 100, 1) + SPACE + "%";
    }

    /** Device dimensions: always mm. */
    public String deviceLength(@Nullable Double mm) {
        return mm == null ? NONE : Numbers.trimmed(mm, 2) + SPACE + "mm";
    }

    /** The same page in a form's own units. */
    public Units with(UnitSystem other) {
        return new Units(other);
    }

    public String lengthUnit() {
        return Quantity.LENGTH.symbol(system);
    }

    public String massUnit() {
        return Quantity.MASS.symbol(system);
    }

    public String areaUnit() {
        return Quantity.AREA.symbol(system);
    }

    /** Day of an instant, by UTC. */
    public String day(Instant instant) {
        return DAY.format(instant);
    }

    /** A point in time to the minute, in UTC. */
    public String minute(Instant instant) {
        return MINUTE.format(instant);
    }

    public boolean metric() {
        return system == UnitSystem.METRIC;
    }

    private String shown(@Nullable Double base, Quantity quantity, int decimals) {
        return base == null
                ? NONE
                : Numbers.trimmed(quantity.shown(base, system), decimals) + SPACE + quantity.symbol(system);
    }

    private static boolean large(@Nullable Double base, double limit) {
        return base != null && Math.abs(base) >= limit;
    }
}
