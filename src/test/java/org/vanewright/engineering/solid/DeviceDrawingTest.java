package org.vanewright.engineering.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.solid.DeviceDesign.Pair;

class DeviceDrawingTest {
    @Test
    void theBaseOutlineIsTheSolidsOwn() {
        for (DeviceDesign design : new RandomDesigns(31).valid(40)) {
            Mesh mesh = SolidBuilder.build(design);
            List<Point2> outline = DeviceDrawing.baseOutline(design);
            for (Point2 p : outline) {
                assertThat(hasVertexAt(mesh, p)).as("%s of %s", p, design).isTrue();
            }
            assertThat(area(outline)).isPositive();
            assertThat(extent(outline, true)).isCloseTo(mesh.high(0) - mesh.low(0), within(1e-12));
            assertThat(extent(outline, false)).isCloseTo(mesh.high(1) - mesh.low(1), within(1e-12));
        }
    }

    @Test
    void thePlanShowsTheBaseAndThenEachVaneAtItsAngle() {
        DesignBuilder builder = new DesignBuilder();
        builder.pair = new Pair(20.0, 14.0);
        builder.baseWidth = 40.0;
        builder.fillet = 1.0;
        List<List<Point2>> plan = DeviceDrawing.planOutline(builder.build());
        assertThat(plan).hasSize(3);
        assertThat(plan.get(0)).isEqualTo(DeviceDrawing.baseOutline(builder.build()));
        assertThat(area(plan.get(1))).isCloseTo(20 * 1.2, within(1e-9));
        assertThat(area(plan.get(2))).isCloseTo(20 * 1.2, within(1e-9));
        Point2 side = plan.get(1).get(1).minus(plan.get(1).get(0));
        assertThat(Math.toDegrees(Math.atan2(side.y(), side.x()))).isCloseTo(20, within(1e-9));
    }

    @Test
    void theThreeViewFitsAnA4SheetAndCarriesItsDimensions() {
        for (DeviceDesign design : new RandomDesigns(8).valid(40)) {
            Drawing drawing = DeviceDrawing.threeView(design, "Trial vane");
            List<Point2> points = new ArrayList<>();
            for (Shape shape : drawing.shapes()) {
                if (shape instanceof Shape.Polyline line) {
                    points.addAll(line.points());
                }
            }
            assertThat(points)
                    .allSatisfy(p -> assertThat(p.x() + p.y()).as("%s", design).isFinite());
            // the frame, 10 mm inside an A4 sheet (ISO 216: 210 × 297 mm), holds everything
            assertThat(extent(points, true)).as("%s", design).isCloseTo(277, within(1e-9));
            assertThat(extent(points, false)).as("%s", design).isCloseTo(190, within(1e-9));
            Dimensions d = DesignRules.dimensions(design);
            assertThat(texts(drawing))
                    .contains(
                            "Trial vane",
                            "forward",
                            DimensionLines.figure(d.height()),
                            DimensionLines.figure(d.baseLength()),
                            DimensionLines.figure(d.baseWidth()),
                            DimensionLines.figure(d.baseThickness()));
            assertThat(drawing.description()).contains("Vane: ", "Base: ");
        }
    }

    @Test
    void figuresDropTrailingNoughtsOnly() {
        assertThat(DimensionLines.figure(20)).isEqualTo("20");
        assertThat(DimensionLines.figure(1.2)).isEqualTo("1.2");
        assertThat(DimensionLines.figure(0.254)).isEqualTo("0.25");
        assertThat(DimensionLines.figure(100)).isEqualTo("100");
    }

    private static List<String> texts(Drawing drawing) {
        List<String> texts = new ArrayList<>();
        for (Shape shape : drawing.shapes()) {
            if (shape instanceof Shape.Text text) {
                texts.add(text.text());
            }
        }
        return texts;
    }

    private static boolean hasVertexAt(Mesh mesh, Point2 p) {
        for (int v = 0; v < mesh.vertexCount(); v++) {
            if (mesh.x(v) == p.x() && mesh.y(v) == p.y()) {
                return true;
            }
        }
        return false;
    }

    private static double extent(List<Point2> points, boolean alongX) {
        double[] sorted = points.stream()
                .mapToDouble(p -> alongX ? p.x() : p.y())
                .sorted()
                .toArray();
        return sorted[sorted.length - 1] - sorted[0];
    }

    private static double area(List<Point2> ring) {
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            twice += ring.get(i).cross(ring.get((i + 1) % ring.size()));
        }
        return twice / 2;
    }
}
