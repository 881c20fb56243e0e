package org.vanewright.engineering.flow;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.flow.FlatPlateRequest.PlateRegime;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Boundary layers on a smooth flat plate without pressure gradient.
 *
 * <p>Laminar: H. Blasius, Zeitschrift für Mathematik und Physik 56 (1908) 1-37: δ₉₉ = 4.910, δ* = 1.7208, θ = 0.66411, times
 * x/√Re; c_f = 0.66411/√Re. Turbulent: L. Prandtl's power law, in H. Schlichting, "Boundary-Layer Theory", 7th ed. (1979),
 * chapter XXI: δ = 0.37 x Re^−1/5, δ* = δ/8, θ = 7δ/72, c_f = 0.0592 Re^−1/5.
 */
public final class FlatPlate {
    private static final double MM = 1000;
    private static final double SLOWEST_BLASIUS = 1e3;
    private static final double LAST_LAMINAR = 3e6;
    private static final double FIRST_TURBULENT = 5e5;
    private static final double LAST_TURBULENT = 1e7;

    private static final String LAMINAR_METHOD = "Laminar layer on a flat plate by the similar solution of Blasius:"
            + " thickness 4.910, displacement 1.7208 and momentum thickness 0.66411 times x/sqrt(Re), friction"
            + " 0.66411/sqrt(Re).";
    private static final String TURBULENT_METHOD =
            "Turbulent layer on a smooth flat plate by Prandtl's one-seventh power"
                    + " law from the leading edge: thickness 0.37 x Re^(-1/5), displacement 1/8 and momentum thickness 7/72 of it,"
                    + " friction 0.0592 Re^(-1/5).";
    private static final List<String> LAMINAR_SOURCES = List.of(
            "H. Blasius, Grenzschichten in Fluessigkeiten mit kleiner Reibung, Zeitschrift fuer Mathematik und Physik 56"
                    + " (1908) 1-37");
    private static final List<String> TURBULENT_SOURCES =
            List.of("H. Schlichting, Boundary-Layer Theory, 7th ed., 1979, chapter XXI (power law for the flat plate)");

    private FlatPlate() {}

    /**
     * @throws InvalidInputException fields {@code speedMps} (0.01 to 340), {@code distanceM} (1e-6 to 1000), {@code
     *     kinematicViscosityM2S} (1e-8 to 1), {@code regime}
     */
    public static FlatPlateResult run(FlatPlateRequest request) {
        Checks checks = new Checks();
        Double speed = request.speedMps();
        Double distance = request.distanceM();
        Double given = request.kinematicViscosityM2S();
        checks.range("speedMps", speed, 0.01, 340, "m/s");
        checks.range("distanceM", distance, 1e-6, 1000, "m");
        checks.optionalRange("kinematicViscosityM2S", given, 1e-8, 1, "m²/s");
        checks.present("regime", request.regime(), "LAMINAR or TURBULENT");
        checks.throwIfAny();
        double viscosity = given == null ? StandardAtmosphere.at(0, null).kinematicViscosityM2S() : given;
        double x = number(distance);
        double reynolds = number(speed) * x / viscosity;
        return request.regime() == PlateRegime.LAMINAR ? laminar(reynolds, x) : turbulent(reynolds, x);
    }

    private static FlatPlateResult laminar(double reynolds, double x) {
        double scale = x * MM / Math.sqrt(reynolds);
        List<String> validity = reynolds < SLOWEST_BLASIUS
                ? List.of("Below a Reynolds number of 1000 the layer is not thin beside the distance.")
                : reynolds > LAST_LAMINAR
                        ? List.of("A laminar layer above a Reynolds number of 3 million has hardly been seen.")
                        : List.of();
        return new FlatPlateResult(
                reynolds,
                4.90999 * scale,
                1.720788 * scale,
                0.664115 * scale,
                0.664115 / Math.sqrt(reynolds),
                LAMINAR_METHOD,
                LAMINAR_SOURCES,
                validity);
    }

    private static FlatPlateResult turbulent(double reynolds, double x) {
        double root = Math.pow(reynolds, -0.2);
        double thickness = 0.37 * x * MM * root;
        List<String> validity = reynolds < FIRST_TURBULENT || reynolds > LAST_TURBULENT
                ? List.of("The power law holds for Reynolds numbers of 500 thousand to 10 million.")
                : List.of();
        return new FlatPlateResult(
                reynolds,
                thickness,
                thickness / 8,
                thickness * 7 / 72,
                0.0592 * root,
                TURBULENT_METHOD,
                TURBULENT_SOURCES,
                validity);
    }

    private static double number(@Nullable Double checked) {
        return checked == null ? Double.NaN : checked;
    }
}
