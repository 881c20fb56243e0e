package org.vanewright.engineering.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Samples;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.input.InvalidInputException;

class TilerTest {
    /** ISO 216:2007, table 1; ANSI/ASME Y14.1, sizes A and B (8.5 in by 11 in, 11 in by 17 in). */
    @Test
    void papersHaveTheirStandardSizes() {
        assertThat(Paper.A4.portrait()).isEqualTo(new SheetSize(210, 297));
        assertThat(Paper.A3.portrait()).isEqualTo(new SheetSize(297, 420));
        assertThat(Paper.LETTER.portrait().widthMm()).isCloseTo(8.5 * 25.4, within(1e-9));
        assertThat(Paper.LETTER.portrait().heightMm()).isCloseTo(11 * 25.4, within(1e-9));
        assertThat(Paper.TABLOID.portrait().widthMm()).isCloseTo(11 * 25.4, within(1e-9));
        assertThat(Paper.TABLOID.portrait().heightMm()).isCloseTo(17 * 25.4, within(1e-9));
        assertThatThrownBy(Paper.ROLL::portrait).isInstanceOf(IllegalStateException.class);
    }

    @Test
    void everyPointIsVisibleOnOneSheetInsideItsMargins() {
        Random random = new Random(20260102);
        for (int round = 0; round < 40; round++) {
            Drawing drawing = scattered(random);
            Paper paper = Paper.values()[random.nextInt(4)];
            double margin = 3 + 22 * random.nextDouble();
            TilePlan plan = Tiler.tile(drawing, paper, margin, 6 + 14 * random.nextDouble(), 2);
            Bounds printable = new SheetFrame(plan.sheet(), margin, 0).printable();
            for (Shape shape : drawing.shapes()) {
                for (Point2 p : ((Shape.Polyline) shape).points()) {
                    assertThat(plan.tiles())
                            .as("%s on %s, round %d", p, paper, round)
                            .anySatisfy(t -> {
                                assertThat(t.core(plan.overlapMm()).contains(p)).isTrue();
                                assertThat(printable.contains(t.toSheet().apply(p)))
                                        .isTrue();
                                assertThat(t.shapes()).contains(shape);
                            });
                }
            }
        }
    }

    @Test
    void neighboursShareTheirRegistrationCrosses() {
        TilePlan plan = Tiler.tile(Samples.strip(1200, 600, 30), Paper.A4);
        Map<String, Tile> byName = plan.tiles().stream().collect(Collectors.toMap(Tile::name, Function.identity()));
        int seams = 0;
        for (Tile tile : plan.tiles()) {
            for (Edge edge : List.of(Edge.RIGHT, Edge.BELOW)) {
                String name = tile.neighbours().get(edge);
                if (name != null) {
                    Tile next = Objects.requireNonNull(byName.get(name));
                    Edge facing = edge == Edge.RIGHT ? Edge.LEFT : Edge.ABOVE;
                    assertThat(next.neighbours()).containsEntry(facing, tile.name());
                    List<Point2> here = RegistrationMarks.centres(plan, tile, edge);
                    List<Point2> there = RegistrationMarks.centres(plan, next, facing);
                    assertThat(here).hasSize(2);
                    for (int i = 0; i < here.size(); i++) {
                        assertThat(here.get(i).distanceTo(there.get(i))).isLessThan(1e-9);
                        assertThat(tile.region().contains(here.get(i))).isTrue();
                        assertThat(next.region().contains(here.get(i))).isTrue();
                    }
                    seams++;
                }
            }
        }
        assertThat(seams).isEqualTo(plan.rows() * (plan.columns() - 1) + plan.columns() * (plan.rows() - 1));
    }

    @Test
    void takesTheOrientationWithFewerSheets() {
        TilePlan wide = Tiler.tile(Samples.strip(500, 100, 5), Paper.A4);
        assertThat(wide.sheet()).isEqualTo(new SheetSize(297, 210));
        assertThat(wide.tiles()).extracting(Tile::name).containsExactly("A1", "A2");
    }

