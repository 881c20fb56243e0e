package org.vanewright.method;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import org.vanewright.engineering.flighttest.ClimbReduction;
import org.vanewright.engineering.flighttest.CruisePoint;
import org.vanewright.engineering.flighttest.GpsAirspeed;
import org.vanewright.engineering.flighttest.GpsLeg;
import org.vanewright.engineering.flighttest.StallPoint;
import org.vanewright.engineering.flow.PublishedCheck;
import org.vanewright.engineering.flow.PublishedCheck.HowKnown;

/** Reductions of flights beside published figures. */
final class FlightChecks {
    private static final String GPS = "Airspeed by GPS";
    private static final String REDUCTION = "Flight reduction";
    private static final String GRAY = "D. Gray, Using GPS to Accurately Determine True Airspeed, 1998, worked example";
    private static final String HANDBOOK = "Society of Flight Test Engineers, Reference Handbook, 2013, part ";
    private static final String FORMULARY = "E. Williams, Aviation Formulary, headings 120° apart";
    private static final String GUIDE = "FAA, AC 23-8C, Flight Test Guide, 2011, on stalling speed";
    private static final double KG_PER_LB = 0.45359237;

    private FlightChecks() {}

    static List<PublishedCheck> list() {
        List<PublishedCheck> checks = new ArrayList<>(gps());
        checks.addAll(reductions());
        return checks;
    }

    private static List<PublishedCheck> gps() {
        String tracks = "tracks 192°, 283°, 20° at 140, 112, 120 kt";
        String square = "tracks 0°, 90°, 180° at 88.488578, 116.819252, 108.488578 kt";
        String thirds = "headings 0°, 120°, 240° at 88.45903, 88.45903, 65 kt";
        return List.of(
                gps("True airspeed", tracks, () -> gray().trueAirspeedKt(), 130, 0.05, "kt"),
                gps("Wind speed", tracks, () -> gray().windSpeedKt(), 20.6, 0.05, "kt"),
                gps("Wind from", tracks, () -> gray().windFromDeg(), 314.8, 0.1, "°"),
                gps(
                        "Heading of the first leg",
                        tracks,
                        () -> gray().otherDirectionsDeg().get(0),
                        199.7,
                        0.1,
                        "°"),
                check(
                        GPS,
                        "True airspeed",
                        square,
                        () -> square().trueAirspeedKt(),
                        100,
                        1e-5,
                        "kt",
                        HANDBOOK + "4",
                        HowKnown.DERIVED),
                check(
                        GPS,
                        "True airspeed",
                        thirds,
                        () -> thirds().trueAirspeedKt(),
                        80,
                        1e-5,
                        "kt",
                        FORMULARY,
                        HowKnown.SECOND_HAND),
                check(
                        GPS,
                        "Wind speed",
                        thirds,
                        () -> thirds().windSpeedKt(),
                        15,
                        1e-5,
                        "kt",
                        FORMULARY,
                        HowKnown.SECOND_HAND));
    }

    private static List<PublishedCheck> reductions() {
        CruisePoint cruise = new CruisePoint(100, 75, 560, 0.822);
        String conditions = "100 kt, power 75, 560 to 600 kg, σ 0.822";
        return List.of(
                reduction(
                        "Stall speed",
                        "45 kt, 1150 to 1320 lb",
                        () -> new StallPoint(45, 1150 * KG_PER_LB, 1, null).standardAirspeedKt(1320 * KG_PER_LB),
                        48.2115,
                        1e-4,
                        "kt",
                        GUIDE,
                        HowKnown.FROM_MEMORY),
                reduction(
                        "Stall speed",
                        "45 kt at a load factor of 1.1",
                        () -> new StallPoint(45, 500, 1.1, null).standardAirspeedKt(500),
                        42.9058,
                        1e-4,
                        "kt",
                        GUIDE,
                        HowKnown.FROM_MEMORY),
                reduction(
                        "Speed V_iw",
                        conditions,
                        () -> cruise.standardAirspeedKt(600),
                        93.8464,
                        1e-4,
                        "kt",
                        HANDBOOK + "12",
                        HowKnown.DERIVED),
                reduction(
                        "Power P_iw",
                        conditions,
                        () -> cruise.standardPowerKw(600),
                        75.4123,
                        1e-4,
                        "",
                        HANDBOOK + "12",
                        HowKnown.DERIVED),
                reduction(
                        "Tapeline climb",
                        "700 ft/min at 2000 m, 25 °C",
                        FlightChecks::tapeline,
                        758.514,
                        0.01,
                        "ft/min",
                        HANDBOOK + "12",
                        HowKnown.DERIVED));
    }

    private static GpsAirspeed gray() {
        return GpsAirspeed.ofTracks(List.of(new GpsLeg(140, 192), new GpsLeg(112, 283), new GpsLeg(120, 20)));
    }

    private static GpsAirspeed square() {
        return GpsAirspeed.ofTracks(
                List.of(new GpsLeg(88.488578, 0), new GpsLeg(116.819252, 90), new GpsLeg(108.488578, 180)));
    }

    private static GpsAirspeed thirds() {
        return GpsAirspeed.ofHeadings(
                List.of(new GpsLeg(88.459030, 0), new GpsLeg(88.459030, 120), new GpsLeg(65, 240)));
    }

    private static double tapeline() {
        return ClimbReduction.of(
                        new ClimbReduction.Climb(700, 2000 / 0.3048, 25, 60, 500),
                        new ClimbReduction.Wing(12, 7, 0.8),
                        500)
                .tapelineFtPerMin();
    }

    private static PublishedCheck gps(
            String quantity,
            String conditions,
            DoubleSupplier computed,
            double published,
            double tolerance,
            String unit) {
        return check(GPS, quantity, conditions, computed, published, tolerance, unit, GRAY, HowKnown.SECOND_HAND);
    }

    private static PublishedCheck reduction(
            String quantity,
            String conditions,
            DoubleSupplier computed,
            double published,
            double tolerance,
            String unit,
            String source,
            HowKnown howKnown) {
        return check(REDUCTION, quantity, conditions, computed, published, tolerance, unit, source, howKnown);
    }

    private static PublishedCheck check(
            String group,
            String quantity,
            String conditions,
            DoubleSupplier computed,
            double published,
            double tolerance,
            String unit,
            String source,
            HowKnown howKnown) {
        return new PublishedCheck(
                group, quantity, conditions, computed, published, tolerance, unit, source, howKnown, null);
    }
}
