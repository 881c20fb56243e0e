package org.vanewright.bench;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.vane.WendtCirculation;

/** The circulation that one vane sheds. */
public final class VaneCalculation {
    static final String METHOD =
            "Γ = 1.61 α V l tanh(1.41 h/δ)/(1 + 0.48/AR) with AR = 8 h/(π l): a lifting vane mirrored by the skin, damped by"
                    + " the boundary layer.";
    static final List<String> SOURCES = List.of(
            "B. J. Wendt, Initial Circulation and Peak Vorticity Behavior of Vortices Shed from Airfoil Vortex Generators,"
                    + " NASA/CR-2001-211144, 2001 (quoted second-hand)",
            "J. C. Dudek, Empirical Model for Vane-Type Vortex Generators in a Navier-Stokes Code, AIAA Journal 44(8), 2006,"
                    + " 1779-1789 (quoted second-hand)");
    private static final double STALLED_DEG = 20;

    private VaneCalculation() {}

    /** @throws InvalidInputException naming each field of the request that is missing or out of range */
    public static VaneResult run(VaneRequest request) {
        Checks checks = new Checks();
        checks.range("heightMm", request.heightMm(), 0.1, 500, "mm");
        checks.range("lengthMm", request.lengthMm(), 0.1, 1_000, "mm");
        checks.range("angleDeg", request.angleDeg(), -45, 45, "°");
        checks.range("edgeSpeedMps", request.edgeSpeedMps(), 0, 300, "m/s");
        checks.range("boundaryLayerThicknessMm", request.boundaryLayerThicknessMm(), 0.01, 2_000, "mm");
        checks.throwIfAny();
        double angleDeg = number(request.angleDeg());
        WendtCirculation vortex = WendtCirculation.of(
                number(request.heightMm()),
                number(request.lengthMm()),
                Math.toRadians(angleDeg),
                number(request.edgeSpeedMps()),
                number(request.boundaryLayerThicknessMm()));
        List<String> validity = new ArrayList<>(vortex.warnings());
        if (Math.abs(angleDeg) > STALLED_DEG) {
            validity.add("Vanes stall above about 20° (common practice, no source); the fit goes on growing.");
        }
        return new VaneResult(
                vortex.aspectRatio(),
                vortex.circulationM2S(),
                vortex.heightToThickness(),
                METHOD,
                SOURCES,
                List.copyOf(validity));
    }

    private static double number(@Nullable Double checked) {
        if (checked == null) {
            throw new IllegalStateException("checked before");
        }
        return checked;
    }
}
