package org.vanewright.engineering.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.placement.Arrangement;
import org.vanewright.engineering.placement.ChordPosition;
import org.vanewright.engineering.placement.TestWings;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.engineering.solid.MeshCheck;
import org.vanewright.engineering.solid.SolidLabel;
import org.vanewright.engineering.solid.StlWriter;
import org.vanewright.engineering.wing.WingPanel;
import org.vanewright.engineering.wing.WingShape;
import org.vanewright.testing.Tools;

/** Every gauge is one closed solid, and lies on the wing as it says. */
class GaugeSolidTest {
    private static final SolidLabel LABEL = new SolidLabel("Gauge", "Gauge", 1, "00");

    @Test
    void solidsAreClosedOrientedAndOnePieceOnRandomWings(@TempDir Path folder) {
        Random random = new Random(61);
        int solids = 0;
        for (int i = 0; i < 10; i++) {
            GaugeCase given = GaugeCase.random(random);
            RowGauges row = given.gauges(i % 2 == 0 ? Wing.LEFT : Wing.RIGHT);
            for (Gauge gauge : row.gauges().stream().limit(1).toList()) {
                Mesh mesh = given.solid(row, gauge);
                MeshCheck check = MeshCheck.of(mesh);
                assertThat(check.isSound()).as("%s %s", check, gauge).isTrue();
                assertThat(check.shellEulerCharacteristics()).as("one piece").hasSize(1);
                assertThat(MeshCheck.of(GaugeSolid.forPicture(given.wing(), given.row(), row, gauge))
                                .isSound())
                        .isTrue();
                admesh(folder, GaugeSolid.forPrinting(mesh), check.signedVolumeMm3());
                solids++;
            }
        }
        assertThat(solids).as("the seeds really made gauges").isGreaterThan(8);
    }

    @Test
    void aTwistedWingOfTwoSectionsHasGaugesToo() {
        WingShape wing = new WingShape(
                List.of(new WingPanel(
                        500, 3500, 1300, 1000, 0, 60, Sections.naca("2412"), Sections.naca("0010"), -2.5)),
                List.of());
        GaugeCase given = GaugeCase.of(wing, TestWings.with(TestWings.row(0, 700, 1300), d -> {
            d.position = new ChordPosition.DistanceAlongSkin(100);
        }));
        RowGauges row = given.gauges(Wing.RIGHT);
        assertThat(row.gauges()).isNotEmpty();
        Gauge gauge = row.gauges().get(0);
        assertThat(gauge.fit().within(given.settings())).isTrue();
        assertThat(MeshCheck.of(given.solid(row, gauge)).isSound()).isTrue();
    }

    private static void admesh(Path folder, Mesh mesh, double volumeMm3) {
        Path stl = Tools.file(folder, "gauge.stl", StlWriter.write(mesh, LABEL));
        String report = Tools.run("admesh", stl.toString()).replaceAll("\\s+", " ");
        for (String nothing : List.of(
                "Degenerate facets : 0",
                "Edges fixed : 0",
                "Facets removed : 0",
                "Facets added : 0",
                "Facets reversed : 0",
                "Backwards edges : 0",
                "Total disconnected facets : 0")) {
            assertThat(report.replaceAll(" ?: ?", " : ")).contains(nothing);
        }
        assertThat(report.replaceAll(" ?: ?", " : ")).contains("Number of parts : 1");
        assertThat(volumeMm3).isPositive();
    }

    @Test
    void theShellLiesOnTheTrueSectionOverItsWholeRange() {
        Random random = new Random(62);
        int measured = 0;
        for (int i = 0; i < 10; i++) {
            GaugeCase given = GaugeCase.random(random);
            RowGauges row = given.gauges(Wing.RIGHT);
            for (Gauge gauge : row.gauges().stream().limit(1).toList()) {
                Mesh mesh = GaugeSolid.forPicture(given.wing(), given.row(), row, gauge);
                for (double station : new double[] {gauge.fromMm(), gauge.cutForMm(), gauge.toMm()}) {
                    measured += measure(given, gauge, mesh, station);
                }
            }
        }
        assertThat(measured).isGreaterThan(300);
    }

    /** Ten points of the inner surface on either face, the shell moved to where it says it fits best. */
    private static int measure(GaugeCase given, Gauge gauge, Mesh mesh, double station) {
        WingPanel panel = given.wing().panels().get(gauge.panel());
        Fit fit = FitProbe.of(
                new GaugeFrame(given.wing(), given.row().plan(), given.settings()),
                gauge.panel(),
                gauge.cutForMm(),
                gauge.slots(),
                station);
        Point2 cutEdge = new TrueSection(panel, gauge.cutForMm()).leadingEdge();
        Point2 edge = new TrueSection(panel, station).leadingEdge();
        int measured = 0;
        for (double v : new double[] {-gauge.inboardMm(), gauge.outboardMm()}) {
            TrueSection cut = new TrueSection(panel, gauge.cutForMm() + v);
            TrueSection here = new TrueSection(panel, station + v);
            List<Point2> inner = inner(mesh, v, cutEdge, cut, given.settings().clearanceMm());
            assertThat(inner).as("inner surface at v = %s", v).hasSizeGreaterThan(10);
            for (int k = 0; k < 10; k++) {
                Point2 p = inner.get(k * (inner.size() - 1) / 9).minus(cutEdge).rotated(fit.turnRad());
                double gap = here.gapMm(p.plus(edge).plus(new Point2(fit.forwardMm(), fit.upMm())));
                double clearance = given.settings().clearanceMm();
                assertThat(gap)
                        .as("gap at station %s, v %s, point %s of %s", station, v, p, gauge)
                        .isBetween(
                                clearance - given.settings().pressMm() - 0.02,
                                clearance + given.settings().gapMm() + 0.02);
                measured++;
            }
        }
        return measured;
    }

