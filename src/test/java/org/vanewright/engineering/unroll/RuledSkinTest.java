package org.vanewright.engineering.unroll;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.wing.WingPanel;

/** Twisted and blended panels: what the strips keep, and that the reported strain is the real one. */
class RuledSkinTest {
    private static final SurfaceSide UPPER = SurfaceSide.UPPER;

    private static WingPanel twisted(double twistDeg) {
        Section section = ShapedSections.parabola(0.01);
        return PanelSpace.panel(2400, 1400, 900, 200, section, section, twistDeg);
    }

    private static WingPanel blended(double twistDeg) {
        return PanelSpace.panel(
                2400, 1400, 900, 200, ShapedSections.parabola(0.012), ShapedSections.parabola(0.006), twistDeg);
    }

    @Test
    void aRowThatRunsOffTheNarrowEndKeepsItsLengthsAsFarAsItGoes() {
        WingPanel panel = new WingPanel(0, 3000, 1500, 800, 0, 300, Sections.naca("2412"), Sections.naca("4415"), 3);
        double arcMm = 900;
        FlatSkin skin = Unroller.unroll(panel, SurfaceSide.UPPER, RowLine.atArcMm(arcMm, arcMm), ChordRange.WHOLE);
        assertThat(skin.arcLengthMm(1)).as("shorter than the row is far back").isLessThan(arcMm);
        double onSheet = 0;
        double inSpace = 0;
        int steps = 1000;
        SkinStation before = skin.stationByArc(0, arcMm);
        for (int i = 1; i <= steps; i++) {
            SkinStation here = skin.stationByArc(0.7 * i / steps, arcMm);
            onSheet += here.flat().distanceTo(before.flat());
            inSpace += Math.sqrt(Math.pow(here.rearwardMm() - before.rearwardMm(), 2)
                    + Math.pow(here.outboardMm() - before.outboardMm(), 2)
                    + Math.pow(here.upMm() - before.upMm(), 2));
            before = here;
        }
        assertThat(onSheet).isCloseTo(inSpace, within(1e-5 * inSpace));
    }

    @Test
    void stripsOverACylinderOrAConeGiveTheExactSheet() {
        for (double outer : new double[] {1400, 700, 1800}) {
            for (Section section :
                    List.of(ShapedSections.parabola(0.01), ShapedSections.circle(), ShapedSections.plate())) {
                WingPanel panel = PanelSpace.panel(2400, 1400, outer, 350, section);
                FlatSkin exact = new DevelopableSkin(panel, UPPER);
                FlatSkin strips = new RuledSkin(panel, UPPER, RowLine.atArcMm(90, 130), ChordRange.WHOLE);
                assertThat(strips.maximumStrain()).isLessThan(1e-9);
                for (double x : new double[] {0, 1e-6, 0.002, 0.1, 0.6, 0.98}) {
                    assertThat(strips.toFlat(0.4, x).distanceTo(exact.toFlat(0.4, x)))
                            .isLessThan(1e-7);
                }
                assertThat(strips.toFlatByArc(0.9, 77).distanceTo(exact.toFlatByArc(0.9, 77)))
                        .isLessThan(1e-7);
            }
        }
    }

    @Test
    void twistedPlateStrainsAsTheHyperbolicParaboloidDoes() {
        // Rulings square to the root, edges at twist β to each other: widths at t are |(1−t) e₀ + t e₁| between unit
        // vectors β apart, least at the middle: cos(β/2). The sheet's are 1, so the strain there is 1/cos(β/2) − 1 on
        // the leading-edge ruling.
        Section plate = ShapedSections.plate();
        for (double twist : new double[] {2, 5, 10}) {
            WingPanel panel = PanelSpace.panel(100_000 * 0.4, 10, 10, 0, plate, plate, twist);
            FlatSkin skin = Unroller.unroll(panel, UPPER);
            double expected = 1 / Math.cos(Math.toRadians(0.5 * twist)) - 1;
            assertThat(skin.maximumStrain()).isCloseTo(expected, within(1e-6 * expected));
            assertThat(skin.largestStrain().spanFraction()).isCloseTo(0.5, within(1e-3));
        }
    }

