package org.vanewright.engineering.flighttest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.flighttest.PositionErrorCurve.Form;
import org.vanewright.engineering.inference.Simulation;

class PositionErrorCurveTest {
    private static final double[] SPEEDS = {50, 58, 66, 74, 82, 90};

    private static double truth(double indicated) {
        return indicated + 3 - 0.05 * (indicated - 50) + 0.001 * (indicated - 50) * (indicated - 50);
    }

    private static List<CalibrationRun> runs(Form form) {
        List<CalibrationRun> runs = new ArrayList<>();
        for (double speed : SPEEDS) {
            runs.add(new CalibrationRun(speed, form == Form.QUADRATIC ? truth(speed) : 4 + 0.95 * speed));
        }
        return runs;
    }

    @Test
    void goesThroughPointsOfItsOwnForm() {
        PositionErrorCurve parabola = PositionErrorCurve.fit(Form.QUADRATIC, runs(Form.QUADRATIC));
        PositionErrorCurve line = PositionErrorCurve.fit(Form.LINEAR, runs(Form.LINEAR));
        for (double speed : new double[] {45, 50, 61.3, 90, 100}) {
            assertThat(parabola.at(speed, 0.95).calibratedKt()).isCloseTo(truth(speed), within(1e-9));
            assertThat(line.at(speed, 0.95).calibratedKt()).isCloseTo(4 + 0.95 * speed, within(1e-9));
        }
        assertThat(parabola.residualKt()).isCloseTo(0, within(1e-9));
        assertThat(parabola.degreesOfFreedom()).isEqualTo(3);
        assertThat(line.degreesOfFreedom()).isEqualTo(4);
        assertThat(parabola.form()).isEqualTo(Form.QUADRATIC);
    }

    @Test
    void speedsOutsideTheCalibratedOnesAreFlagged() {
        PositionErrorCurve curve = PositionErrorCurve.fit(Form.LINEAR, runs(Form.QUADRATIC));
        assertThat(curve.rangeKt().low()).isEqualTo(50);
        assertThat(curve.rangeKt().high()).isEqualTo(90);
        assertThat(curve.at(49.9, 0.95).extrapolated()).isTrue();
        assertThat(curve.at(50, 0.95).extrapolated()).isFalse();
        assertThat(curve.at(90.1, 0.95).extrapolated()).isTrue();
        assertThat(curve.at(40, 0.95).standardUncertaintyKt())
                .isGreaterThan(curve.at(70, 0.95).standardUncertaintyKt());
        assertThat(curve.at(70, 0.99).band().halfWidth())
                .isGreaterThan(curve.at(70, 0.95).band().halfWidth());
    }

    @Test
    void theBandHoldsTheTruthAsOftenAsItSays() {
        for (double speed : new double[] {44, 70}) {
            double covered = new Simulation(11, 2_000).fraction(chance -> {
                List<CalibrationRun> runs = new ArrayList<>();
                for (double indicated : SPEEDS) {
                    runs.add(new CalibrationRun(indicated, truth(indicated) + 0.7 * chance.nextGaussian()));
                }
                return PositionErrorCurve.fit(Form.QUADRATIC, runs)
                        .at(speed, 0.95)
                        .band()
                        .contains(truth(speed));
            });
            assertThat(covered).as("%s kt", speed).isBetween(0.93, 0.97);
        }
    }

    /** At 10,000 ft in the standard atmosphere 116.218 kt true are 100 kt calibrated, by the equations of compressible flow. */
    @Test
    void runsAreMadeOfTrueAirspeeds() {
        CalibrationRun run = CalibrationRun.of(97, 116.218, StandardAtmosphere.at(10_000, null));
        assertThat(run.calibratedKt()).isCloseTo(100, within(0.001));
        assertThat(run.correctionKt()).isCloseTo(3, within(0.001));
    }

    @Test
    void namesWhatIsWrong() {
        CalibrationRun run = new CalibrationRun(60, 62);
        assertThatThrownBy(() -> PositionErrorCurve.fit(Form.LINEAR, List.of(run, run)))
                .hasMessageContaining("3 to 1000 runs");
        assertThatThrownBy(() -> PositionErrorCurve.fit(Form.LINEAR, List.of(run, run, run)))
                .hasMessageContaining("different speeds");
        assertThatThrownBy(() ->
                        PositionErrorCurve.fit(Form.QUADRATIC, List.of(run, run, run, new CalibrationRun(70, 70))))
                .hasMessageContaining("3 speeds or more");
        assertThatThrownBy(() -> PositionErrorCurve.fit(
                        Form.LINEAR, List.of(run, run, new CalibrationRun(Double.NaN, Double.POSITIVE_INFINITY))))
                .hasMessageContaining("runs[2].indicatedKt")
                .hasMessageContaining("runs[2].calibratedKt");
    }
}
