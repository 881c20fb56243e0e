package org.vanewright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.vanewright.engineering.air.AirState;
import org.vanewright.engineering.air.Airspeeds;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/** Calibrated, equivalent and true airspeed from any one of them, or from impact pressure. */
public final class AirspeedCalculation {
    private static final String METHOD =
            "Isentropic compression of air with a ratio of specific heats of 1.4 gives impact pressure from Mach number and"
                    + " back; calibrated airspeed is the speed that has this impact pressure at sea level in the standard"
                    + " atmosphere; equivalent airspeed is true airspeed times the root of the density ratio.";
    private static final List<String> SOURCES = List.of(
            "Society of Flight Test Engineers, Reference Handbook, 2013, part 4, Airspeed",
            "U.S. Standard Atmosphere 1976, NOAA, NASA, USAF, NASA-TM-X-74335");
    private static final double WELL_SUBSONIC = 0.7;

    private AirspeedCalculation() {}

    /**
     * @throws InvalidInputException naming a field of the request; the three speeds as {@code calibratedAirspeedKt} where
     *     none or several are given
     */
    public static AirspeedResult run(AirspeedRequest request) {
        Checks checks = new Checks();
        checks.present("pressureAltitudeFt", request.pressureAltitudeFt(), "a number from -1000 ft to 65617 ft");
        long given = Stream.of(request.calibratedAirspeedKt(), request.impactPressurePa(), request.trueAirspeedKt())
                .filter(Objects::nonNull)
                .count();
        checks.require(
                given == 1,
                "calibratedAirspeedKt",
                given + " speeds",
                "exactly one of calibratedAirspeedKt, impactPressurePa, trueAirspeedKt");
        checks.throwIfAny();
        Double altitude = Objects.requireNonNull(request.pressureAltitudeFt());
        AirState air = StandardAtmosphere.at(altitude, request.outsideAirTemperatureC());
        Airspeeds speeds = speeds(request, air);
        return new AirspeedResult(
                speeds.impactPressurePa(),
                speeds.calibratedAirspeedKt(),
                speeds.equivalentAirspeedKt(),
                speeds.trueAirspeedKt(),
                speeds.mach(),
                METHOD,
                SOURCES,
                validity(speeds, altitude, request));
    }

    private static Airspeeds speeds(AirspeedRequest request, AirState air) {
        if (request.calibratedAirspeedKt() != null) {
            return Airspeeds.ofCalibrated(request.calibratedAirspeedKt(), air);
        }
        return request.impactPressurePa() != null
                ? Airspeeds.ofImpactPressure(request.impactPressurePa(), air)
                : Airspeeds.ofTrue(Objects.requireNonNull(request.trueAirspeedKt()), air);
    }

    private static List<String> validity(Airspeeds speeds, double altitudeFt, AirspeedRequest request) {
        List<String> warnings =
                new ArrayList<>(AtmosphereCalculation.validity(altitudeFt, request.outsideAirTemperatureC()));
        if (speeds.mach() > WELL_SUBSONIC) {
            warnings.add("At Mach " + Math.round(speeds.mach() * 100) / 100.0
                    + " shocks form on real instruments; this method knows none.");
        }
        return List.copyOf(warnings);
    }
}
