package org.vanewright.engineering.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.solid.DeviceDesign.BaseOutline;
import org.vanewright.engineering.solid.DeviceDesign.Pair;
import org.vanewright.engineering.solid.DeviceDesign.Planform;

/** Volumes against closed forms of elementary solid geometry; the plain piece is 8 × 20 × 1.2 on 30 × 16 × 1 mm. */
class SolidVolumeTest {
    private static final double VANE = 8 * 20 * 1.2;
    private static final double BASE = 30 * 16 * 1;
    /** 1e-9 relative. */
    private static final double EXACT_PERCENT = 1e-7;

    @Test
    void aPlainVaneOnAPlainBaseIsTwoBoxes() {
        for (Double inset : new Double[] {null, 0.0, 2.5}) {
            assertThat(volume(d -> d.inset = inset)).isCloseTo(VANE + BASE, withinPercentage(EXACT_PERCENT));
        }
    }

    @Test
    void aFootAddsTwoTriangularPrisms() {
        double prisms = 2 * (1.4 * 1.4 / Math.tan(Math.toRadians(30)) / 2) * 8;
        assertThat(volume(d -> d.footWidth = 4.0)).isCloseTo(VANE + BASE + prisms, withinPercentage(EXACT_PERCENT));
    }

    @Test
    void aTriangularVaneIsATrapeziumWithTheShortestTip() {
        double side = 8 * (20 + VaneSection.SHORTEST_SIDE) / 2;
        assertThat(volume(d -> d.planform = Planform.TRIANGULAR))
                .isCloseTo(side * 1.2 + BASE, withinPercentage(EXACT_PERCENT));
    }

    @Test
    void aBevelTakesAPrismAlongEachEdge() {
        // frustum of height b between the full rectangle and the one inset by b: Simpson's rule is exact
        double b = 0.4;
        double middle = (30 - b) * (16 - b);
        double frustum = b / 6 * (30 * 16 + 4 * middle + (30 - 2 * b) * (16 - 2 * b));
        double expected = VANE + BASE * 0.6 + frustum;
        assertThat(volume(d -> {
                    d.bevel = b;
                    d.inset = 3.0;
                }))
                .isCloseTo(expected, withinPercentage(EXACT_PERCENT));
    }

    @Test
    void theFilletConvergesToItsClosedForm() {
        double r = 1.5;
        // offset d(z) = r − √(r² − (r − z)²) round a rectangle, mitred: ∫ 2(L + t) d + 4 d² dz
        double fillet = 2 * (20 + 1.2) * r * r * (1 - Math.PI / 4) + 4 * r * r * r * (5.0 / 3 - Math.PI / 2);
        converges(VANE + BASE + fillet, d -> {
            d.fillet = r;
            d.inset = 4.0;
        });
    }

    @Test
    void roundedCornersConverge() {
        converges(VANE + BASE - (4 - Math.PI) * 25, d -> {
            d.corner = 5.0;
            d.inset = 5.0;
        });
    }

    @Test
    void ellipseEndsConverge() {
        double a = 12;
        double area = (40 - 2 * a) * 16 + Math.PI * a * 8;
        converges(VANE + area, d -> {
            d.outline = BaseOutline.ELLIPSE_ENDED;
            d.baseLength = 40.0;
            d.inset = 8.0;
        });
    }

    @Test
    void aBaseOnABulgingSkinFillsTheSpaceUnderIt() {
        double r = 60;
        double underCircle = 15 * Math.sqrt(r * r - 225) + r * r * Math.asin(15 / r);
        converges(VANE + BASE + 16 * (r * 30 - underCircle), d -> d.underside = r);
    }

    @Test
    void aBaseInAHollowIsThinnestAtItsEnds() {
        double r = 60;
        double sag = r - Math.sqrt(r * r - 225);
        double underCircle = 15 * Math.sqrt(r * r - 225) + r * r * Math.asin(15 / r);
        converges(VANE + BASE + 16 * 30 * sag - 16 * (r * 30 - underCircle), d -> d.underside = -r);
    }