    @Test
    void strainGrowsWithTwistAndVanishesWithIt() {
        double before = 0;
        for (double twist : new double[] {1e-4, 0.01, 0.5, 1, 2, 4, 8}) {
            double strain = Unroller.unroll(twisted(twist), UPPER).maximumStrain();
            assertThat(strain).isGreaterThan(before);
            // quadratic in the twist
            assertThat(strain).isLessThan(Math.toRadians(twist) * Math.toRadians(twist));
            before = strain;
        }
        Point2 exact = Unroller.unroll(twisted(0), UPPER).toFlat(0.7, 0.5);
        assertThat(Unroller.unroll(twisted(1e-7), UPPER).toFlat(0.7, 0.5).distanceTo(exact))
                .isLessThan(1e-5);
    }

    @Test
    void reportedStrainBoundsEveryShortLineAndIsReached() {
        for (WingPanel panel : List.of(twisted(3), twisted(-6), blended(0), blended(4))) {
            FlatSkin skin = Unroller.unroll(panel, UPPER);
            double worst = 0;
            for (double t = 0; t <= 0.999; t += 0.0625) {
                for (int i = 1; i < 60; i++) {
                    double x = PanelSpace.square(i, 60);
                    for (int k = 0; k < 8; k++) {
                        worst = Math.max(worst, strain(panel, skin, t, x, Math.PI * k / 8));
                    }
                }
            }
            assertThat(worst).isLessThan(1.02 * skin.maximumStrain() + 1e-7);
            assertThat(worst).isGreaterThan(0.8 * skin.maximumStrain());
        }
    }

    private static double strain(WingPanel panel, FlatSkin skin, double t, double x, double direction) {
        double dt = 1e-4 * Math.cos(direction);
        double dx = 1e-4 * x * Math.sin(direction);
        double truth = PanelSpace.distance(
                PanelSpace.point(panel, UPPER, t, x), PanelSpace.point(panel, UPPER, Math.abs(t + dt), x + dx));
        return Math.abs(skin.toFlat(t, x).distanceTo(skin.toFlat(Math.abs(t + dt), x + dx)) / truth - 1);
    }

    @Test
    void lengthsAlongTheRowLineAreKept() {
        List<RowLine> lines = List.of(
                RowLine.atChordFraction(0.08, 0.08),
                RowLine.atChordFraction(0.07, 0.15),
                RowLine.atChordFraction(0.3, 0.1),
                RowLine.atArcMm(150, 150),
                RowLine.atArcMm(80, 210));
        for (WingPanel panel : List.of(twisted(3), twisted(-8), blended(0), blended(5))) {
            for (RowLine line : lines) {
                FlatSkin skin = Unroller.unroll(panel, UPPER, line, new ChordRange(0, 0.4));
                double truth = 0;
                double flat = 0;
                SkinStation before = onLine(skin, line, 0);
                for (int i = 1; i <= 2000; i++) {
                    SkinStation now = onLine(skin, line, i / 2000.0);
                    truth += PanelSpace.distance(space(before), space(now));
                    flat += before.flat().distanceTo(now.flat());
                    before = now;
                }
                assertThat(flat).as("%s", line).isCloseTo(truth, within(1e-6 * truth));
            }
        }
    }

    @Test
    void crossingsAtTheRowLineKeepTheirAngleAndScale() {
        RowLine line = RowLine.atArcMm(80, 210);
        WingPanel panel = blended(5);
        FlatSkin skin = Unroller.unroll(panel, UPPER, line, ChordRange.WHOLE);
        for (double t : new double[] {0.1, 0.5, 0.9}) {
            double arc = line.at(t);
            SkinStation a = skin.stationByArc(t, arc - 0.05);
            SkinStation b = skin.stationByArc(t, arc + 0.05);
            assertThat(a.flat().distanceTo(b.flat()) / PanelSpace.distance(space(a), space(b)))
                    .isCloseTo(1, within(1e-6));
        }
    }

