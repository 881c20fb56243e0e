package org.vanewright.engineering.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NacaFiveDigitTest extends SectionContract {
    @Override
    Section section() {
        return Sections.naca("23012");
    }

    // Derived from the 230 mean line of E. N. Jacobs, R. M. Pinkerton, NACA TR-537 (1935): 0.018386 at x = 0.14989.
    @Test
    void the230MeanLineIsHighestAtItsNominalPlace() {
        assertThat(Sections.naca("23012").maximumCamber()).isCloseTo(0.018386, within(1e-6));
        FiveDigitMeanLine line = new FiveDigitMeanLine(15.957, 0.2025, 0);
        assertThat(line.height(0.14989)).isCloseTo(line.maximumHeight(), within(1e-9));
        assertThat(line.slope(0.14989)).isCloseTo(0, within(1e-4));
    }

    // r and k1 from memory of NACA TR-537 (1935) and NASA TM 4741 (1996); the equations make height, slope and bend
    // continuous at r.
    @ParameterizedTest
    @CsvSource({"0.0580, 361.4", "0.1260, 51.64", "0.2025, 15.957", "0.2900, 6.643", "0.3910, 3.230"})
    void simpleMeanLinesJoinSmoothlyAtR(double r, double k1) {
        FiveDigitMeanLine line = new FiveDigitMeanLine(k1, r, 0);
        assertThat(line.height(r + 1e-12)).isCloseTo(line.height(r), within(1e-12));
        assertThat(line.slope(r + 1e-12)).isCloseTo(line.slope(r), within(1e-10));
        assertThat(line.bend(r)).isCloseTo(0, within(1e-12));
        assertThat(line.height(0.6)).isCloseTo(k1 * r * r * r / 6 * 0.4, within(1e-12));
        assertThat(line.height(0)).isCloseTo(0, within(1e-15));
        assertThat(line.height(1)).isCloseTo(0, within(1e-15));
    }

    // The 210 to 251 lines were made for a design lift coefficient of 0.3, the reflexed ones also for no moment about
    // the quarter chord (NACA TR-537, 1935), in the thin-aerofoil theory of H. Glauert (1926): with slope = A0 + Σ An
    // cos nθ, ideal lift πA1, moment π/4 (A2 - A1). The printed constants keep that to two parts in a hundred.
    @ParameterizedTest
    @CsvSource({
        "210, 0.05",
        "220, 0.10",
        "230, 0.15",
        "240, 0.20",
        "250, 0.25",
        "221, 0.10",
        "231, 0.15",
        "241, 0.20",
        "251, 0.25"
    })
    void meanLinesHaveTheirDesignLiftAndPlaceOfCamber(String line, double camberAt) {
        DoubleUnaryOperator slope = slopeOf(line);
        double a1 = 2 / Math.PI * fourier(slope, 1);
        double a2 = 2 / Math.PI * fourier(slope, 2);
        assertThat(Math.PI * a1).isCloseTo(0.3, within(0.0065));
        assertThat(slope.applyAsDouble(camberAt)).isCloseTo(0, within(2e-3));
        if (line.endsWith("1")) {
            assertThat(Math.PI / 4 * (a2 - a1)).isCloseTo(0, within(1.5e-3));
        }
    }

    @Test
    void theReflexedLineHasThePublishedShape() {
        Section section = Sections.naca("23112");
        for (double x : new double[] {0.05, 0.2, 0.4, 0.7, 0.9}) {
            double[] up = NacaReference.point("23112", SurfaceSide.UPPER, x);
            assertThat(section.atX(SurfaceSide.UPPER, up[0]).y()).isCloseTo(up[1], within(1e-9));
        }
    }

    @Test
    void camberGrowsWithTheDesignLift() {
        assertThat(Sections.naca("43012").maximumCamber())
                .isCloseTo(2 * Sections.naca("23012").maximumCamber(), within(1e-12));
    }

    /** Slope of the mean line of a section so thin that its skin is nearly the mean line. */
    private static DoubleUnaryOperator slopeOf(String line) {
        Section thin = Sections.naca("2" + line.substring(1) + "01");
        return x -> {
            SkinPoint u = thin.atX(SurfaceSide.UPPER, x);
            SkinPoint l = thin.atX(SurfaceSide.LOWER, x);
            return 0.5 * (u.tangentY() / u.tangentX() + l.tangentY() / l.tangentX());
        };
    }

    /** ∫ slope cos nθ dθ over 0 to π, x = (1 - cos θ)/2, by the midpoint rule. */
    private static double fourier(DoubleUnaryOperator slope, int n) {
        int steps = 2000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double theta = Math.PI * (i + 0.5) / steps;
            sum += slope.applyAsDouble(Math.min(0.9999, 0.5 * (1 - Math.cos(theta)))) * Math.cos(n * theta);
        }
        return sum * Math.PI / steps;
    }
}
