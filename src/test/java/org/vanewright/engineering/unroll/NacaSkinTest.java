package org.vanewright.engineering.unroll;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SectionSpec;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.section.SkinPoint;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.wing.WingPanel;

/** Real sections: kinks where mean lines join, skins that reach ahead of their leading edge, splines, blunt tails. */
class NacaSkinTest {
    private static List<WingPanel> developables() {
        List<WingPanel> panels = new ArrayList<>();
        for (String naca : List.of("2412", "0012", "23012", "6512")) {
            Section section = Sections.naca(naca);
            panels.add(PanelSpace.panel(3300, 1500, 1500, 0, section));
            panels.add(PanelSpace.panel(3300, 1500, 1500, 420, section));
            panels.add(PanelSpace.panel(3300, 1500, 950, 180, section));
            panels.add(PanelSpace.panel(1200, 900, 1350, -100, section));
        }
        panels.add(PanelSpace.panel(3300, 1500, 950, 180, splined()));
        return panels;
    }

    private static List<WingPanel> ruled() {
        Section root = Sections.naca("2412");
        Section tip = Sections.naca("0009");
        return List.of(
                PanelSpace.panel(3300, 1500, 950, 180, root, root, -3),
                PanelSpace.panel(3300, 1500, 950, 180, root, tip, 0),
                PanelSpace.panel(3300, 1500, 950, 180, tip, root, 2),
                PanelSpace.panel(3300, 1500, 950, 180, Sections.naca("23015"), Sections.naca("4412"), -2),
                PanelSpace.panel(3300, 1500, 950, 180, splined(), root, -2));
    }

    /** Ordinates of a smooth section as coordinates, so that a spline carries it. */
    private static Section splined() {
        List<List<Double>> loop = new ArrayList<>();
        Section source = Sections.naca("2412");
        for (int i = 60; i >= 0; i--) {
            loop.add(point(source, SurfaceSide.UPPER, i / 60.0));
        }
        for (int i = 1; i <= 60; i++) {
            loop.add(point(source, SurfaceSide.LOWER, i / 60.0));
        }
        return Sections.of(new SectionSpec(null, null, loop, "splined"));
    }

    private static List<Double> point(Section section, SurfaceSide side, double fraction) {
        SkinPoint p = section.atArcLength(side, section.arcLength(side) * fraction * fraction);
        return List.of(p.x(), p.y());
    }

    @Test
    void unsweptConstantChordPanelGivesArcLengthAndSpan() {
        Section section = Sections.naca("2412");
        for (SurfaceSide side : SurfaceSide.values()) {
            FlatSkin skin = Unroller.unroll(PanelSpace.panel(2000, 1000, 1000, 0, section), side);
            for (double x : new double[] {0, 0.0005, 0.01, 0.08, 0.4, 0.7, 0.99}) {
                Point2 flat = skin.toFlat(0.3, x);
                assertThat(flat.x()).isCloseTo(1000 * section.atX(side, x).arcLength(), within(1e-7));
                assertThat(flat.y()).isCloseTo(600, within(1e-9));
            }
        }
    }

    @Test
    void areaIsPreservedAndLengthsAreKept() {
        for (WingPanel panel : developables()) {
            for (SurfaceSide side : SurfaceSide.values()) {
                FlatSkin skin = Unroller.unroll(panel, side);
                assertThat(skin.developable()).isTrue();
                double truth = arcArea(panel, side);
                assertThat(flatArea(skin)).as("%s", panel).isCloseTo(truth, within(1e-6 * truth));
                for (double x : new double[] {0, 1e-4, 0.02, 0.5, 0.99}) {
                    double length = PanelSpace.distance(
                            PanelSpace.point(panel, side, 0.05, x), PanelSpace.point(panel, side, 1, x));
                    assertThat(skin.toFlat(0.05, x).distanceTo(skin.toFlat(1, x)))
                            .isCloseTo(length, within(1e-9 * length));
                }
            }
        }
    }