    private static SkinStation onLine(FlatSkin skin, RowLine line, double t) {
        return line.measure() == RowLine.Measure.ARC_MM
                ? skin.stationByArc(t, line.at(t))
                : skin.station(t, line.at(t));
    }

    private static double[] space(SkinStation at) {
        return new double[] {at.rearwardMm(), at.outboardMm(), at.upMm()};
    }

    @Test
    void rulingsAndEndSectionsKeepTheirLengths() {
        for (WingPanel panel : List.of(twisted(3), blended(0), blended(5))) {
            FlatSkin skin = Unroller.unroll(panel, UPPER);
            for (double x : new double[] {0, 1e-5, 0.01, 0.3, 1}) {
                double truth = PanelSpace.distance(
                        PanelSpace.point(panel, UPPER, 0.1, x), PanelSpace.point(panel, UPPER, 0.85, x));
                assertThat(skin.toFlat(0.1, x).distanceTo(skin.toFlat(0.85, x))).isCloseTo(truth, within(1e-9 * truth));
            }
            double inner = panel.innerSection().arcLength(UPPER) * panel.innerChordMm();
            double outer = panel.outerSection().arcLength(UPPER) * panel.outerChordMm();
            assertThat(skin.arcLengthMm(0)).isCloseTo(inner, within(1e-8));
            assertThat(skin.arcLengthMm(1)).isCloseTo(outer, within(1e-8));
            assertThat(flatCurve(skin, 0)).isCloseTo(inner, within(1e-6 * inner));
            assertThat(flatCurve(skin, 1)).isCloseTo(outer, within(1e-6 * outer));
        }
    }

    private static double flatCurve(FlatSkin skin, double t) {
        int n = 4000;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += skin.toFlat(t, PanelSpace.square(i, n)).distanceTo(skin.toFlat(t, PanelSpace.square(i + 1, n)));
        }
        return sum;
    }

    @Test
    void stationAgreesWithItsNeighbours() {
        for (WingPanel panel : List.of(twisted(3), blended(0), blended(5))) {
            StationAssertions.assertConsistent(panel, Unroller.unroll(panel, UPPER), UPPER);
            StationAssertions.assertConsistent(panel, Unroller.unroll(panel, SurfaceSide.LOWER), SurfaceSide.LOWER);
        }
    }

    @Test
    void curvatureIsThatOfTheLocalSection() {
        FlatSkin skin = Unroller.unroll(twisted(4), UPPER);
        for (double x : new double[] {0.001, 0.05, 0.4}) {
            double innerRadius =
                    1400 / ShapedSections.parabola(0.01).atX(UPPER, x).curvature();
            double outerRadius =
                    900 / ShapedSections.parabola(0.01).atX(UPPER, x).curvature();
            assertThat(skin.station(0, x).curvatureRadiusMm()).isCloseTo(innerRadius, within(1e-3 * innerRadius));
            assertThat(skin.station(1, x).curvatureRadiusMm()).isCloseTo(outerRadius, within(1e-3 * outerRadius));
        }
    }

    @Test
    void regionLimitsWhereStrainIsLookedFor() {
        WingPanel panel = blended(0);
        RowLine line = RowLine.atChordFraction(0.1, 0.1);
        double whole = Unroller.unroll(panel, UPPER, line, ChordRange.WHOLE).maximumStrain();
        FlatSkin part = Unroller.unroll(panel, UPPER, line, new ChordRange(0.3, 0.6));
        assertThat(part.maximumStrain()).isLessThan(whole);
        assertThat(part.largestStrain().chordFraction()).isBetween(0.3, 0.6);
    }

    @Test
    void roundNoseBlendsIntoASharpOne() {
        WingPanel panel =
                PanelSpace.panel(2400, 1400, 900, 200, ShapedSections.parabola(0.01), ShapedSections.plate(), 1);
        FlatSkin skin = Unroller.unroll(panel, UPPER);
        assertThat(skin.maximumStrain()).isFinite().isPositive();
        assertThat(skin.station(1, 0).rearward().norm()).isCloseTo(1, within(1e-9));
        assertThat(skin.toFlat(0, 0)).isEqualTo(Point2.ORIGIN);
    }
}
