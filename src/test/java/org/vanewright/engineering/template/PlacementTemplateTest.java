package org.vanewright.engineering.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.placement.Arrangement;
import org.vanewright.engineering.placement.Placement;
import org.vanewright.engineering.placement.Placer;
import org.vanewright.engineering.placement.RowPlan;
import org.vanewright.engineering.placement.Station;
import org.vanewright.engineering.placement.TestWings;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.wing.WingPanel;
import org.vanewright.engineering.wing.WingShape;

class PlacementTemplateTest {
    private static final TemplateLabel LABEL =
            new TemplateLabel("Test layout", 3, "0123456789abcdef0123", "Wing", true);

    private static TemplateRow leadingEdge(RowPlan row) {
        return new TemplateRow(row, "Test vane", Register.LEADING_EDGE, 0);
    }

    private static List<TemplatePiece> pieces(WingShape wing, TemplateRow row, Wing side) {
        Placement placement = Placer.place(wing, List.of(row.plan()));
        return new PlacementTemplate(wing, placement, LABEL).pieces(List.of(row), side);
    }

    private static List<Shape.Polyline> cuts(TemplatePiece piece) {
        return piece.drawing().shapes().stream()
                .filter(s -> s.layer() == Layer.CUT)
                .map(Shape.Polyline.class::cast)
                .toList();
    }

    private static List<Shape.Text> texts(TemplatePiece piece) {
        return piece.drawing().shapes().stream()
                .filter(Shape.Text.class::isInstance)
                .map(Shape.Text.class::cast)
                .toList();
    }

    private static Point2 middle(List<Point2> outline) {
        return outline.stream().reduce(Point2.ORIGIN, Point2::plus).times(1.0 / outline.size());
    }

    @Test
    void onACylinderEachBaseLiesAtItsSpanStationAndArcDistance() {
        WingShape wing = TestWings.constantChord();
        RowPlan row = TestWings.row(0, 800, 1600);
        List<Station> stations = Placer.place(wing, List.of(row)).on(Wing.RIGHT);
        List<Shape.Polyline> cuts =
                cuts(pieces(wing, leadingEdge(row), Wing.RIGHT).get(0));
        assertThat(cuts).hasSize(stations.size() + 1);
        for (int i = 0; i < stations.size(); i++) {
            Point2 centre = middle(cuts.get(i + 1).points());
            assertThat(centre.x()).isCloseTo(stations.get(i).stationMm() - 600, within(1e-6));
            assertThat(centre.y()).isCloseTo(-stations.get(i).arcMm(), within(1e-6));
        }
    }

    @Test
    void toeInTurnsTheFrontOfTheBaseInboard() {
        Shape.Polyline base = cuts(pieces(
                                TestWings.constantChord(), leadingEdge(TestWings.row(0, 800, 1600)), Wing.RIGHT)
                        .get(0))
                .get(1);
        Point2 front = base.points().get(0).plus(base.points().get(3)).times(0.5);
        Point2 axis = front.minus(middle(base.points()));
        assertThat(Math.toDegrees(Math.atan2(-axis.x(), axis.y())))
                .as("forward is up, inboard is left on the right wing's upper side")
                .isCloseTo(15, within(1e-9));
    }

    @Test
    void leftAndRightAreMirrorImagesWithReadableText() {
        for (WingShape wing : List.of(TestWings.constantChord(), TestWings.tapered())) {
            TemplateRow row = leadingEdge(TestWings.row(0, 1600, 2600));
            TemplatePiece left = pieces(wing, row, Wing.LEFT).get(0);
            TemplatePiece right = pieces(wing, row, Wing.RIGHT).get(0);
            List<Shape.Polyline> leftCuts = cuts(left);
            List<Shape.Polyline> rightCuts = cuts(right);
            assertThat(leftCuts).hasSameSizeAs(rightCuts);
            for (int i = 1; i < leftCuts.size(); i++) {
                Polygon mirrored = polygon(leftCuts.get(i).points().stream()
                        .map(p -> new Point2(-p.x(), p.y()))
                        .toList());
                Polygon other = polygon(rightCuts.get(i).points());
                assertThat(mirrored.symDifference(other).getArea()).isLessThan(1e-6);
            }
            assertThat(texts(left))
                    .hasSameSizeAs(texts(right))
                    .allSatisfy(t -> assertThat(Math.abs(t.rotationDeg())).isLessThanOrEqualTo(100));
            assertThat(texts(left).stream().map(Shape.Text::text))
                    .anyMatch(t -> t.startsWith("LEFT WING · UPPER SIDE"));
            assertThat(texts(right).stream().map(Shape.Text::text))
                    .anyMatch(t -> t.startsWith("RIGHT WING · UPPER SIDE"));
        }
    }

