package org.vanewright.engineering.flighttest;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.flighttest.UncertaintyBudget.Contribution;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Uncertainty of a reduced stall speed V = V_c √(m_s/(m n)) by propagation:
 *
 * <pre>
 * ∂V/∂V_c = V/V_c        ∂V/∂m = −V/(2 m)        ∂V/∂n = −V/(2 n)
 * </pre>
 *
 * taken at the means of the points. Only scatter shrinks with more stalls; a scale read too coarsely, a curve that is off, a
 * mass weighed wrongly are off in every one of them. A reading is somewhere within its resolution, with equal chance: a
 * rectangle, of standard deviation resolution/√12. JCGM 100:2008, 4.3.7, 5.1.2, F.2.2.1.
 *
 * @param resolutionKt smallest step that can be read of the airspeed indicator
 * @param calibrationKt standard uncertainty of the calibrated airspeed there, by the position-error curve
 * @param massKg standard uncertainty of the mass
 * @param loadFactor standard uncertainty of the load factor
 */
public record StallBudget(double resolutionKt, double calibrationKt, double massKg, double loadFactor) {
    /**
     * @param points those of the reduction
     * @throws InvalidInputException fields {@code resolutionKt}, {@code calibrationKt}, {@code massKg}, {@code loadFactor}:
     *     out of range
     */
    public UncertaintyBudget of(List<StallPoint> points, StallReduction reduction) {
        check();
        double speed = reduction.atOneKnotPerSecondKt();
        double calibrated = mean(
                points.stream().mapToDouble(StallPoint::calibratedAirspeedKt).toArray());
        double mass = mean(points.stream().mapToDouble(StallPoint::massKg).toArray());
        double factor = mean(points.stream().mapToDouble(StallPoint::loadFactor).toArray());
        List<Contribution> list = new ArrayList<>();
        Double scatter = reduction.atOneKnotPerSecondErrorKt();
        if (scatter != null) {
            list.add(new Contribution(
                    "Scatter of the stalls",
                    scatter,
                    reduction.degreesOfFreedom(),
                    "standard error from " + points.size() + " stalls"));
        }
        list.add(Contribution.given(
                "Reading", speed / calibrated * resolutionKt / Math.sqrt(12), "rectangle as wide as the resolution"));
        list.add(Contribution.given("Calibration", speed / calibrated * calibrationKt, "position-error curve"));
        list.add(Contribution.given("Mass", speed / (2 * mass) * massKg, "half the relative uncertainty of the mass"));
        list.add(Contribution.given("Load factor", speed / (2 * factor) * loadFactor, "half its relative uncertainty"));
        return new UncertaintyBudget(speed, "kt", list);
    }

    private void check() {
        Checks checks = new Checks();
        checks.range("resolutionKt", resolutionKt, 0, 50, "kt");
        checks.range("calibrationKt", calibrationKt, 0, 50, "kt");
        checks.range("massKg", massKg, 0, FuelMass.HEAVIEST_KG, "kg");
        checks.range("loadFactor", loadFactor, 0, 2, "");
        checks.throwIfAny();
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }
}
