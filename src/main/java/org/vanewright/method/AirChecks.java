package org.vanewright.method;

import java.util.List;
import java.util.function.DoubleSupplier;
import org.vanewright.engineering.air.Airspeeds;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.flow.PublishedCheck;
import org.vanewright.engineering.flow.PublishedCheck.HowKnown;
import org.vanewright.engineering.vane.WendtCirculation;

/** Atmosphere, airspeeds and vanes beside published figures. */
final class AirChecks {
    private static final String ATMOSPHERE = "Atmosphere";
    private static final String AIRSPEED = "Airspeed";
    private static final String VANE = "Vane";
    private static final String TABLES = "U.S. Standard Atmosphere 1976, NASA-TM-X-74335, table I";
    private static final String HANDBOOK = "Society of Flight Test Engineers, Reference Handbook, 2013, part 4";
    private static final String WENDT = "B. J. Wendt, NASA/CR-2001-211144, 2001, as restated by J. C. Dudek, 2006";

    private AirChecks() {}

    static List<PublishedCheck> list() {
        return List.of(
                atmosphere("Pressure", "1000 m geometric", pressure(1000), 89_876, 2, "Pa"),
                atmosphere("Pressure", "5000 m geometric", pressure(5000), 54_048, 2, "Pa"),
                atmosphere("Pressure", "11,000 m geometric", pressure(11_000), 22_700, 2, "Pa"),
                atmosphere("Density", "2000 m geometric", density(2000), 1.0066, 5e-4, "kg/m³"),
                atmosphere("Density", "5000 m geometric", density(5000), 0.7364, 2e-4, "kg/m³"),
                airspeed("Impact pressure", "CAS 100 kt, 10,000 ft", () -> at(100, 10_000).impactPressurePa(), 1630.28, "Pa"),
                airspeed("Equivalent airspeed", "CAS 100 kt, 10,000 ft", () -> at(100, 10_000).equivalentAirspeedKt(), 99.872, "kt"),
                airspeed("True airspeed", "CAS 100 kt, 10,000 ft", () -> at(100, 10_000).trueAirspeedKt(), 116.218, "kt"),
                vane("h 5, l 10, δ 5 mm, 15°, 30 m/s", () -> circulation(5, 10, 15, 30, 5), 0.081499),
                vane("h 10, l 10, δ 10 mm, 16°, 50 m/s", () -> circulation(10, 10, 16, 50, 10), 0.167865));
    }

    private static PublishedCheck atmosphere(
            String quantity, String conditions, DoubleSupplier computed, double published, double tolerance, String unit) {
        return new PublishedCheck(
                ATMOSPHERE, quantity, conditions, computed, published, tolerance, unit, TABLES, HowKnown.READ, null);
    }

    private static PublishedCheck airspeed(
            String quantity, String conditions, DoubleSupplier computed, double published, String unit) {
        return new PublishedCheck(
                AIRSPEED, quantity, conditions, computed, published, 0.01, unit, HANDBOOK, HowKnown.DERIVED, null);
    }

    private static PublishedCheck vane(String conditions, DoubleSupplier computed, double published) {
        return new PublishedCheck(
                VANE, "Circulation", conditions, computed, published, 1e-6, "m²/s", WENDT, HowKnown.SECOND_HAND, null);
    }

    private static DoubleSupplier pressure(double geometricM) {
        return () -> StandardAtmosphere.pressurePa(StandardAtmosphere.geopotentialM(geometricM));
    }

    private static DoubleSupplier density(double geometricM) {
        return () -> StandardAtmosphere.at(
                        StandardAtmosphere.geopotentialM(geometricM) / StandardAtmosphere.METRES_PER_FOOT, null)
                .densityKgM3();
    }

    private static Airspeeds at(double calibratedKt, double altitudeFt) {
        return Airspeeds.ofCalibrated(calibratedKt, StandardAtmosphere.at(altitudeFt, null));
    }

    private static double circulation(double heightMm, double lengthMm, double angleDeg, double speedMps, double layerMm) {
        return WendtCirculation.of(heightMm, lengthMm, Math.toRadians(angleDeg), speedMps, layerMm)
                .circulationM2S();
    }
}