    @Test
    void emptyCellsHaveNoSheet() {
        Shape corner =
                Shape.open(Layer.CUT, Pen.THIN, List.of(new Point2(0, 1000), new Point2(0, 0), new Point2(1000, 0)));
        TilePlan plan = Tiler.tile(new Drawing("Corner", "Two lines", List.of(corner)), Paper.A4);
        assertThat(plan.tiles()).hasSize(plan.rows() + plan.columns() - 1);
        assertThat(plan.tiles().get(0).neighbours()).containsOnlyKeys(Edge.BELOW);
    }

    /** The inside of a piece belongs to it, so its sheet is needed to hold the piece together. */
    @Test
    void theInsideOfAnOutlineHasItsSheets() {
        Shape square = Shape.outline(Layer.CUT, Pen.THIN, Fill.NONE, new Bounds(0, 0, 1000, 1000).corners());
        TilePlan plan = Tiler.tile(new Drawing("Square", "An outline", List.of(square)), Paper.A4);
        assertThat(plan.tiles()).hasSize(plan.rows() * plan.columns());
    }

    @Test
    void seamsKeepClearOfARowOfBasesWhereTheyCan() {
        TilePlan plan = Tiler.tile(Samples.strip(2500, 400, 60), Paper.A4);
        assertThat(plan.rows()).isEqualTo(2);
        double seam = plan.tiles().get(0).region().minYMm() + plan.overlapMm() / 2;
        // the bases lie 12 mm either side of the middle
        assertThat(Math.abs(seam - 200)).isGreaterThan(12 + plan.overlapMm() / 2);
    }

    @Test
    void scaleBarsStandClearOfTheDrawing() {
        Random random = new Random(7);
        int sheetsWithBars = 0;
        for (int round = 0; round < 20; round++) {
            TilePlan plan = Tiler.tile(scattered(random), Paper.A3);
            for (Tile tile : plan.tiles()) {
                List<Shape> bars = TileSheet.scaleBars(plan, tile);
                for (Shape bar : bars) {
                    Bounds around = Bounds.of(bar).grown(1);
                    assertThat(tile.region().contains(around)).isTrue();
                    assertThat(tile.shapes()).noneMatch(s -> Touch.test(s, around) && !encloses(s, around));
                }
                sheetsWithBars += bars.isEmpty() ? 0 : 1;
            }
        }
        assertThat(sheetsWithBars).isPositive();
    }

    @Test
    void refusesADrawingForTooManySheets() {
        Drawing huge = Samples.strip(60_000, 5_000, 3);
        assertThatThrownBy(() -> Tiler.tile(huge, Paper.A4))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("paper");
    }

    @Test
    void rowsAreNamedLikeSpreadsheetColumns() {
        assertThat(List.of(0, 25, 26, 51, 52)).extracting(Tiler::rowName).containsExactly("A", "Z", "AA", "AZ", "BA");
    }

    private static boolean encloses(Shape shape, Bounds area) {
        return shape instanceof Shape.Polyline line && line.closed() && !anySegment(line, area);
    }

    private static boolean anySegment(Shape.Polyline line, Bounds area) {
        List<Point2> points = line.points();
        for (int i = 0; i < points.size(); i++) {
            if (Touch.segment(points.get(i), points.get((i + 1) % points.size()), area)) {
                return true;
            }
        }
        return false;
    }

    /** One to eight outlines and lines anywhere in 1.6 m by 0.8 m. */
    private static Drawing scattered(Random random) {
        List<Shape> shapes = new ArrayList<>();
        int count = 1 + random.nextInt(8);
        for (int i = 0; i < count; i++) {
            Point2 centre = new Point2(1600 * random.nextDouble() - 300, 800 * random.nextDouble() - 200);
            List<Point2> points = new ArrayList<>();
            for (int k = 0; k < 3 + random.nextInt(20); k++) {
                points.add(centre.plus(new Point2(80 * random.nextGaussian(), 40 * random.nextGaussian())));
            }
            shapes.add(new Shape.Polyline(Layer.CUT, Pen.THIN, Fill.NONE, points, random.nextBoolean()));
        }
        return new Drawing("Scattered", "Random lines", shapes);
    }
}