    @Test
    void theOgiveIsACircularSegmentAheadOfAShortTip() {
        double run = 20 - VaneSection.SHORTEST_SIDE;
        double r = (64 + run * run) / 16;
        double side = (run * (r - 8) + r * r * Math.asin(run / r)) / 2 - (r - 8) * run + 8 * VaneSection.SHORTEST_SIDE;
        converges(side * 1.2 + BASE, d -> d.planform = Planform.OGIVAL);
    }

    @Test
    void theRoundedTipCornerOfASweptTrapeziumIsTangentToBothEdges() {
        // between the slanted edge and the tip the corner angle is φ: lost area ρ² (cot(φ/2) − (π − φ)/2)
        double rho = 3;
        double phi = Math.PI - Math.atan2(8, 10);
        double lost = rho * rho * (1 / Math.tan(phi / 2) - (Math.PI - phi) / 2);
        converges((8 * 15 - lost) * 1.2 + BASE, d -> {
            d.planform = Planform.SWEPT_TRAPEZIUM;
            d.tipRadius = rho;
        });
    }

    @Test
    void aPairIsItsOwnMirrorImage() {
        DesignBuilder design = new DesignBuilder();
        design.pair = new Pair(15.0, 12.0);
        design.baseWidth = 30.0;
        design.fillet = 1.0;
        Mesh mesh = SolidBuilder.build(design.build());
        assertThat(mesh.low(1)).isEqualTo(-mesh.high(1));
        for (int v = 0; v < mesh.vertexCount(); v++) {
            assertThat(hasVertex(mesh, mesh.x(v), -mesh.y(v), mesh.z(v)))
                    .as("mirror image of vertex %d", v)
                    .isTrue();
        }
        assertThat(MassProperties.of(mesh, 1040).centreOfMassMm().get(1)).isCloseTo(0, within(1e-12));
    }

    @Test
    void positiveToeInBringsTheLeadingEdgesTogether() {
        DesignBuilder design = new DesignBuilder();
        design.baseWidth = 30.0;
        design.pair = new Pair(15.0, 12.0);
        assertThat(gapAtTip(design, true)).isCloseTo(12 - 20 * Math.sin(Math.toRadians(15)), within(1.3));
        assertThat(gapAtTip(design, false)).isCloseTo(12 + 20 * Math.sin(Math.toRadians(15)), within(1.3));
    }

    /** Distance between the vanes' tips at their foremost or rearmost points. */
    private static double gapAtTip(DesignBuilder design, boolean front) {
        Mesh mesh = SolidBuilder.build(design.build());
        double best = front ? 1e9 : -1e9;
        double y = 0;
        for (int v = 0; v < mesh.vertexCount(); v++) {
            boolean further = front ? mesh.x(v) < best : mesh.x(v) > best;
            if (mesh.z(v) == mesh.high(2) && further) {
                best = mesh.x(v);
                y = mesh.y(v);
            }
        }
        return 2 * Math.abs(y);
    }

    private static boolean hasVertex(Mesh mesh, double x, double y, double z) {
        for (int v = 0; v < mesh.vertexCount(); v++) {
            if (mesh.x(v) == x && mesh.y(v) == y && mesh.z(v) == z) {
                return true;
            }
        }
        return false;
    }

    /** The error is what the tolerance allows over the whole surface, and shrinks with it. */
    private static void converges(double expected, Consumer<DesignBuilder> change) {
        double before = Double.POSITIVE_INFINITY;
        for (double tolerance : new double[] {0.1, 0.02, 0.004, 0.002}) {
            Mesh mesh = mesh(change.andThen(d -> d.tolerance = tolerance));
            MassProperties properties = MassProperties.of(mesh, 1040);
            double error = Math.abs(properties.volumeMm3() - expected);
            assertThat(error).isLessThan(properties.areaMm2() * tolerance).isLessThan(before * 0.9);
            before = error;
        }
        assertThat(before).isLessThan(expected * 1e-3);
    }

    private static double volume(Consumer<DesignBuilder> change) {
        return MassProperties.of(mesh(change), 1040).volumeMm3();
    }

    private static Mesh mesh(Consumer<DesignBuilder> change) {
        DesignBuilder design = new DesignBuilder();
        change.accept(design);
        return SolidBuilder.build(design.build());
    }
}
