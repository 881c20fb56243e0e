package org.vanewright.platform.page;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A kind of measure with its unit in each system. The stored value is in the base unit named by the constant's comment.
 */
public enum Quantity {
    /** Base mm: chords, stations. */
    LENGTH(new Unit("mm", 1, 3), new Unit("in", 25.4, 5), 3),
    /** Base mm, shown long: spans. */
    SPAN(new Unit("m", 1000, 6), new Unit("ft", 304.8, 6), 3),
    /** Base kg. */
    MASS(new Unit("kg", 1, 4), new Unit("lb", 0.45359237, 4), 3),
    /** Base m². */
    AREA(new Unit("m²", 1, 5), new Unit("ft²", 0.09290304, 4), 4);

    /** International yard and pound agreement of 1959: 1 in = 25.4 mm, 1 lb = 0.45359237 kg, both exact. */
    private record Unit(String symbol, double inBase, int formDecimals) {}

    private final Unit metric;
    private final Unit us;
    private final int storedDecimals;

    Quantity(Unit metric, Unit us, int storedDecimals) {
        this.metric = metric;
        this.us = us;
        this.storedDecimals = storedDecimals;
    }

    private Unit unit(UnitSystem system) {
        return system == UnitSystem.US ? us : metric;
    }

    public String symbol(UnitSystem system) {
        return unit(system).symbol();
    }

    /** Base unit to the system's unit. */
    public double shown(double base, UnitSystem system) {
        return base / unit(system).inBase();
    }

    /**
     * The system's unit to the base unit. US values are rounded to the last stored decimal, so that a metric value
     * shown in a form in US units comes back as it was.
     */
    public double stored(double shown, UnitSystem system) {
        if (system == UnitSystem.METRIC && unit(system).inBase() == 1) {
            return shown;
        }
        return BigDecimal.valueOf(shown * unit(system).inBase())
                .setScale(storedDecimals, RoundingMode.HALF_EVEN)
                .doubleValue();
    }

    /** For a form field: every digit needed to come back as stored, no trailing zeros. */
    public String typed(double base, UnitSystem system) {
        if (system == UnitSystem.METRIC && unit(system).inBase() == 1) {
            return Numbers.plain(base);
        }
        return Numbers.trimmed(shown(base, system), unit(system).formDecimals());
    }
}