    private static List<Point2> inner(Mesh mesh, double v, Point2 cutEdge, TrueSection cut, double clearance) {
        List<Point2> found = new ArrayList<>();
        for (int i = 0; i < mesh.vertexCount(); i++) {
            Point2 p = cutEdge.plus(new Point2(mesh.x(i), mesh.z(i)));
            if (Math.abs(mesh.y(i) - v) < 1e-3 && Math.abs(cut.gapMm(p) - clearance) < 0.02) {
                found.add(p);
            }
        }
        found.sort(Comparator.comparingDouble(Point2::x));
        return found;
    }

    @Test
    void theSlotHoldsTheBaseAtItsPlaceAndAngle() {
        GaugeCase given = GaugeCase.of(TestWings.constantChord(), TestWings.with(TestWings.row(0, 900, 2100), d -> {
            d.position = new ChordPosition.DistanceAlongSkin(110);
        }));
        RowGauges row = given.gauges(Wing.RIGHT);
        assertThat(row.gauges()).as("constant chord needs one").hasSize(1);
        Gauge gauge = row.gauges().get(0);
        assertThat(gauge.slots()).hasSize(1);
        assertThat(gauge.slots().get(0).arcMm()).isCloseTo(110, within(1e-9));
        assertThat(gauge.slots().get(0).angleDeg()).isEqualTo(15);
        // The base's own outline, grown by the clearance, touches the slot in front and on the side that faces it:
        // corners of a 26 by 12 mm base at 15 degrees toe-in, its rear turned outboard.
        GaugeFrame frame = new GaugeFrame(given.wing(), given.row().plan(), given.settings());
        GaugeOutline outline = new GaugeOutline(frame, gauge);
        double c = 0.2;
        Point2 frontInboard = new Point2(-13 - c, -6 - c).rotated(Math.toRadians(15));
        Point2 frontOutboard = new Point2(-13 - c, 6 + c).rotated(Math.toRadians(15));
        assertThat(outline.slotFrontMm()).isCloseTo(110 + Math.min(frontInboard.x(), frontOutboard.x()), within(0.01));
        for (Point2 corner : List.of(frontInboard, frontOutboard)) {
            double nearest = Arrays.stream(outline.body().getCoordinates())
                    .mapToDouble(q -> Math.hypot(q.x - 110 - corner.x(), q.y - corner.y()))
                    .min()
                    .orElseThrow();
            assertThat(nearest).as("corner %s", corner).isLessThan(0.02);
        }
        assertThat(gauge.inboardMm())
                .as("the face bears on the outermost edge of the base one pitch inboard")
                .isCloseTo(60 - new Point2(13, 6).rotated(Math.toRadians(15)).y(), within(1e-9));
    }

    @Test
    void theLeftGaugeIsTheMirrorImageOfTheRightOne() {
        for (SurfaceSide side : SurfaceSide.values()) {
            GaugeCase given = GaugeCase.of(TestWings.tapered(), TestWings.with(TestWings.row(0, 1600, 2400), d -> {
                d.side = side;
                d.arrangement = Arrangement.COMMON_FLOW_UP;
                d.pairGapMm = 30;
                d.pitchMm = 90;
            }));
            RowGauges left = given.gauges(Wing.LEFT);
            RowGauges right = given.gauges(Wing.RIGHT);
            assertThat(left.gauges()).hasSameSizeAs(right.gauges());
            Mesh l = GaugeSolid.forPicture(
                    given.wing(), given.row(), left, left.gauges().get(0));
            Mesh r = GaugeSolid.forPicture(
                    given.wing(), given.row(), right, right.gauges().get(0));
            assertThat(points(l, -1)).containsExactlyInAnyOrderElementsOf(points(r, 1));
            assertThat(MeshCheck.of(l).signedVolumeMm3())
                    .isCloseTo(MeshCheck.of(r).signedVolumeMm3(), within(1e-6));
        }
    }

    private static List<String> points(Mesh mesh, int sign) {
        List<String> points = new ArrayList<>();
        for (int v = 0; v < mesh.vertexCount(); v++) {
            points.add(String.format(Locale.ROOT, "%.6f %.6f %.6f", mesh.x(v), sign * mesh.y(v) + 0.0, mesh.z(v)));
        }
        return points;
    }
}
