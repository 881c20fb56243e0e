package org.vanewright.engineering.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.engineering.section.SectionSpec.TrailingEdge;

class NacaFourDigitTest extends SectionContract {
    @Override
    Section section() {
        return Sections.naca("2412");
    }

    // I. H. Abbott, A. E. von Doenhoff, L. S. Stivers, "Summary of Airfoil Data", NACA TR-824 (1945), appendix I, NACA
    // 0012 basic thickness form, from memory; printed to 0.001 % (20 %c computes to 5.738, printed 5.737).
    @ParameterizedTest
    @CsvSource({
        "1.25, 1.894", "2.5, 2.615", "5, 3.555", "7.5, 4.200", "10, 4.683", "15, 5.345", "20, 5.737", "25, 5.941",
        "30, 6.002", "40, 5.803", "50, 5.294", "60, 4.563", "70, 3.664", "80, 2.623", "90, 1.448", "95, 0.807",
        "100, 0.126"
    })
    void naca0012HasThePublishedOrdinates(double xPercent, double yPercent) {
        Section section = Sections.naca("0012");
        assertThat(100 * section.atX(SurfaceSide.UPPER, xPercent / 100).y()).isCloseTo(yPercent, within(0.0011));
        assertThat(100 * section.atX(SurfaceSide.LOWER, xPercent / 100).y()).isCloseTo(-yPercent, within(0.0011));
    }

    // Derived from the equations of E. N. Jacobs, K. E. Ward, R. M. Pinkerton, NACA TR-460 (1933), for mean-line
    // stations 0.10, 0.40 and 0.30.
    @ParameterizedTest
    @CsvSource({
        "2412, 0.09650, 0.05545, 0.10350, -0.03795",
        "2412, 0.40000, 0.07803, 0.40000, -0.03803",
        "4412, 0.29700, 0.09744, 0.30300, -0.02244"
    })
    void thicknessIsLaidOffSquareToTheMeanLine(String digits, double xu, double yu, double xl, double yl) {
        Section section = Sections.naca(digits);
        assertThat(section.atX(SurfaceSide.UPPER, xu).y()).isCloseTo(yu, within(1e-5));
        assertThat(section.atX(SurfaceSide.LOWER, xl).y()).isCloseTo(yl, within(1e-5));
    }

    // NACA TR-460 (1933), from memory: nose radius 1.1019 t², 1.58 % printed for 12 %.
    @ParameterizedTest
    @ValueSource(strings = {"0006", "0012", "2415", "4424"})
    void theNoseRadiusIsThatOfTheThicknessForm(String digits) {
        double t = Integer.parseInt(digits.substring(2)) / 100.0;
        Section section = Sections.naca(digits);
        assertThat(section.leadingEdgeRadius()).isCloseTo(1.1019 * t * t, within(1e-5));
        double cosineOfMeanLine = section.atX(SurfaceSide.UPPER, 0).tangentY();
        assertThat(1 / section.atX(SurfaceSide.UPPER, 0).curvature())
                .isCloseTo(section.leadingEdgeRadius() * cosineOfMeanLine, within(1e-12));
    }

    // NACA TR-460 (1933): greatest thickness at 0.30 chord, equal to the last two digits to 4e-5 of a half.
    @Test
    void thicknessAndCamberAreThoseOfTheNumber() {
        assertThat(Sections.naca("2412").maximumThickness()).isCloseTo(0.12, within(1e-4));
        assertThat(Sections.naca("2412").maximumCamber()).isEqualTo(0.02);
        assertThat(Sections.naca("0015").maximumThickness()).isCloseTo(0.15, within(1e-4));
        assertThat(Sections.naca("0015").maximumCamber()).isZero();
    }

    @Test
    void theTrailingEdgeIsBluntAsPublishedOrClosed() {
        Section blunt = Sections.naca("2412");
        Section closed = Sections.of(new SectionSpec("2412", TrailingEdge.CLOSED, null, null));
        assertThat(blunt.closedTrailingEdge()).isFalse();
        assertThat(closed.closedTrailingEdge()).isTrue();
        assertThat(closed.sameShapeAs(blunt)).isFalse();
        assertThat(blunt.designation()).isEqualTo("NACA 2412");
        assertThat(closed.designation()).isEqualTo("NACA 2412 (closed trailing edge)");
        assertThat(blunt).isEqualTo(Sections.of(new SectionSpec("NACA 2412", TrailingEdge.BLUNT, null, null)));
    }

    @ParameterizedTest
    @CsvSource({"0012", "0001", "0030", "2412", "4412", "6409", "9440", "23012", "23118"})
    void arcLengthAgreesWithAFineIndependentIntegral(String digits) {
        Section section = Sections.naca(digits);
        for (SurfaceSide side : SurfaceSide.values()) {
            assertThat(section.arcLength(side)).isCloseTo(NacaReference.arcLength(digits, side), within(1e-8));
        }
    }

    @ParameterizedTest
    @CsvSource({"0012", "2412", "4415", "6409", "23012", "23118"})
    void aPlaceFoundByArcLengthIsTheOneTheIndependentIntegralReaches(String digits) {
        Section section = Sections.naca(digits);
        for (SurfaceSide side : SurfaceSide.values()) {
            for (double x : new double[] {0.002, 0.05, 0.1, 0.3, 0.7, 0.95}) {
                double[] expected = NacaReference.point(digits, side, x);
                SkinPoint found = section.atArcLength(side, NacaReference.arcLength(digits, side, x));
                assertThat(found.x()).isCloseTo(expected[0], within(1e-6));
                assertThat(found.y()).isCloseTo(expected[1], within(1e-6));
            }
        }
    }
}
