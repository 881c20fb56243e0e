package org.vanewright.method;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleSupplier;
import org.vanewright.engineering.air.AirState;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.flow.PublishedCheck;
import org.vanewright.engineering.flow.PublishedCheck.HowKnown;

/** The atmosphere beside published tables. */
final class AtmosphereChecks {
    private static final String TABLES = "U.S. Standard Atmosphere 1976, NASA-TM-X-74335, table I";
    private static final String ISO = "ISO 2533:1975, Standard Atmosphere; ICAO Doc 7488";
    private static final String HANDBOOK = "Society of Flight Test Engineers, Reference Handbook, 2013, part 3";
    private static final double SQUARE_FOOT = StandardAtmosphere.METRES_PER_FOOT * StandardAtmosphere.METRES_PER_FOOT;
    private static final double PASCAL_PER_LBF_FT2 = 4.4482216 / SQUARE_FOOT;

    /** Geometric altitude m; K, Pa, kg/m³, m/s, 10⁻⁵ Pa s. */
    private static final double[][] GEOMETRIC = {
        {1000, 281.651, 89_876, 1.1117, 336.4, 1.758},
        {2000, 275.154, 79_501, 1.0066, 332.5, 1.726},
        {5000, 255.676, 54_048, 0.7364, 320.5, 1.628},
        {11_000, 216.774, 22_699, 0.3648, 295.2, 1.422}
    };

    /** Geopotential altitude m; K, Pa, kg/m³. */
    private static final double[][] GEOPOTENTIAL = {
        {1000, 281.650, 89_874.6, 1.11164},
        {2000, 275.150, 79_495.2, 1.00649},
        {3048, 268.338, 69_681.7, 0.904637},
        {5000, 255.650, 54_019.9, 0.736116}
    };

    private final List<PublishedCheck> checks = new ArrayList<>();

    private AtmosphereChecks() {}

    static List<PublishedCheck> list() {
        AtmosphereChecks all = new AtmosphereChecks();
        all.geometric();
        all.geopotential();
        all.altitudes();
        all.viscosity();
        return all.checks;
    }

    private void geometric() {
        for (double[] row : GEOMETRIC) {
            String at = String.format(Locale.ROOT, "%,.0f m geometric", row[0]);
            add("Temperature", at, () -> geometric(row[0]).temperatureK(), row[1], 0.05, "K", TABLES, HowKnown.READ);
            add("Pressure", at, () -> geometric(row[0]).pressurePa(), row[2], 2, "Pa", TABLES, HowKnown.READ);
            add("Density", at, () -> geometric(row[0]).densityKgM3(), row[3], 2e-4, "kg/m³", TABLES, HowKnown.READ);
            add(
                    "Speed of sound",
                    at,
                    () -> geometric(row[0]).speedOfSoundMps(),
                    row[4],
                    0.1,
                    "m/s",
                    TABLES,
                    HowKnown.READ);
            add(
                    "Dynamic viscosity",
                    at,
                    () -> geometric(row[0]).dynamicViscosityPaS() * 1e5,
                    row[5],
                    1e-3,
                    "10⁻⁵ Pa s",
                    TABLES,
                    HowKnown.READ);
        }
        add(
                "Kinematic viscosity",
                "5,000 m geometric",
                () -> geometric(5000).kinematicViscosityM2S() * 1e5,
                2.21,
                0.011,
                "10⁻⁵ m²/s",
                TABLES,
                HowKnown.READ);
    }

    private void geopotential() {
        for (double[] row : GEOPOTENTIAL) {
            String at = String.format(Locale.ROOT, "%,.0f m geopotential", row[0]);
            add("Temperature", at, () -> level(row[0]).temperatureK(), row[1], 1e-3, "K", ISO, HowKnown.FROM_MEMORY);
            add("Pressure", at, () -> level(row[0]).pressurePa(), row[2], 0.5, "Pa", ISO, HowKnown.FROM_MEMORY);
            add("Density", at, () -> level(row[0]).densityKgM3(), row[3], 2e-5, "kg/m³", ISO, HowKnown.FROM_MEMORY);
        }
        add(
                "Pressure",
                "tropopause, 11,000 m geopotential",
                () -> StandardAtmosphere.pressurePa(11_000),
                22_632.1,
                0.5,
                "Pa",
                TABLES,
                HowKnown.READ);
    }

    private void altitudes() {
        double[][] pressures = {{95_000, 1772.76, 0.16}, {84_307.3, 5000, 0.1}};
        for (double[] row : pressures) {
            add(
                    "Pressure altitude",
                    String.format(Locale.ROOT, "%,.1f Pa", row[0]),
                    () -> StandardAtmosphere.pressureAltitudeM(row[0]) / StandardAtmosphere.METRES_PER_FOOT,
                    row[1],
                    row[2],
                    "ft",
                    HANDBOOK,
                    HowKnown.DERIVED);
        }
        double[][] warm = {{5000, 7800.7}, {0, 1723.9}};
        for (double[] row : warm) {
            add(
                    "Density altitude",
                    String.format(Locale.ROOT, "%,.0f ft, 30 °C", row[0]),
                    () -> StandardAtmosphere.at(row[0], 30.0).densityAltitudeFt(),
                    row[1],
                    1,
                    "ft",
                    HANDBOOK,
                    HowKnown.DERIVED);
        }
    }

    private void viscosity() {
        double[][] rows = {{0, 1.572, 3.737}, {5000, 1.776, 3.638}, {10_000, 2.013, 3.538}};
        for (double[] row : rows) {
            String at = String.format(Locale.ROOT, "%,.0f ft", row[0]);
            add(
                    "Kinematic viscosity",
                    at,
                    () -> StandardAtmosphere.at(row[0], null).kinematicViscosityM2S() / SQUARE_FOOT * 1e4,
                    row[1],
                    1e-3 * row[1],
                    "10⁻⁴ ft²/s",
                    HANDBOOK,
                    HowKnown.READ);
            add(
                    "Dynamic viscosity",
                    at,
                    () -> StandardAtmosphere.at(row[0], null).dynamicViscosityPaS() / PASCAL_PER_LBF_FT2 * 1e7,
                    row[2],
                    1e-3 * row[2],
                    "10⁻⁷ lb s/ft²",
                    HANDBOOK,
                    HowKnown.READ);
        }
        checks.add(checks.remove(checks.size() - 1)
                .outsideBecause("The table's own kinematic viscosity and density give 3.534."));
    }

    private static AirState geometric(double geometricM) {
        return level(StandardAtmosphere.geopotentialM(geometricM));
    }

    private static AirState level(double geopotentialM) {
        return StandardAtmosphere.at(geopotentialM / StandardAtmosphere.METRES_PER_FOOT, null);
    }

    private void add(
            String quantity,
            String conditions,
            DoubleSupplier computed,
            double published,
            double tolerance,
            String unit,
            String source,
            HowKnown known) {
        checks.add(new PublishedCheck(
                "Atmosphere", quantity, conditions, computed, published, tolerance, unit, source, known, null));
    }
}
