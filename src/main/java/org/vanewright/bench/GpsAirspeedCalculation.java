package org.vanewright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.flighttest.GpsAirspeed;
import org.vanewright.engineering.flighttest.GpsAirspeed.Directions;
import org.vanewright.engineering.flighttest.GpsLeg;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/** True airspeed and wind from ground speeds. */
public final class GpsAirspeedCalculation {
    static final String TRACKS_METHOD =
            "The tips of the ground-speed vectors lie on a circle about the wind whose radius is the true airspeed. Three legs"
                    + " determine it, and leave nothing to check them by; more are fitted by least squares of airspeed. All"
                    + " legs must be flown at one indicated airspeed, one altitude and in one wind.";
    static final String HEADINGS_METHOD =
            "By the law of cosines, ground speed² = V² + W² + 2 V W cos(heading less direction of the wind), with the airspeed"
                    + " above the wind speed. Three legs determine it, and leave nothing to check them by; more are fitted by"
                    + " least squares of ground speed. All legs must be flown at one indicated airspeed, one altitude and in"
                    + " one wind.";
    static final List<String> SOURCES = List.of(
            "D. Gray, Using GPS to Accurately Determine True Airspeed, 1998 (quoted second-hand)",
            "Society of Flight Test Engineers, Reference Handbook, 2013, part 4");
    private static final double LARGE_RESIDUAL_KT = 2;

    private GpsAirspeedCalculation() {}

    /** @throws InvalidInputException fields {@code legs…}: see {@link GpsAirspeed} */
    public static GpsAirspeedResult run(GpsAirspeedRequest request) {
        GpsAirspeed found = solve(request);
        boolean tracks = found.known() == Directions.TRACKS;
        return new GpsAirspeedResult(
                found.trueAirspeedKt(),
                found.windSpeedKt(),
                found.windFromDeg(),
                tracks ? found.otherDirectionsDeg() : null,
                tracks ? null : found.otherDirectionsDeg(),
                found.residualKt(),
                tracks ? TRACKS_METHOD : HEADINGS_METHOD,
                SOURCES,
                validity(found));
    }

    /** As {@link #run}, with what only pages show. */
    public static GpsAirspeed solve(GpsAirspeedRequest request) {
        Checks checks = new Checks();
        List<GpsAirspeedRequest.@Nullable Leg> given = request.legs();
        if (given == null) {
            checks.present("legs", null, "three or more legs");
            throw new InvalidInputException(checks.problems());
        }
        checks.require(
                given.size() >= GpsAirspeed.FEWEST_LEGS && given.size() <= GpsAirspeed.MOST_LEGS,
                "legs",
                given.size() + " legs",
                GpsAirspeed.FEWEST_LEGS + " to " + GpsAirspeed.MOST_LEGS + " legs");
        checks.throwIfAny();
        Directions known = known(given);
        List<GpsLeg> legs = new ArrayList<>();
        for (int i = 0; i < given.size(); i++) {
            GpsLeg leg = leg(checks, "legs[" + i + "]", given.get(i), known);
            if (leg != null) {
                legs.add(leg);
            }
        }
        checks.throwIfAny();
        return known == Directions.TRACKS ? GpsAirspeed.ofTracks(legs) : GpsAirspeed.ofHeadings(legs);
    }

    /** The first leg decides. */
    private static Directions known(List<GpsAirspeedRequest.@Nullable Leg> given) {
        GpsAirspeedRequest.Leg first = given.get(0);
        return first != null && first.trackDeg() == null && first.headingDeg() != null
                ? Directions.HEADINGS
                : Directions.TRACKS;
    }

    private static @Nullable GpsLeg leg(
            Checks checks, String path, GpsAirspeedRequest.@Nullable Leg leg, Directions known) {
        if (leg == null) {
            checks.present(path, null, "a leg");
            return null;
        }
        boolean tracks = known == Directions.TRACKS;
        Double direction = tracks ? leg.trackDeg() : leg.headingDeg();
        Double other = tracks ? leg.headingDeg() : leg.trackDeg();
        checks.range(path + ".groundSpeedKt", leg.groundSpeedKt(), 0, 1_000, "kt");
        checks.range(path + (tracks ? ".trackDeg" : ".headingDeg"), direction, 0, 360, "°");
        checks.require(
                other == null,
                path + (tracks ? ".headingDeg" : ".trackDeg"),
                other,
                "left out: all legs have tracks or all have headings");
        Double speed = leg.groundSpeedKt();
        return speed == null || direction == null ? null : new GpsLeg(speed, direction);
    }

    /** Warnings of a solution. */
    public static List<String> validity(GpsAirspeed found) {
        List<String> validity = new ArrayList<>();
        if (found.spreadDeg() < GpsAirspeed.GOOD_SPREAD_DEG) {
            validity.add(String.format(
                    Locale.ROOT,
                    "All legs point within %.0f° of each other: small errors of ground speed become large ones of airspeed."
                            + " Thirds of a circle are best.",
                    Math.ceil(found.spreadDeg())));
        }
        if (found.windSpeedKt() > found.trueAirspeedKt()) {
            validity.add("The wind comes out stronger than the airspeed; look at the legs again.");
        }
        Double residual = found.residualKt();
        if (residual != null && residual > LARGE_RESIDUAL_KT) {
            validity.add(String.format(
                    Locale.ROOT,
                    "The legs scatter by %.1f kt: airspeed was not held, or the wind changed between them.",
                    residual));
        }
        return List.copyOf(validity);
    }
}
