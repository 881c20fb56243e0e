package org.vanewright.engineering.span;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LiftingLineTest {
    private static final double SPAN = 5_000;

    private static LiftingLine tapered(double root, double tip, double slope, double washout) {
        return new LiftingLine(SPAN, y -> new SpanStation(root + (tip - root) * y / SPAN, slope, washout * y / SPAN));
    }

    /** Prandtl's wing: an ellipse has the same lift coefficient everywhere, slope a/(1 + a/πAR), no more induced drag. */
    @ParameterizedTest
    @ValueSource(doubles = {600, 1000, 1600})
    void anEllipticWingIsLoadedEvenly(double root) {
        LiftingLine wing = new LiftingLine(
                SPAN, y -> new SpanStation(Math.max(1e-9, root * Math.sqrt(1 - y * y / SPAN / SPAN)), 2 * Math.PI, 0));
        LiftingLine.Loading loading = wing.at(0.1);

        double slope = 2 * Math.PI / (1 + 2 / wing.aspectRatio());
        assertThat(wing.areaM2()).isCloseTo(Math.PI / 2 * root * SPAN * 1e-6, within(2e-4 * wing.areaM2()));
        assertThat(loading.liftCoefficient()).isCloseTo(slope * 0.1, within(1e-4));
        for (double y : new double[] {0, 1000, 3000, 4500}) {
            assertThat(loading.liftCoefficientAt(y)).isCloseTo(slope * 0.1, within(1e-4));
        }
        double cl = loading.liftCoefficient();
        assertThat(loading.inducedDragCoefficient()).isCloseTo(cl * cl / Math.PI / wing.aspectRatio(), within(1e-6));
    }

    /**
     * Rectangular wings with a = 2π by H. Glauert's table (The Elements of Aerofoil and Airscrew Theory, chapter XI; from
     * memory): a/(1 + a/πAR (1 + τ)) and C_L²/πAR (1 + δ), for AR/a = 1 τ 0.17 and δ 0.049.
     */
    @Test
    void aRectangularWingLosesWhatGlauertFound() {
        double chord = 2 * SPAN / (2 * Math.PI);
        LiftingLine.Loading loading = tapered(chord, chord, 2 * Math.PI, 0).at(0.1);

        double ratio = 2 * Math.PI;
        double cl = loading.liftCoefficient();
        double tau = (2 * Math.PI * 0.1 / cl - 1) * ratio / 2 - 1;
        double delta = loading.inducedDragCoefficient() * Math.PI * ratio / (cl * cl) - 1;
        assertThat(tau).isCloseTo(0.17, within(0.01));
        assertThat(delta).isCloseTo(0.049, within(0.003));
    }

    @ParameterizedTest
    @CsvSource({"1500, 700, 0.05, 1.2", "1200, 1200, 0, 0.4", "1800, 500, -0.03, 0.9"})
    void liftAlongTheSpanAddsUpToThatOfTheWing(double root, double tip, double washout, double cl) {
        LiftingLine wing = tapered(root, tip, 6.0, washout);
        LiftingLine.Loading loading = wing.atLiftCoefficient(cl);

        assertThat(loading.liftCoefficient()).isCloseTo(cl, within(1e-12));
        double sum = 0;
        int pieces = 20_000;
        for (int i = 0; i < pieces; i++) {
            double y = (i + 0.5) * SPAN / pieces;
            sum += loading.liftCoefficientAt(y) * (root + (tip - root) * y / SPAN) * SPAN / pieces;
        }
        assertThat(2 * sum * 1e-6 / wing.areaM2()).isCloseTo(cl, within(1e-4));
    }

    @Test
    void washoutLoadsTheRootAndBothSidesAreAlike() {
        LiftingLine.Loading plain = tapered(1200, 1200, 6.0, 0).atLiftCoefficient(0.8);
        LiftingLine.Loading washed = tapered(1200, 1200, 6.0, 0.05).atLiftCoefficient(0.8);

        assertThat(washed.liftCoefficientAt(0)).isGreaterThan(plain.liftCoefficientAt(0));
        assertThat(washed.liftCoefficientAt(4000)).isLessThan(plain.liftCoefficientAt(4000));
        assertThat(plain.liftCoefficientAt(-2000)).isEqualTo(plain.liftCoefficientAt(2000));
    }

    @Test
    void theLoadingHasNoScaleAndIsLinear() {
        Random random = new Random(4);
        for (int i = 0; i < 50; i++) {
            double root = 800 + 800 * random.nextDouble();
            double tip = root * (0.3 + 0.7 * random.nextDouble());
            double scale = 0.1 + 10 * random.nextDouble();
            LiftingLine wing = tapered(root, tip, 6.2, 0.04);
            LiftingLine other = new LiftingLine(
                    SPAN * scale,
                    y -> new SpanStation(scale * root + (tip - root) * y / SPAN, 6.2, 0.04 * y / SPAN / scale));
            double station = SPAN * random.nextDouble() * 0.98;
            double low = wing.at(0.02).liftCoefficientAt(station);
            double high = wing.at(0.12).liftCoefficientAt(station);
            assertThat(other.at(0.12).liftCoefficientAt(station * scale)).isCloseTo(high, within(1e-9));
            assertThat(wing.at(0.07).liftCoefficientAt(station)).isCloseTo((low + high) / 2, within(1e-9));
        }
    }

    @Test
    void aWingHasASpan() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new LiftingLine(0, y -> new SpanStation(1, 6, 0)))
                .withMessageContaining("span");
    }
}
