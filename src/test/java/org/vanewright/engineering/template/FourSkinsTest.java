package org.vanewright.engineering.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.placement.ChordPosition;
import org.vanewright.engineering.placement.ConflictPolicy;
import org.vanewright.engineering.placement.DeviceFootprint;
import org.vanewright.engineering.placement.Placement;
import org.vanewright.engineering.placement.Placer;
import org.vanewright.engineering.placement.RowPlan;
import org.vanewright.engineering.placement.Station;
import org.vanewright.engineering.placement.TestWings;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.wing.KeepOut;
import org.vanewright.engineering.wing.WingPanel;
import org.vanewright.engineering.wing.WingShape;

/** Which way things point on the templates of both sides of both wings, and at the ends of the skin. */
class FourSkinsTest {
    private static final TemplateLabel LABEL = new TemplateLabel("Test layout", 1, "0".repeat(64), "Wing", true);

    /** A blunt rear end and a pointed front, so that front and rear can be told apart. */
    private static final DeviceFootprint ARROW =
            new DeviceFootprint(List.of(new Point2(-15, 0), new Point2(15, -6), new Point2(15, 6)), List.of(), false);

    private static TemplatePiece piece(WingShape wing, RowPlan plan, Wing hand) {
        TemplateRow row = new TemplateRow(plan, "Test vane", Register.LEADING_EDGE, 0);
        Placement placement = Placer.place(wing, List.of(plan));
        return new PlacementTemplate(wing, placement, LABEL)
                .pieces(List.of(row), hand)
                .get(0);
    }

    private static List<Point2> base(TemplatePiece piece, int number) {
        return piece.drawing().shapes().stream()
                .filter(s -> s.layer() == Layer.CUT)
                .map(Shape.Polyline.class::cast)
                .toList()
                .get(number)
                .points();
    }

    private static Shape.Text text(TemplatePiece piece, String start) {
        return piece.drawing().shapes().stream()
                .filter(Shape.Text.class::isInstance)
                .map(Shape.Text.class::cast)
                .filter(t -> t.text().startsWith(start))
                .findFirst()
                .orElseThrow();
    }

    /** The arrowhead beside a word: from the middle of its rear edge to its tip. */
    private static Point2 arrow(TemplatePiece piece, String word, ToDoubleFunction<Point2> away) {
        Point2 at = text(piece, word).at();
        List<Point2> head = piece.drawing().shapes().stream()
                .filter(Shape.Polyline.class::isInstance)
                .map(Shape.Polyline.class::cast)
                .filter(s -> s.layer() == Layer.MARK && s.closed() && s.points().size() == 3)
                .map(Shape.Polyline::points)
                .filter(p -> p.get(0).distanceTo(at) < 20)
                .min(Comparator.comparingDouble(
                        p -> Math.abs(away.applyAsDouble(p.get(0).minus(at)))))
                .orElseThrow();
        return head.get(0).minus(head.get(1).plus(head.get(2)).times(0.5));
    }

    @ParameterizedTest
    @CsvSource({"LEFT,UPPER,-1", "LEFT,LOWER,1", "RIGHT,UPPER,1", "RIGHT,LOWER,-1"})
    void seenFromOutsideWithTheLeadingEdgeUp(Wing hand, SurfaceSide side, int outboard) {
        RowPlan plan = TestWings.with(TestWings.row(0, 800, 1600), d -> {
            d.side = side;
            d.footprint = ARROW;
        });
        TemplatePiece piece = piece(TestWings.constantChord(), plan, hand);
        double inner = text(piece, "inner end").at().x();
        double outer = text(piece, "outer end").at().x();
        assertThat(Math.signum(outer - inner)).as("outboard on the page").isEqualTo(outboard);
        assertThat(arrow(piece, "FORWARD", Point2::x).y()).as("forward is up").isGreaterThan(3);
        assertThat(arrow(piece, "INBOARD", p -> p.y() - 5).x() * outboard)
                .as("inboard points to the inner end")
                .isLessThan(-3);
        List<Point2> base = base(piece, 1);
        Point2 rear = base.get(1).plus(base.get(2)).times(0.5);
        Point2 front = base.get(0);
        assertThat(front.y()).as("the front of the base is forward").isGreaterThan(rear.y() + 25);
        assertThat((front.x() - rear.x()) * outboard)
                .as("toe-in turns the front inboard")
                .isCloseTo(-30 * Math.sin(Math.toRadians(15)), within(1e-6));
    }

