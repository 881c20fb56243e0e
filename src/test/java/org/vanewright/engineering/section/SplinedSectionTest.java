package org.vanewright.engineering.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SplinedSectionTest extends SectionContract {
    private static final List<List<Double>> SYMMETRIC = sampled("0012", 60);

    @Override
    Section section() {
        return through(SYMMETRIC);
    }

    static Section through(List<List<Double>> loop) {
        return Sections.of(new SectionSpec(null, null, loop, "Sampled"));
    }

    /** A NACA section as coordinates: 2 n + 1 points, spaced evenly in √x. */
    static List<List<Double>> sampled(String digits, int n) {
        List<List<Double>> loop = new ArrayList<>();
        for (int i = -n; i <= n; i++) {
            double root = (double) i / n;
            double[] p = NacaReference.point(digits, i < 0 ? SurfaceSide.UPPER : SurfaceSide.LOWER, root * root);
            loop.add(List.of(p[0], p[1]));
        }
        return loop;
    }

    @ParameterizedTest
    @ValueSource(strings = {"0012", "0009", "0018"})
    void samplesOfASymmetricSectionGiveItsOrdinatesAndArcLength(String digits) {
        Section exact = Sections.naca(digits);
        Section splined = through(sampled(digits, 60));
        for (int i = 1; i <= 200; i++) {
            double x = i / 200.0;
            SkinPoint a = exact.atX(SurfaceSide.UPPER, Math.min(x, exact.maximumX(SurfaceSide.UPPER)));
            SkinPoint b = splined.atX(SurfaceSide.UPPER, Math.min(x, splined.maximumX(SurfaceSide.UPPER)));
            assertThat(b.y()).isCloseTo(a.y(), within(1e-5));
            assertThat(b.arcLength()).isCloseTo(a.arcLength(), within(1e-5));
        }
        assertThat(splined.leadingEdgeRadius()).isCloseTo(exact.leadingEdgeRadius(), within(3e-4));
        assertThat(splined.maximumThickness()).isCloseTo(exact.maximumThickness(), within(1e-5));
        assertThat(splined.maximumCamber()).isCloseTo(0, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2412", "4412", "6409", "23012"})
    void samplesOfACamberedSectionGiveItsOrdinatesAndArcLength(String digits) {
        Section exact = Sections.naca(digits);
        Section splined = through(sampled(digits, 80));
        for (SurfaceSide side : SurfaceSide.values()) {
            // from a common station: the nose of coordinates is their farthest point, that of a NACA section the start
            // of its mean line
            double from =
                    exact.atX(side, 0.05).arcLength() - splined.atX(side, 0.05).arcLength();
            for (int i = 10; i < 200; i++) {
                SkinPoint a = exact.atX(side, i / 200.0);
                SkinPoint b = splined.atX(side, i / 200.0);
                assertThat(b.y()).isCloseTo(a.y(), within(1e-5));
                assertThat(b.arcLength() + from).isCloseTo(a.arcLength(), within(1e-5));
            }
        }
        double around = splined.arcLength(SurfaceSide.UPPER) + splined.arcLength(SurfaceSide.LOWER);
        assertThat(around)
                .isCloseTo(exact.arcLength(SurfaceSide.UPPER) + exact.arcLength(SurfaceSide.LOWER), within(1e-5));
    }

    @Test
    void aCircleHasHalfItsCircumferenceOnEachSide() {
        Section circle = through(circle(1, 0, 0));
        assertThat(circle.arcLength(SurfaceSide.UPPER)).isCloseTo(Math.PI / 2, within(1e-6));
        assertThat(circle.arcLength(SurfaceSide.LOWER)).isCloseTo(Math.PI / 2, within(1e-6));
        assertThat(circle.atX(SurfaceSide.UPPER, 0.5).y()).isCloseTo(0.5, within(1e-8));
        assertThat(circle.atX(SurfaceSide.UPPER, 0.5).arcLength()).isCloseTo(Math.PI / 4, within(1e-6));
        assertThat(circle.atX(SurfaceSide.LOWER, 0.25).curvature()).isCloseTo(2, within(1e-4));
        assertThat(circle.leadingEdgeRadius()).isCloseTo(0.5, within(1e-5));
        assertThat(circle.maximumThickness()).isCloseTo(1, within(1e-8));
    }

    @Test
    void coordinatesAreNeitherTurnedNorRescaled() {
        Section moved = through(circle(300, -40, 25));
        assertThat(moved.arcLength(SurfaceSide.UPPER)).isCloseTo(150 * Math.PI, within(1e-3));
        assertThat(moved.maximumX(SurfaceSide.LOWER)).isCloseTo(260, within(1e-9));
        assertThat(moved.atX(SurfaceSide.UPPER, 110).y()).isCloseTo(175, within(1e-4));
        assertThat(moved.atArcLength(SurfaceSide.UPPER, 0).x()).isCloseTo(-40, within(1e-6));
        assertThat(moved.maximumThickness()).isCloseTo(300, within(1e-4));
    }

    @Test
    void thicknessAndCamberDoNotChangeWhenTheSectionIsTurned() {
        double angle = 0.1;
        List<List<Double>> turned = new ArrayList<>();
        for (List<Double> p : sampled("4412", 80)) {
            double x = p.get(0);
            double y = p.get(1);
            turned.add(List.of(x * Math.cos(angle) + y * Math.sin(angle), y * Math.cos(angle) - x * Math.sin(angle)));
        }
        Section level = through(sampled("4412", 80));
        assertThat(through(turned).maximumThickness()).isCloseTo(level.maximumThickness(), within(1e-9));
        assertThat(through(turned).maximumCamber()).isCloseTo(level.maximumCamber(), within(1e-9));
        // square to the chord from the foremost point, a cambered section measures a little differently
        assertThat(level.maximumThickness()).isCloseTo(0.12, within(1e-3));
        assertThat(level.maximumCamber()).isCloseTo(0.04, within(2e-3));
    }

    @Test
    void theSameCoordinatesUnderAnotherTitleHaveTheSameShape() {
        Section other = Sections.of(new SectionSpec(null, null, SYMMETRIC, "Another title"));
        assertThat(other).isNotEqualTo(section());
        assertThat(other.sameShapeAs(section())).isTrue();
        assertThat(other.designation()).isEqualTo("Another title");
    }

    private static List<List<Double>> circle(double diameter, double noseX, double noseY) {
        int n = 1200;
        List<List<Double>> loop = new ArrayList<>();
        for (int i = 0; i <= n; i++) {
            double a = 2 * Math.PI * i / n;
            loop.add(List.of(noseX + diameter * (0.5 + 0.5 * Math.cos(a)), noseY + 0.5 * diameter * Math.sin(a)));
        }
        return loop;
    }
}
