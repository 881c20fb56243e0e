package org.vanewright.engineering.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.solid.Mesh;

class SolidViewTest {
    private static final double SIDE_MM = 10;

    @Test
    void aCubeShowsAsARegularHexagonWithThreeEdgesInside() {
        Drawing drawing = SolidView.isometric(cubes(0), "Cube", "A cube");
        List<Shape.Polyline> outline = lines(drawing, Fill.TINT);
        assertThat(outline).hasSize(1);
        // isometric axonometry, ISO 5456-3:1996: every edge is shortened by the square root of 2/3
        double edge = SIDE_MM * Math.sqrt(2.0 / 3);
        assertThat(area(outline.get(0).points())).isCloseTo(1.5 * Math.sqrt(3) * edge * edge, within(1e-9));
        List<Shape.Polyline> edges = lines(drawing, Fill.NONE);
        assertThat(edges).hasSize(9).allSatisfy(e -> assertThat(length(e)).isCloseTo(edge, within(1e-9)));
        // the three inner edges meet in the corner nearest the viewer: forward, left and up
        Point2 middle = Bounds.of(outline.get(0)).centre();
        assertThat(edges.stream().filter(e -> e.points().stream().anyMatch(p -> p.distanceTo(middle) < 1e-9)))
                .hasSize(3);
    }

    @Test
    void whatStandsInFrontHidesWhatIsBehind() {
        // a second cube straight behind the first along the line of sight
        Drawing drawing = SolidView.isometric(cubes(3 * SIDE_MM), "Cubes", "Two cubes");
        assertThat(lines(drawing, Fill.TINT)).hasSize(1);
        double seen = lines(drawing, Fill.NONE).stream()
                .mapToDouble(SolidViewTest::length)
                .sum();
        double oneCube = 9 * SIDE_MM * Math.sqrt(2.0 / 3);
        // the outlines coincide, the inner edges are hidden
        assertThat(seen).isBetween(oneCube - 1e-6, oneCube * 1.7);
        Point2 middle = Bounds.of(lines(drawing, Fill.TINT).get(0)).centre();
        assertThat(lines(drawing, Fill.NONE).stream()
                        .filter(e -> e.points().stream().anyMatch(p -> p.distanceTo(middle) < 1e-9)))
                .hasSize(3);
    }

    /** One cube, or with an offset two, the second moved rearward, right and down by it. */
    private static Mesh cubes(double offset) {
        double[] corners = new double[offset == 0 ? 24 : 48];
        int[] faces = {
            0, 2, 3, 0, 3, 1, 4, 5, 7, 4, 7, 6, 0, 1, 5, 0, 5, 4, 2, 6, 7, 2, 7, 3, 0, 4, 6, 0, 6, 2, 1, 3, 7, 1, 7, 5
        };
        for (int i = 0; i < corners.length / 3; i++) {
            double shift = i < 8 ? 0 : offset;
            corners[3 * i] = (i & 1) * SIDE_MM + shift;
            corners[3 * i + 1] = (i >> 1 & 1) * SIDE_MM + shift;
            corners[3 * i + 2] = (i >> 2 & 1) * SIDE_MM - shift;
        }
        int[] all = new int[offset == 0 ? faces.length : 2 * faces.length];
        for (int i = 0; i < all.length; i++) {
            all[i] = faces[i % faces.length] + 8 * (i / faces.length);
        }
        return new Mesh(corners, all);
    }

    private static List<Shape.Polyline> lines(Drawing drawing, Fill fill) {
        return drawing.shapes().stream()
                .map(Shape.Polyline.class::cast)
                .filter(l -> l.fill() == fill)
                .toList();
    }

    private static double length(Shape.Polyline line) {
        return line.points().get(0).distanceTo(line.points().get(1));
    }

    private static double area(List<Point2> ring) {
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            twice += ring.get(i).cross(ring.get((i + 1) % ring.size()));
        }
        return Math.abs(twice) / 2;
    }
}
