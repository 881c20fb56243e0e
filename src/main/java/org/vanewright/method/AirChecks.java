package org.vanewright.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleSupplier;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.air.Airspeeds;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.flow.PublishedCheck;
import org.vanewright.engineering.flow.PublishedCheck.HowKnown;
import org.vanewright.engineering.vane.WendtCirculation;

/** Airspeeds and vanes, with the atmosphere, beside published figures. */
final class AirChecks {
    private static final String AIRSPEED = "Airspeed";
    private static final String VANE = "Vane";
    private static final String HANDBOOK = "Society of Flight Test Engineers, Reference Handbook, 2013, part 4";
    private static final String TABLE =
            "Worked table of a public calculator, its arithmetic done again here; no authority of its own";
    private static final String FORMULARY =
            "E. Williams, Aviation Formulary, worked example (total temperature 2 °C," + " recovery 0.8)";
    private static final String WENDT = "B. J. Wendt, NASA/CR-2001-211144, 2001, as restated by J. C. Dudek, 2006";

    /** Pa, ft, °C; CAS kt, TAS kt, Mach number. */
    private static final double[][] IMPACTS = {
        {1500, 0, 15, 95.94, 95.94, 0.1450},
        {3200, 5000, 5, 139.72, 150.33, 0.2313},
        {6200, 12_000, -5, 193.49, 232.68, 0.3646}
    };

    private AirChecks() {}

    static List<PublishedCheck> list() {
        List<PublishedCheck> list = new ArrayList<>(AtmosphereChecks.list());
        for (double[] row : IMPACTS) {
            String conditions =
                    String.format(Locale.ROOT, "impact pressure %,.0f Pa, %,.0f ft, %.0f °C", row[0], row[1], row[2]);
            list.add(airspeed(
                    "Calibrated airspeed",
                    conditions,
                    () -> impact(row).calibratedAirspeedKt(),
                    row[3],
                    0.01,
                    "kt",
                    TABLE,
                    HowKnown.READ));
            list.add(airspeed(
                    "True airspeed",
                    conditions,
                    () -> impact(row).trueAirspeedKt(),
                    row[4],
                    0.01,
                    "kt",
                    TABLE,
                    HowKnown.READ));
            list.add(airspeed(
                    "Mach number", conditions, () -> impact(row).mach(), row[5], 1e-4, "", TABLE, HowKnown.READ));
        }
        String ten = "CAS 100 kt, 10,000 ft";
        list.add(derived("Impact pressure", ten, () -> at(100, 10_000, null).impactPressurePa(), 1630.28, "Pa"));
        list.add(derived("Equivalent airspeed", ten, () -> at(100, 10_000, null).equivalentAirspeedKt(), 99.872, "kt"));
        list.add(derived("True airspeed", ten, () -> at(100, 10_000, null).trueAirspeedKt(), 116.218, "kt"));
        String warm = "CAS 60 kt, 5,000 ft, 30 °C";
        list.add(derived("Equivalent airspeed", warm, () -> at(60, 5000, 30.0).equivalentAirspeedKt(), 59.988, "kt"));
        list.add(derived("True airspeed", warm, () -> at(60, 5000, 30.0).trueAirspeedKt(), 67.454, "kt"));
        list.add(airspeed(
                "Mach number",
                "CAS 250 kt, 10,000 ft",
                () -> at(250, 10_000, null).mach(),
                0.4523,
                1e-4,
                "",
                FORMULARY,
                HowKnown.FROM_MEMORY));
        list.add(vane("h 5, l 10, δ 5 mm, 15°, 30 m/s", () -> circulation(5, 10, 15, 30, 5), 0.081499));
        list.add(vane("h 5, l 10, δ 10 mm, 15°, 30 m/s", () -> circulation(5, 10, 15, 30, 10), 0.055790));
        list.add(vane("h 10, l 10, δ 10 mm, 16°, 50 m/s", () -> circulation(10, 10, 16, 50, 10), 0.167865));
        return List.copyOf(list);
    }

    private static PublishedCheck airspeed(
            String quantity,
            String conditions,
            DoubleSupplier computed,
            double published,
            double tolerance,
            String unit,
            String source,
            HowKnown known) {
        return new PublishedCheck(
                AIRSPEED, quantity, conditions, computed, published, tolerance, unit, source, known, null);
    }

    private static PublishedCheck derived(
            String quantity, String conditions, DoubleSupplier computed, double published, String unit) {
        return airspeed(quantity, conditions, computed, published, 0.01, unit, HANDBOOK, HowKnown.DERIVED);
    }

    private static PublishedCheck vane(String conditions, DoubleSupplier computed, double published) {
        return new PublishedCheck(
                VANE, "Circulation", conditions, computed, published, 1e-6, "m²/s", WENDT, HowKnown.SECOND_HAND, null);
    }

    private static Airspeeds at(double calibratedKt, double altitudeFt, @Nullable Double temperatureC) {
        return Airspeeds.ofCalibrated(calibratedKt, StandardAtmosphere.at(altitudeFt, temperatureC));
    }

    private static Airspeeds impact(double[] row) {
        return Airspeeds.ofImpactPressure(row[0], StandardAtmosphere.at(row[1], row[2]));
    }

    private static double circulation(
            double heightMm, double lengthMm, double angleDeg, double speedMps, double layerMm) {
        return WendtCirculation.of(heightMm, lengthMm, Math.toRadians(angleDeg), speedMps, layerMm)
                .circulationM2S();
    }
}