    @Test
    void everyBaseLiesInsideTheOutlineAndTheFoldOnTheLeadingEdge() {
        TemplatePiece piece = pieces(TestWings.tapered(), leadingEdge(TestWings.row(0, 1600, 3900)), Wing.LEFT)
                .get(0);
        List<Shape.Polyline> cuts = cuts(piece);
        Polygon outline = polygon(cuts.get(0).points());
        assertThat(outline.isValid()).isTrue();
        cuts.stream()
                .skip(1)
                .forEach(c -> assertThat(outline.contains(polygon(c.points()))).isTrue());
        Shape.Polyline fold = piece.drawing().shapes().stream()
                .filter(s -> s.layer() == Layer.FOLD)
                .map(Shape.Polyline.class::cast)
                .findFirst()
                .orElseThrow();
        assertThat(fold.points()).allSatisfy(p -> assertThat(p.y()).isCloseTo(0, within(1e-9)));
        assertThat(outline.getEnvelopeInternal().getMaxY()).isCloseTo(PieceOutline.FLAP_MM, within(1e-9));
    }

    @Test
    void thePieceSaysWhatItIs() {
        TemplatePiece piece = pieces(TestWings.constantChord(), leadingEdge(TestWings.row(0, 800, 1600)), Wing.LEFT)
                .get(0);
        List<String> words = texts(piece).stream().map(Shape.Text::text).toList();
        assertThat(words)
                .contains("FORWARD", "INBOARD", "1", "14", "800", "1580")
                .anyMatch(t -> t.contains("Test layout · revision 3 · SHA-256 0123456789ab"))
                .anyMatch(t -> t.contains("inner end: span station"))
                .anyMatch(t -> t.contains("fold lies on the leading edge"));
        assertThat(piece.drawing().description()).contains("14 bases").contains("left wing");
    }

    @Test
    void aRowOverTwoPanelsMakesTwoPieces() {
        List<TemplatePiece> pieces = pieces(TestWings.tapered(), leadingEdge(TestWings.row(0, 1000, 2000)), Wing.LEFT);
        assertThat(pieces.stream().map(TemplatePiece::name)).containsExactly("L1-1", "L1-2");
        assertThat(pieces).allSatisfy(p -> assertThat(p.maximumStrain()).isZero());
    }

    @Test
    void theRearEdgeLiesOnTheTrailingEdgeWhenThatRegisters() {
        RowPlan row = TestWings.with(
                TestWings.row(0, 800, 1600),
                d -> d.position = new org.vanewright.engineering.placement.ChordPosition.FractionOfChord(0.85));
        TemplateRow rear = new TemplateRow(row, "Test vane", Register.TRAILING_EDGE, 0);
        Polygon outline =
                polygon(cuts(pieces(TestWings.constantChord(), rear, Wing.LEFT).get(0))
                        .get(0)
                        .points());
        double whole = 1200 * TestWings.NACA_2412.arcLength(SurfaceSide.UPPER);
        assertThat(-outline.getEnvelopeInternal().getMinY()).isCloseTo(whole, within(1e-5));
    }

    @Test
    void aSparLineMayNotRunThroughTheBases() {
        RowPlan row = TestWings.row(0, 800, 1600);
        TemplateRow clear = new TemplateRow(row, "Test vane", Register.SPAR_LINE, 0.25);
        double sparArc = 1200 * TestWings.NACA_2412.atX(SurfaceSide.UPPER, 0.25).arcLength();
        Polygon outline =
                polygon(cuts(pieces(TestWings.constantChord(), clear, Wing.LEFT).get(0))
                        .get(0)
                        .points());
        assertThat(-outline.getEnvelopeInternal().getMinY()).isCloseTo(sparArc, within(1e-6));
        TemplateRow through = new TemplateRow(row, "Test vane", Register.SPAR_LINE, 0.085);
        assertThatThrownBy(() -> pieces(TestWings.constantChord(), through, Wing.LEFT))
                .isInstanceOfSatisfying(
                        InvalidInputException.class,
                        e -> assertThat(e.problems())
                                .singleElement()
                                .satisfies(p -> assertThat(p.field()).isEqualTo("rows[0].registerChordFraction")));
    }

