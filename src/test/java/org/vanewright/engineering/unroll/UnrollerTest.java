package org.vanewright.engineering.unroll;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.wing.WingPanel;

class UnrollerTest {
    private static final List<Section> SECTIONS = List.of(
            ShapedSections.circle(),
            ShapedSections.plate(),
            ShapedSections.parabola(0.01),
            ShapedSections.parabola(0.003));

    @Test
    void randomPanelsAreIsometricToWithinTheReportedStrain() {
        SplittableRandom random = new SplittableRandom(20_260_101);
        for (int i = 0; i < 120; i++) {
            WingPanel panel = randomPanel(random, i % 2 == 0);
            SurfaceSide side = random.nextBoolean() ? SurfaceSide.UPPER : SurfaceSide.LOWER;
            FlatSkin skin = Unroller.unroll(panel, side);
            assertThat(skin.maximumStrain()).isFinite();
            for (int k = 0; k < 40; k++) {
                double t = random.nextDouble();
                double x = random.nextDouble() * random.nextDouble();
                double t2 = Math.min(1, t + 2e-4 * random.nextDouble());
                double x2 = Math.min(1, x * (1 + 2e-4 * random.nextDouble()));
                double flat = skin.toFlat(t, x).distanceTo(skin.toFlat(t2, x2));
                double truth =
                        PanelSpace.distance(PanelSpace.point(panel, side, t, x), PanelSpace.point(panel, side, t2, x2));
                assertThat(Math.abs(flat - truth))
                        .as("panel %s, t %s, x %s", panel, t, x)
                        .isLessThan((1.001 * skin.maximumStrain() + 1e-6) * truth + 1e-9);
            }
        }
    }

    private static WingPanel randomPanel(SplittableRandom random, boolean developable) {
        Section inner = SECTIONS.get(random.nextInt(SECTIONS.size()));
        Section outer = developable ? inner : SECTIONS.get(random.nextInt(SECTIONS.size()));
        double twist = developable ? 0 : random.nextDouble(-6, 6);
        return PanelSpace.panel(
                random.nextDouble(300, 6000),
                random.nextDouble(300, 2500),
                random.nextDouble(300, 2500),
                random.nextDouble(-900, 900),
                inner,
                outer,
                twist);
    }

    @Test
    void sheetIsContinuousFromNoseToTail() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 30; i++) {
            WingPanel panel = randomPanel(random, i % 2 == 0);
            FlatSkin skin = Unroller.unroll(panel, SurfaceSide.UPPER);
            double t = random.nextDouble();
            double arc = skin.arcLengthMm(t);
            Point2 before = skin.toFlatByArc(t, 0);
            for (int k = 1; k <= 3000; k++) {
                Point2 now = skin.toFlatByArc(t, arc * k / 3000);
                assertThat(now.distanceTo(before))
                        .isBetween(0.9 * arc / 3000, (1.0001 + skin.maximumStrain()) * arc / 3000);
                before = now;
            }
        }
    }

    @Test
    void unusablePanelNamesEveryField() {
        Section section = ShapedSections.plate();
        WingPanel panel = new WingPanel(
                Double.NaN, 100, -5, Double.POSITIVE_INFINITY, Double.NaN, 1e9, section, section, Double.NaN);
        assertThat(fields(panel))
                .containsExactly(
                        "innerStationMm",
                        "innerChordMm",
                        "outerChordMm",
                        "innerLeadingEdgeMm",
                        "outerLeadingEdgeMm",
                        "twistDeg");
        assertThat(fields(new WingPanel(500, 500, 900, 900, 0, 0, section, section, 0)))
                .containsExactly("outerStationMm");
        assertThat(PanelRules.problems(new WingPanel(500, 900, 900, 900, 0, 0, section, section, 0)))
                .isEmpty();
    }

    private static List<String> fields(WingPanel panel) {
        InvalidInputException refused =
                catchThrowableOfType(InvalidInputException.class, () -> Unroller.unroll(panel, SurfaceSide.UPPER));
        return refused.problems().stream().map(FieldProblem::field).toList();
    }

    @Test
    void rowLineAndRegionMustLieOnTheSkin() {
        WingPanel panel = PanelSpace.panel(2000, 1000, 800, 0, ShapedSections.circle());
        RowLine line = RowLine.atArcMm(Double.NaN, 1600);
        InvalidInputException refused = catchThrowableOfType(
                InvalidInputException.class,
                () -> Unroller.unroll(panel, SurfaceSide.UPPER, line, new ChordRange(0.5, 0.2)));
        assertThat(refused.problems().stream().map(FieldProblem::field))
                .containsExactly("region.to", "line.inner", "line.outer");
        assertThat(Unroller.unroll(panel, SurfaceSide.UPPER, RowLine.atArcMm(0, 1200), ChordRange.WHOLE)
                        .developable())
                .isTrue();
    }

    @Test
    void placesOffThePanelAreRefused() {
        for (double twist : new double[] {0, 2}) {
            Section section = ShapedSections.circle();
            FlatSkin skin =
                    Unroller.unroll(PanelSpace.panel(2000, 1000, 800, 0, section, section, twist), SurfaceSide.UPPER);
            for (double bad : new double[] {Double.NaN, -0.01, 1.01, Double.POSITIVE_INFINITY}) {
                assertThatThrownBy(() -> skin.toFlat(bad, 0.5)).isInstanceOf(IllegalArgumentException.class);
                assertThatThrownBy(() -> skin.toFlat(0.5, bad)).isInstanceOf(IllegalArgumentException.class);
                assertThatThrownBy(() -> skin.station(0.5, bad)).isInstanceOf(IllegalArgumentException.class);
                assertThatThrownBy(() -> skin.toFlatByArc(bad, 5)).isInstanceOf(IllegalArgumentException.class);
                assertThatThrownBy(() -> skin.toFlatByArc(0.5, bad * 3000))
                        .isInstanceOf(IllegalArgumentException.class);
            }
            assertThat(skin.toFlatByArc(0.5, skin.arcLengthMm(0.5) * (1 + 1e-12))
                            .distanceTo(skin.toFlat(0.5, 1)))
                    .isLessThan(1e-6);
        }
    }

    @Test
    void outsideViewIsTurnedOverForLeftUpperAndRightLower() {
        // Seen from above, nose up the page, the right wing's rearward is down and its outboard is right: x to y turns
        // anticlockwise, as on the sheet.
        assertThat(FlatSkin.mirroredOutside(SurfaceSide.UPPER, false)).isFalse();
        assertThat(FlatSkin.mirroredOutside(SurfaceSide.UPPER, true)).isTrue();
        assertThat(FlatSkin.mirroredOutside(SurfaceSide.LOWER, false)).isTrue();
        assertThat(FlatSkin.mirroredOutside(SurfaceSide.LOWER, true)).isFalse();
    }
}
