package org.vanewright.engineering.unroll;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.hipparchus.special.elliptic.legendre.LegendreEllipticIntegral;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.wing.WingPanel;

/** Cylinders and cones over a circle against closed forms of plane and solid geometry, and isometry in general. */
class DevelopableSkinTest {
    private static final double SPAN = 2400;

    @Test
    void rightCylinderRollsOutToARectangle() {
        FlatSkin skin =
                Unroller.unroll(PanelSpace.panel(SPAN, 1000, 1000, 0, ShapedSections.circle()), SurfaceSide.UPPER);
        for (double angle : new double[] {0, 0.01, 0.3, 1, 2, 3, Math.PI}) {
            Point2 flat = skin.toFlatByArc(0.25, 500 * angle);
            assertThat(flat.x()).isCloseTo(500 * angle, within(1e-9));
            assertThat(flat.y()).isCloseTo(0.25 * SPAN, within(1e-9));
            assertThat(skin.toFlat(0.25, 0.5 * (1 - Math.cos(angle))).distanceTo(flat))
                    .isLessThan(1e-4 + 1e-9);
        }
        assertThat(skin.developable()).isTrue();
        assertThat(skin.maximumStrain()).isZero();
    }

    @Test
    void obliqueCylinderOverACircleIsAnEllipticIntegral() {
        // Length square to the generators: r ∫ √(1 − sin²Λ sin²α) dα = r E(α | sin²Λ); Abramowitz & Stegun 1964,
        // chapter 17 (from memory).
        double offset = 900;
        FlatSkin skin =
                Unroller.unroll(PanelSpace.panel(SPAN, 1000, 1000, offset, ShapedSections.circle()), SurfaceSide.UPPER);
        double length = Math.hypot(SPAN, offset);
        double sine = offset / length;
        for (double angle : new double[] {0.001, 0.1, 0.7, 1.5, 2.2, 3.1}) {
            double across = 500 * LegendreEllipticIntegral.bigE(angle, sine * sine);
            double along = sine * 500 * (1 - Math.cos(angle));
            Point2 flat = skin.toFlatByArc(0.6, 500 * angle);
            assertThat(flat.x()).isCloseTo(across, within(1e-8));
            assertThat(flat.y()).isCloseTo(along + 0.6 * length, within(1e-8));
        }
    }

    @Test
    void rightCircularConeRollsOutToASector() {
        // Apex over the circle's centre: slant height l = √(h² + r²), sector angle of a base angle α is α r / l.
        for (double outer : new double[] {400, 999.9, 1000.1, 1700}) {
            FlatSkin skin = Unroller.unroll(
                    PanelSpace.panel(SPAN, 1000, outer, 0.5 * (1000 - outer), ShapedSections.circle()),
                    SurfaceSide.UPPER);
            double height = SPAN * 1000 / (1000 - outer);
            double slant = Math.signum(height) * Math.hypot(height, 500);
            for (double t : new double[] {0, 0.37, 1}) {
                double distance = slant * (1 - t * (1000 - outer) / 1000);
                for (double angle : new double[] {0.02, 0.5, 1.6, 3.1}) {
                    double turned = angle * 500 / slant;
                    Point2 flat = skin.toFlatByArc(t, angle * 0.5 * (1000 + t * (outer - 1000)));
                    assertThat(flat.x()).isCloseTo(distance * Math.sin(turned), within(1e-8));
                    // the plain form loses digits when the apex is far; that much is allowed
                    assertThat(flat.y())
                            .isCloseTo(slant - distance * Math.cos(turned), within(1e-8 + 1e-15 * Math.abs(slant)));
                }
            }
        }
    }

    @Test
    void coneBecomesTheCylinderWithoutAJump() {
        FlatSkin cylinder = Unroller.unroll(
                PanelSpace.panel(SPAN, 1000, 1000, 300, ShapedSections.parabola(0.01)), SurfaceSide.UPPER);
        for (double difference : new double[] {1e-3, -1e-3, 1e-6, -1e-6, 1e-9, -1e-9, 1e-12}) {
            FlatSkin cone = Unroller.unroll(
                    PanelSpace.panel(SPAN, 1000, 1000 + difference, 300, ShapedSections.parabola(0.01)),
                    SurfaceSide.UPPER);
            for (double x : new double[] {0, 0.001, 0.2, 1}) {
                assertThat(cone.toFlat(0.8, x).distanceTo(cylinder.toFlat(0.8, x)))
                        .isLessThan(3 * Math.abs(difference) + 1e-9);
            }
        }
    }