    /**
     * The upper skin of a cambered section reaches ahead of its leading edge. There many places share chord fraction 0,
     * and only the distance along the skin tells them apart.
     */
    @Test
    void aBaseCloseBehindTheLeadingEdgeLiesAtItsArcDistance() {
        Section section = Sections.naca("23012");
        WingShape wing =
                new WingShape(List.of(new WingPanel(0, 2000, 1600, 1600, 0, 0, section, section, 0)), List.of());
        RowPlan plan = TestWings.with(TestWings.row(0, 500, 900), d -> {
            d.footprint = new DeviceFootprint(TestWings.rectangle(16, 8), List.of(), false);
            d.position = new ChordPosition.DistanceAlongSkin(12);
            d.angleDeg = 0;
        });
        List<Point2> base = base(piece(wing, plan, Wing.RIGHT), 1);
        double middle = base.stream().mapToDouble(Point2::y).average().orElseThrow();
        assertThat(middle).isCloseTo(-12, within(1e-6));
    }

    @Test
    void aRowFartherBackThanATwistedTipIsLongStillHasItsTemplate() {
        Section inner = Sections.naca("2412");
        Section outer = Sections.naca("4415");
        WingShape wing = new WingShape(List.of(new WingPanel(0, 3000, 1500, 800, 0, 300, inner, outer, 3)), List.of());
        RowPlan plan =
                TestWings.with(TestWings.row(0, 200, 1400), d -> d.position = new ChordPosition.DistanceAlongSkin(900));
        List<Station> stations = Placer.place(wing, List.of(plan)).on(Wing.RIGHT);
        TemplatePiece piece = piece(wing, plan, Wing.RIGHT);
        assertThat(piece.maximumStrain()).isPositive().isLessThan(0.02);
        List<Point2> first = base(piece, 1);
        List<Point2> last = base(piece, stations.size());
        Point2 a = first.get(0).plus(first.get(2)).times(0.5);
        Point2 b = last.get(0).plus(last.get(2)).times(0.5);
        double run =
                stations.get(stations.size() - 1).stationMm() - stations.get(0).stationMm();
        assertThat(a.distanceTo(b)).as("along the swept row").isBetween(run, 1.03 * run);
    }

    @Test
    void theCloseUpCallsAPitchOnlyWhatIsOne() {
        WingShape wing = TestWings.constantChord(new KeepOut(850, 870, true, true, "fuel vent"));
        RowPlan plan = TestWings.with(TestWings.row(0, 800, 1100), d -> d.onConflict = ConflictPolicy.LEAVE_OUT);
        TemplateRow row = new TemplateRow(plan, "Test vane", Register.LEADING_EDGE, 0);
        List<Shape> shapes =
                PitchDrawing.of(wing, Placer.place(wing, List.of(plan)), row).shapes();
        List<Point2> bases = shapes.stream()
                .filter(Shape.Polyline.class::isInstance)
                .map(Shape.Polyline.class::cast)
                .filter(s -> s.closed() && s.points().size() == 4 && s.fill() == Fill.TINT)
                .map(s -> s.points().get(0).plus(s.points().get(2)).times(0.5))
                .toList();
        assertThat(bases).hasSize(2);
        assertThat(bases.get(0).distanceTo(bases.get(1))).isCloseTo(60, within(1e-6));
    }
}
