package org.vanewright.engineering.flighttest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.inference.Simulation;

class StallReductionTest {
    private static final double KG_PER_LB = 0.45359237;

    private static StallPoint point(double speed, double mass, double factor, @Nullable Double rate) {
        return new StallPoint(speed, mass, factor, rate);
    }

    private static StallReduction at(double mass, StallPoint... points) {
        return StallReduction.of(List.of(points), mass, null);
    }

    /** V √(W_s/W), recomputed: 45 kt at 1,150 lb are 48.2115 kt at 1,320 lb (rule of AC 23-8C, from memory). */
    @Test
    void massAgainstTheRule() {
        StallReduction heavier = at(1320 * KG_PER_LB, point(45, 1150 * KG_PER_LB, 1, null));
        assertThat(heavier.meanKt()).isCloseTo(48.2115, within(1e-4));
        assertThat(heavier.standardDeviationKt()).isNull();
        assertThat(heavier.interval(0.95)).isNull();
    }

    /** V/√n: 45 kt at 1.1 are 42.9058 kt; at 30° and 60° of bank n = 1/cos φ raises it by 1.07457 and 1.41421. */
    @Test
    void loadFactorAgainstTheRule() {
        assertThat(at(500, point(45, 500, 1.1, null)).meanKt()).isCloseTo(42.9058, within(1e-4));
        assertThat(at(500, point(1.07457 * 45, 500, 1 / Math.cos(Math.toRadians(30)), null))
                        .meanKt())
                .isCloseTo(45, within(1e-3));
        assertThat(at(500, point(1.41421 * 45, 500, 1 / Math.cos(Math.toRadians(60)), null))
                        .meanKt())
                .isCloseTo(45, within(1e-3));
    }

    /** n m g = C_L ½ ρ₀ V² S by hand: 500 kg on 12 m² at 20 m/s: 4903.325/(245 · 12). */
    @Test
    void liftCoefficientByHand() {
        StallPoint point = point(20 * 3600 / 1852.0, 500, 1, null);
        assertThat(point.liftCoefficient(12)).isCloseTo(4903.325 / (0.5 * 1.225 * 400 * 12), within(1e-5));
        assertThat(StallReduction.of(List.of(point), 500, 12.0).liftCoefficients())
                .hasSize(1);
        // the standard airspeed is the one with the same coefficient
        StallPoint turned = point(48, 520, 1.3, null);
        StallPoint standard = point(turned.standardAirspeedKt(600), 600, 1, null);
        assertThat(standard.liftCoefficient(12)).isCloseTo(turned.liftCoefficient(12), within(1e-12));
    }

    @Test
    void speedIsReadAtOneKnotPerSecond() {
        StallReduction line = at(
                500,
                point(43.0, 500, 1, 0.5),
                point(42.5, 500, 1, 1.0),
                point(42.0, 500, 1, 1.5),
                point(41.5, 500, 1, 2.0));
        assertThat(line.entryRateSlope()).isCloseTo(-1, within(1e-12));
        assertThat(line.atOneKnotPerSecondKt()).isCloseTo(42.5, within(1e-12));
        assertThat(line.meanKt()).isCloseTo(42.25, within(1e-12));
        assertThat(line.degreesOfFreedom()).isEqualTo(2);
    }

    /** Two stalls, one without its rate, rates within 0.2 kt/s: no slope, the mean stands. */
    @Test
    void ratesThatSayNothingGiveNoSlope() {
        for (StallReduction none : List.of(
                at(500, point(43, 500, 1, 0.5), point(42, 500, 1, 1.5)),
                at(
                        500,
                        point(43, 500, 1, 0.5),
                        point(42, 500, 1, 1.5),
                        point(42, 500, 1, 1.0),
                        point(42, 500, 1, null)),
                at(500, point(43, 500, 1, 0.9), point(42, 500, 1, 1.0), point(42.5, 500, 1, 1.05)),
                at(500, point(43, 500, 1, null), point(42, 500, 1, null), point(42.5, 500, 1, null)))) {
            assertThat(none.entryRateSlope()).isNull();
            assertThat(none.atOneKnotPerSecondKt()).isEqualTo(none.meanKt());
            assertThat(none.atOneKnotPerSecondErrorKt()).isEqualTo(none.standardErrorKt());
        }
        // just enough
        assertThat(at(500, point(43, 500, 1, 0.9), point(42, 500, 1, 1.0), point(42, 500, 1, 1.1))
                        .entryRateSlope())
                .isNotNull();
    }

