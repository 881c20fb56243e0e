package org.vanewright.engineering.flighttest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.random.RandomGenerator;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.flighttest.ClimbReduction.Climb;
import org.vanewright.engineering.flighttest.ClimbReduction.Wing;
import org.vanewright.engineering.inference.Simulation;

/** Cruise and climb. */
class PerformanceTest {
    private static final Wing WING = new Wing(12, 7, 0.8);

    /** Society of Flight Test Engineers, Reference Handbook, part 12, P_iw and V_iw, recomputed for these numbers. */
    @Test
    void cruiseAgainstTheHandbooksEquations() {
        CruisePoint point = new CruisePoint(100, 75, 560, 0.822);
        assertThat(point.standardAirspeedKt(600)).isCloseTo(93.8464, within(1e-4));
        assertThat(point.standardPowerKw(600)).isCloseTo(75.4123, within(1e-4));
        // general form: V_s = V √(W_s σ/(W σ_s)), P_s = P (W_s/W)^1.5 √(σ/σ_s)
        assertThat(point.trueAirspeedKt(600, 0.9)).isCloseTo(100 * Math.sqrt(600 * 0.822 / (560 * 0.9)), within(1e-9));
        assertThat(point.powerKw(600, 0.9))
                .isCloseTo(75 * Math.pow(600 / 560.0, 1.5) * Math.sqrt(0.822 / 0.9), within(1e-9));
        assertThat(point.isNear(600)).isTrue();
        assertThat(point.isNear(640)).isFalse();
        assertThat(CruisePoint.in(StandardAtmosphere.at(10_000, null), 100, 75, 560)
                        .densityRatio())
                .isCloseTo(0.738479, within(1e-5));
    }

    /** Drag of a parabolic polar: every mass and density falls on one curve of V_iw over P_iw. */
    @Test
    void reducedPointsOfOneDragFallTogether() {
        CruisePoint light = flown(45, 450, 1.0, 0);
        CruisePoint heavy = flown(45 * Math.sqrt(1.2 / 0.8), 540, 0.8, 0);
        assertThat(heavy.standardAirspeedKt(500)).isCloseTo(light.standardAirspeedKt(500), within(1e-9));
        assertThat(heavy.standardPowerKw(500)).isCloseTo(light.standardPowerKw(500), within(1e-9));
    }

    /** Power that a wing with zero-lift drag area 0.6 m² needs; {@code more} of that area is added. */
    private static CruisePoint flown(double speedMps, double massKg, double sigma, double more) {
        double pressure = 0.5 * 1.225 * sigma * speedMps * speedMps;
        double weight = massKg * 9.80665;
        double drag = pressure * 0.6 * (1 + more) + weight * weight / (pressure * Math.PI * 7 * 0.8 * 12);
        return new CruisePoint(speedMps * 3600 / 1852, drag * speedMps / 1000 / 0.75, massKg, sigma);
    }

    private static List<CruisePoint> run(RandomGenerator chance, double factor) {
        List<CruisePoint> points = new ArrayList<>();
        for (double power : new double[] {30, 35, 40, 45, 50}) {
            double speed = 40 * Math.cbrt(power) * factor * (1 + 0.008 * chance.nextGaussian());
            points.add(new CruisePoint(speed, power, 500, 1));
        }
        return points;
    }

    @Test
    void changeAtEqualPowerCoversTheTruth() {
        double covered = new Simulation(31, 2_000)
                .fraction(chance -> CruiseChange.of(run(chance, 1), run(chance, 0.985), 500, 0.95)
                        .relativeInterval()
                        .contains(-0.015));
        assertThat(covered).isBetween(0.93, 0.97);
    }

    @Test
    void theChangeIsTheOneThatWasPutIn() {
        List<CruisePoint> baseline = new ArrayList<>();
        List<CruisePoint> modified = new ArrayList<>();
        for (double power : new double[] {30, 40, 50}) {
            double wobble = power == 40 ? 1.001 : 1 / Math.sqrt(1.001);
            baseline.add(new CruisePoint(30 * Math.cbrt(power) * wobble, power, 500, 0.8));
            modified.add(new CruisePoint(30 * 0.97 * Math.cbrt(1.05 * power) * wobble, 1.05 * power, 500, 0.8));
        }
        CruiseChange change = CruiseChange.of(baseline, modified, 500, 0.95);
        assertThat(change.relativeChange()).isCloseTo(-0.03, within(1e-3));
        assertThat(change.slope()).isCloseTo(1.0 / 3, within(0.01));
        assertThat(change.powersOverlap()).isTrue();
        assertThat(change.changeKt(1)).isCloseTo(-0.03 * change.baselineKt(), within(0.1));
        assertThat(change.changeKt(0.25)).isCloseTo(2 * change.changeKt(1), within(1e-9));
        assertThat(change.intervalKt(1).contains(change.changeKt(1))).isTrue();
    }