    /** ∫∫ |P_s × P_t| ds dt by the midpoint rule, from the sections' own tangents. */
    private static double arcArea(WingPanel panel, SurfaceSide side) {
        Section section = panel.innerSection();
        double taper = panel.outerChordMm() - panel.innerChordMm();
        double sweep = panel.outerLeadingEdgeMm() - panel.innerLeadingEdgeMm();
        int n = 6000;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            SkinPoint p = section.atArcLength(side, section.arcLength(side) * (i + 0.5) / n);
            double x = sweep + taper * p.x();
            double z = taper * p.y();
            double normal = x * p.tangentY() - z * p.tangentX();
            // chord is linear in t, so its mean stands for the integral
            sum += (panel.innerChordMm() + 0.5 * taper) * Math.hypot(panel.spanMm(), normal);
        }
        return sum * section.arcLength(side) / n;
    }

    private static double flatArea(FlatSkin skin) {
        int n = 6000;
        double sum = skin.toFlatByArc(0, skin.arcLengthMm(0)).cross(skin.toFlatByArc(1, skin.arcLengthMm(1)));
        for (int end = 0; end <= 1; end++) {
            double arc = skin.arcLengthMm(end);
            Point2 before = skin.toFlatByArc(end, 0);
            for (int i = 1; i <= n; i++) {
                Point2 now = skin.toFlatByArc(end, arc * i / n);
                sum += (end == 0 ? 1 : -1) * before.cross(now);
                before = now;
            }
        }
        return 0.5 * Math.abs(sum);
    }

    @Test
    void closePointsKeepTheirDistanceToWithinTheStrain() {
        SplittableRandom random = new SplittableRandom(2412);
        List<WingPanel> panels = new ArrayList<>(developables());
        panels.addAll(ruled());
        for (WingPanel panel : panels) {
            for (SurfaceSide side : SurfaceSide.values()) {
                FlatSkin skin = Unroller.unroll(panel, side);
                for (int i = 0; i < 60; i++) {
                    double t = random.nextDouble();
                    double x = 0.01 * (i % 3 == 0 ? 1 : 0) + 0.98 * random.nextDouble() * random.nextDouble() + 0.001;
                    double t2 = Math.min(1, t + 1e-4 * random.nextDouble());
                    double x2 = x * (1 + 1e-4 * random.nextDouble());
                    double truth = PanelSpace.distance(
                            PanelSpace.point(panel, side, t, x), PanelSpace.point(panel, side, t2, x2));
                    assertThat(Math.abs(skin.toFlat(t, x).distanceTo(skin.toFlat(t2, x2)) - truth))
                            .as("%s %s t %s x %s", panel, side, t, x)
                            .isLessThan((1.001 * skin.maximumStrain() + 1e-6) * truth + 1e-8);
                }
            }
        }
    }

    @Test
    void stationsAgreeWithTheirNeighbours() {
        for (SurfaceSide side : SurfaceSide.values()) {
            for (WingPanel panel : developables()) {
                StationAssertions.assertConsistent(panel, Unroller.unroll(panel, side), side);
            }
            for (WingPanel panel : ruled()) {
                StationAssertions.assertConsistent(panel, Unroller.unroll(panel, side), side);
            }
        }
    }

    @Test
    void sheetIsContinuousAndTrueAroundTheNose() {
        List<WingPanel> panels = new ArrayList<>(developables());
        panels.addAll(ruled());
        for (WingPanel panel : panels) {
            for (SurfaceSide side : SurfaceSide.values()) {
                FlatSkin skin = Unroller.unroll(panel, side);
                SkinStation before = skin.stationByArc(0.4, 0);
                for (int i = 1; i <= 400; i++) {
                    SkinStation now = skin.stationByArc(0.4, 0.1 * i);
                    double flat = now.flat().distanceTo(before.flat());
                    assertThat(flat).as("%s %s", panel, side).isCloseTo(0.1, within(1e-4 + 0.1 * skin.maximumStrain()));
                    assertThat(now.rearward().norm()).isCloseTo(1, within(1e-9));
                    assertThat(now.curvaturePerMm()).isFinite();
                    before = now;
                }
            }
        }
    }

    @Test
    void washoutOfALightAircraftStrainsLittle() {
        WingPanel panel = ruled().get(0);
        FlatSkin skin = Unroller.unroll(panel, SurfaceSide.UPPER);
        assertThat(skin.maximumStrain()).isBetween(1e-5, 1e-3);
    }
}