    @Test
    void intervalsCoverTheTruth() {
        Simulation campaigns = new Simulation(23, 4_000);
        double mean = campaigns.fraction(chance -> {
            List<StallPoint> points = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                double mass = 480 + 40 * chance.nextDouble();
                points.add(point((42 + 0.9 * chance.nextGaussian()) * Math.sqrt(mass / 500), mass, 1, null));
            }
            return covers(StallReduction.of(points, 500, null), 42);
        });
        double line = campaigns.fraction(chance -> {
            List<StallPoint> points = new ArrayList<>();
            for (int i = 0; i < 8; i++) {
                double rate = 0.3 + 1.5 * chance.nextDouble();
                points.add(point(43.5 - 1.5 * rate + 0.6 * chance.nextGaussian(), 500, 1, rate));
            }
            return covers(StallReduction.of(points, 500, null), 42);
        });
        assertThat(mean).isBetween(0.93, 0.97);
        assertThat(line).isBetween(0.93, 0.97);
    }

    private static boolean covers(StallReduction reduction, double truth) {
        Interval interval = reduction.interval(0.95);
        return interval != null && interval.contains(truth);
    }

    @RepeatedTest(100)
    void knowsNoOrderAndScalesWithSpeedAndMass(RepetitionInfo info) {
        Random chance = new Random(info.getCurrentRepetition());
        List<StallPoint> points = new ArrayList<>();
        for (int i = 0; i < 1 + chance.nextInt(8); i++) {
            points.add(point(
                    30 + 30 * chance.nextDouble(),
                    300 + 300 * chance.nextDouble(),
                    0.9 + 0.3 * chance.nextDouble(),
                    chance.nextInt(8) == 0 ? null : (Double) (2 * chance.nextDouble())));
        }
        StallReduction reduction = StallReduction.of(points, 450, 11.0);
        assertThat(reduction.meanKt()).isFinite().isPositive();
        assertThat(reduction.atOneKnotPerSecondKt()).isFinite();
        List<StallPoint> mixed = new ArrayList<>(points);
        Collections.shuffle(mixed, chance);
        StallReduction other = StallReduction.of(mixed, 450, 11.0);
        assertThat(other.atOneKnotPerSecondKt()).isCloseTo(reduction.atOneKnotPerSecondKt(), within(1e-9));
        StallReduction heavier = StallReduction.of(points, 4 * 450, 11.0);
        assertThat(heavier.meanKt()).isCloseTo(2 * reduction.meanKt(), within(1e-9));
    }

    @Test
    void equalStallsHaveNoScatterAndStillAResult() {
        StallReduction flat = at(500, point(42, 500, 1, 0.5), point(42, 500, 1, 1.0), point(42, 500, 1, 1.5));
        assertThat(flat.standardDeviationKt()).isZero();
        assertThat(flat.entryRateSlope()).isZero();
        assertThat(flat.atOneKnotPerSecondErrorKt()).isZero();
    }

    @Test
    void namesWhatIsWrong() {
        assertThatThrownBy(() -> StallReduction.of(List.of(), 500, null)).hasMessageContaining("1 to 1000 points");
        assertThatThrownBy(() -> StallReduction.of(List.of(point(Double.NaN, -1, 0, -2.0)), 0, Double.NaN))
                .hasMessageContaining("standardMassKg")
                .hasMessageContaining("wingAreaM2")
                .hasMessageContaining("points[0].calibratedAirspeedKt")
                .hasMessageContaining("points[0].massKg")
                .hasMessageContaining("points[0].loadFactor")
                .hasMessageContaining("points[0].entryRateKtPerS");
    }

    @Test
    void fuelBurnedByHand() {
        // 12 l/h for 30 min at 0.72 kg/l: 4.32 kg
        assertThat(FuelMass.afterFlowKg(500, 12, 30, 0.72)).isCloseTo(495.68, within(1e-9));
        assertThat(FuelMass.withRemainingKg(500, 50, 44, 0.72)).isCloseTo(495.68, within(1e-9));
        assertThatThrownBy(() -> FuelMass.afterFlowKg(500, 2000, 6000, 0.72)).hasMessageContaining("minutes");
        assertThatThrownBy(() -> FuelMass.withRemainingKg(500, 40, 44, 0.72)).hasMessageContaining("remainingLitres");
        assertThatThrownBy(() -> FuelMass.withRemainingKg(500, 9000, 0, 0.72)).hasMessageContaining("startLitres");
    }
}