    @Test
    void equalPowersTakeTheCubeLaw() {
        List<CruisePoint> baseline = List.of(new CruisePoint(90, 40, 500, 1), new CruisePoint(90.6, 40.2, 500, 1));
        List<CruisePoint> modified = List.of(new CruisePoint(88, 40, 500, 1), new CruisePoint(88.4, 40.1, 500, 1));
        CruiseChange change = CruiseChange.of(baseline, modified, 500, 0.95);
        assertThat(change.slope()).isEqualTo(1.0 / 3);
        assertThat(change.relativeChange()).isCloseTo(-0.023, within(1e-3));
        // far apart, and each at one power: the slope cannot be told from the change
        List<CruisePoint> apart = List.of(new CruisePoint(70, 20, 500, 1), new CruisePoint(70.2, 20, 500, 1));
        assertThat(CruiseChange.of(baseline, apart, 500, 0.95).slope()).isEqualTo(1.0 / 3);
        assertThat(CruiseChange.of(baseline, apart, 500, 0.95).powersOverlap()).isFalse();
    }

    @Test
    void cruiseNamesWhatIsWrong() {
        CruisePoint point = new CruisePoint(90, 40, 500, 1);
        assertThatThrownBy(() -> CruiseChange.of(List.of(point, point), List.of(point, point), 500, 0.95))
                .hasMessageContaining("without any scatter");
        assertThatThrownBy(() -> CruiseChange.of(
                        List.of(point), List.of(point, new CruisePoint(Double.NaN, 0, 0, 9)), 500, 0.95))
                .hasMessageContaining("baseline")
                .hasMessageContaining("modified[1].trueAirspeedKt")
                .hasMessageContaining("modified[1].densityRatio");
    }

    /** Society of Flight Test Engineers, Reference Handbook, part 12, step 1, recomputed: 700 ft/min at 2,000 m and 298.15 K. */
    @Test
    void tapelineClimbAgainstTheHandbook() {
        ClimbReduction climb = ClimbReduction.of(new Climb(700, 2000 / 0.3048, 25, 60, 500), WING, 500);
        assertThat(climb.tapelineFtPerMin()).isCloseTo(758.514, within(1e-2));
        assertThat(climb.standardFtPerMin()).isEqualTo(climb.tapelineFtPerMin());
    }

    /** Excess power by the same parabolic drag at both masses: W dh/dt = P − D V. */
    @Test
    void weightOfAClimbAgainstExcessPower() {
        double speed = 30;
        double available = 40_000;
        double rho = StandardAtmosphere.at(0, 15.0).densityKgM3();
        double[] rates = new double[2];
        double[] masses = {560, 500};
        for (int i = 0; i < 2; i++) {
            double pressure = rho * speed * speed / 2;
            double weight = masses[i] * 9.80665;
            double drag = pressure * 0.6 + weight * weight / (pressure * Math.PI * 7 * 0.8 * 12);
            rates[i] = (available - drag * speed) / weight * 60 / 0.3048;
        }
        ClimbReduction climb =
                ClimbReduction.of(new Climb(rates[0], 0, 15, speed * 3600 / 1852, masses[0]), WING, masses[1]);
        assertThat(climb.standardFtPerMin()).isCloseTo(rates[1], within(1e-6));
        assertThat(climb.weightFtPerMin()).isPositive();
        assertThat(climb.inducedFtPerMin()).isPositive();
    }

    @Test
    void climbNamesWhatIsWrong() {
        assertThatThrownBy(() -> ClimbReduction.of(new Climb(Double.NaN, 0, 15, 0, 0), new Wing(0, 0, 9), 0))
                .hasMessageContaining("pressureRateFtPerMin")
                .hasMessageContaining("trueAirspeedKt")
                .hasMessageContaining("standardMassKg")
                .hasMessageContaining("spanEfficiency");
        assertThatThrownBy(() -> ClimbReduction.of(new Climb(500, Double.NaN, 15, 60, 500), WING, 500))
                .hasMessageContaining("pressureAltitudeFt");
    }
}