    @Test
    void rulingsKeepTheirLengthAndSectionsTheirArc() {
        for (WingPanel panel : developables()) {
            FlatSkin skin = Unroller.unroll(panel, SurfaceSide.UPPER);
            for (double x : new double[] {0, 1e-5, 0.01, 0.3, 0.9, 1}) {
                double truth = PanelSpace.distance(
                        PanelSpace.point(panel, SurfaceSide.UPPER, 0.1, x),
                        PanelSpace.point(panel, SurfaceSide.UPPER, 0.85, x));
                double flat = skin.toFlat(0.1, x).distanceTo(skin.toFlat(0.85, x));
                assertThat(flat).isCloseTo(truth, within(1e-9 * truth));
            }
            for (double t : new double[] {0, 0.5, 1}) {
                double arc = panel.innerSection().arcLength(SurfaceSide.UPPER)
                        * (panel.innerChordMm() + t * (panel.outerChordMm() - panel.innerChordMm()));
                assertThat(skin.arcLengthMm(t)).isCloseTo(arc, within(1e-9 * arc));
                assertThat(flatCurve(skin, t, arc)).isCloseTo(arc, within(1e-7 * arc));
            }
        }
    }

    private static double flatCurve(FlatSkin skin, double t, double arc) {
        int n = 4000;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += skin.toFlatByArc(t, arc * i / n).distanceTo(skin.toFlatByArc(t, arc * (i + 1) / n));
        }
        return sum;
    }

    @Test
    void areaIsPreserved() {
        for (WingPanel panel : developables()) {
            FlatSkin skin = Unroller.unroll(panel, SurfaceSide.LOWER);
            double truth = PanelSpace.area(panel, SurfaceSide.LOWER, 400);
            assertThat(PanelSpace.flatArea(skin, 1000)).isCloseTo(truth, within(1e-6 * truth));
        }
    }

    @Test
    void bothSidesOfASymmetricSectionGiveOneSheet() {
        for (WingPanel panel : developables()) {
            FlatSkin upper = Unroller.unroll(panel, SurfaceSide.UPPER);
            FlatSkin lower = Unroller.unroll(panel, SurfaceSide.LOWER);
            for (double x : new double[] {0, 0.002, 0.4, 1}) {
                assertThat(lower.toFlat(0.3, x).distanceTo(upper.toFlat(0.3, x)))
                        .isLessThan(1e-10);
            }
        }
    }

    @Test
    void originAndLeadingEdgeLieAsStated() {
        for (WingPanel panel : developables()) {
            FlatSkin skin = Unroller.unroll(panel, SurfaceSide.UPPER);
            double length = Math.hypot(panel.spanMm(), panel.outerLeadingEdgeMm() - panel.innerLeadingEdgeMm());
            assertThat(skin.toFlat(0, 0)).isEqualTo(Point2.ORIGIN);
            assertThat(skin.toFlat(1, 0).x()).isZero();
            assertThat(skin.toFlat(1, 0).y()).isCloseTo(length, within(1e-9));
            assertThat(skin.toFlat(0.5, 0.3).x()).isPositive();
        }
    }

    @Test
    void stationAgreesWithItsNeighbours() {
        for (WingPanel panel : developables()) {
            StationAssertions.assertConsistent(panel, Unroller.unroll(panel, SurfaceSide.UPPER), SurfaceSide.UPPER);
            StationAssertions.assertConsistent(panel, Unroller.unroll(panel, SurfaceSide.LOWER), SurfaceSide.LOWER);
        }
    }

    private static List<WingPanel> developables() {
        return List.of(
                PanelSpace.panel(SPAN, 1000, 1000, 0, ShapedSections.circle()),
                PanelSpace.panel(SPAN, 1300, 1300, -500, ShapedSections.parabola(0.008)),
                PanelSpace.panel(SPAN, 1500, 800, 120, ShapedSections.parabola(0.008)),
                PanelSpace.panel(900, 700, 1250, 400, ShapedSections.circle()),
                PanelSpace.panel(SPAN, 1500, 900, 700, ShapedSections.plate()));
    }
}