    @Test
    void aTwistedPanelCarriesItsStrain() {
        WingShape wing = new WingShape(
                List.of(new WingPanel(500, 2500, 1400, 900, 0, 60, TestWings.NACA_2412, Sections.naca("2410"), -3)),
                List.of());
        TemplatePiece piece = pieces(wing, leadingEdge(TestWings.row(0, 800, 2300)), Wing.RIGHT)
                .get(0);
        assertThat(piece.maximumStrain()).isPositive().isLessThan(0.02);
        assertThat(texts(piece).stream().map(Shape.Text::text)).anyMatch(t -> t.contains("strain up to"));
    }

    @Test
    void constantChordRowsGetAStripWhosePositionsStandAtThePitch() {
        WingShape wing = TestWings.constantChord();
        RowPlan row = TestWings.with(TestWings.row(0, 800, 2000), d -> {
            d.arrangement = Arrangement.COMMON_FLOW_DOWN;
            d.pairGapMm = 25;
            d.pitchMm = 80;
        });
        PlacementTemplate template = new PlacementTemplate(wing, Placer.place(wing, List.of(row)), LABEL);
        TemplatePiece strip =
                template.strips(List.of(leadingEdge(row)), Wing.LEFT).get(0);
        List<Shape.Polyline> cuts = cuts(strip);
        assertThat(cuts).hasSize(1 + 3 * 2);
        double pitch =
                middle(cuts.get(1).points()).distanceTo(middle(cuts.get(3).points()));
        double gap = middle(cuts.get(1).points()).distanceTo(middle(cuts.get(2).points()));
        assertThat(pitch).isCloseTo(80, within(1e-9));
        assertThat(gap).isCloseTo(25, within(1e-9));
        assertThat(strip.drawing().shapes().stream()
                        .filter(s -> s instanceof Shape.Polyline p
                                && p.fill() == Fill.SOLID
                                && p.points().size() == 3)
                        .count())
                .as("forward ticks, arrows and two step marks")
                .isEqualTo(6 + 2 + 2);
    }

    @Test
    void aLayoutOfVeryManyPiecesIsRefusedBeforeAnyIsDrawn() {
        List<WingPanel> panels = new ArrayList<>();
        for (int i = 0; i < PlacementTemplate.MAX_PIECES + 1; i++) {
            double from = 500 + 60 * i;
            panels.add(new WingPanel(from, from + 60, 1200, 1200, 0, 0, TestWings.NACA_2412, TestWings.NACA_2412, 0));
        }
        WingShape wing = new WingShape(panels, List.of());
        TemplateRow row = leadingEdge(TestWings.row(0, 530, 530 + 60 * PlacementTemplate.MAX_PIECES));
        assertThatThrownBy(() -> pieces(wing, row, Wing.LEFT))
                .isInstanceOfSatisfying(
                        InvalidInputException.class,
                        e -> assertThat(e.problems())
                                .singleElement()
                                .satisfies(p -> assertThat(p.field()).isEqualTo("rows")));
    }

    @Test
    void taperedRowsGetNoStrip() {
        WingShape wing = TestWings.tapered();
        RowPlan row = TestWings.row(0, 1600, 2600);
        assertThat(new PlacementTemplate(wing, Placer.place(wing, List.of(row)), LABEL)
                        .strips(List.of(leadingEdge(row)), Wing.LEFT))
                .isEmpty();
    }

    private static Polygon polygon(List<Point2> points) {
        Coordinate[] ring = new Coordinate[points.size() + 1];
        for (int i = 0; i < ring.length; i++) {
            Point2 p = points.get(i % points.size());
            ring[i] = new Coordinate(p.x(), p.y());
        }
        return new GeometryFactory().createPolygon(ring);
    }
}
