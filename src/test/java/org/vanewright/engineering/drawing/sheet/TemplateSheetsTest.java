package org.vanewright.engineering.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Samples;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.testing.Raster;
import org.vanewright.testing.Tools;

/** The printed page as an outside renderer (poppler, 300 dpi) shows it. */
class TemplateSheetsTest {
    private static final Instant CREATED = Instant.parse("2026-01-02T03:04:05Z");

    @TempDir
    Path directory;

    @ParameterizedTest
    @EnumSource(Paper.class)
    void scaleBarsMeasureTrueOnEveryPaper(Paper paper) {
        Path pdf = pdf(Samples.strip(700, 150, 12), spec(paper));
        Raster first = Raster.ofPdfPage(pdf, 1, directory);
        assertThat(barsAcross(first)).isEqualTo(2);
        assertThat(barsUpright(first)).isEqualTo(2);
    }

    @Test
    void scaleBarsMeasureTrueBesideTheDrawingToo() {
        Raster tile = Raster.ofPdfPage(pdf(Samples.strip(700, 150, 12), spec(Paper.A3)), 2, directory);
        assertThat(barsAcross(tile)).isEqualTo(2);
        assertThat(barsUpright(tile)).isEqualTo(2);
    }

    @Test
    void pointsOfTheDrawingLieWhereThePlanSays() {
        List<Point2> points = List.of(new Point2(60, 70), new Point2(230, 40), new Point2(395.5, 101.25));
        Drawing drawing = crosses(points);
        SheetSpec spec = spec(Paper.A4);
        Path pdf = pdf(drawing, spec);
        TilePlan plan = TemplateSheets.plan(drawing, spec);
        for (Point2 point : points) {
            Tile tile = plan.tiles().stream()
                    .filter(t -> t.core(plan.overlapMm()).contains(point))
                    .findFirst()
                    .orElseThrow();
            Point2 measured = cross(page(pdf, plan, tile), tile.toSheet().apply(point));
            assertThat(measured.distanceTo(tile.toSheet().apply(point))).isLessThan(0.15);
        }
    }

    /** Measured through the registration crosses alone, as a person laying the sheets together would. */
    @Test
    void distancesHoldAcrossASeam() {
        Point2 left = new Point2(60, 70);
        Point2 right = new Point2(395.5, 101.25);
        Drawing drawing = crosses(List.of(left, right));
        SheetSpec spec = spec(Paper.A4);
        Path pdf = pdf(drawing, spec);
        TilePlan plan = TemplateSheets.plan(drawing, spec);
        assertThat(plan.tiles()).hasSize(2);
        Tile first = plan.tiles().get(0);
        Tile second = plan.tiles().get(1);
        Point2 mark = RegistrationMarks.centres(plan, first, Edge.RIGHT).get(1);
        assertThat(RegistrationMarks.centres(plan, second, Edge.LEFT)).contains(mark);

        Raster one = page(pdf, plan, first);
        Raster two = page(pdf, plan, second);
        Point2 toMark = levelArm(one, first.toSheet().apply(mark))
                .minus(cross(one, first.toSheet().apply(left)));
        Point2 fromMark = cross(two, second.toSheet().apply(right))
                .minus(levelArm(two, second.toSheet().apply(mark)));
        Point2 whole = toMark.plus(fromMark);
        assertThat(whole.x()).isCloseTo(335.5, within(0.15));
        assertThat(whole.y()).isCloseTo(31.25, within(0.15));
    }

    @Test
    void outsideReadersFindTheFileSound() {
        Path pdf = pdf(Samples.strip(1200, 400, 30), spec(Paper.A4));
        assertThat(Tools.run("qpdf", "--check", pdf.toString())).contains("No syntax or stream encoding errors");
        assertThat(Tools.run("pdffonts", pdf.toString()).lines().skip(2))
                .singleElement()
                .satisfies(font -> assertThat(font).containsPattern("[A-Z]{6}\\+LiberationSans .* yes yes yes"));
        String text = Tools.run("pdftotext", "-layout", pdf.toString(), "-");
        assertThat(text)
                .contains("Joins A2", "Measure before use", "Page 1 of", "Check the print scale", "Revision 3")
                .contains("4 inches", "100 mm", "Laying the sheets together");
    }

    @Test
    void theSameDrawingGivesTheSameBytes() {
        Drawing drawing = Samples.strip(700, 150, 12);
        assertThat(TemplateSheets.pdf(drawing, spec(Paper.A3))).isEqualTo(TemplateSheets.pdf(drawing, spec(Paper.A3)));
    }

    @Test
    void tooManySheetsForOneFileAreRefusedBeforeAnyIsDrawn() {
        TemplateSheets.Job job = new TemplateSheets.Job(Samples.strip(2500, 900, 12), spec(Paper.A4));
        InvalidInputException refused = catchThrowableOfType(
                InvalidInputException.class, () -> TemplateSheets.pdf(Collections.nCopies(60, job)));
        assertThat(refused.problems()).singleElement().satisfies(p -> {
            assertThat(p.field()).isEqualTo("paper");
            assertThat(p.allowed()).contains("800 sheets", "one row at a time");
        });
    }

    @Test
    void aRollTakesTheDrawingInOnePiece() {
        String info = Tools.run(
                "pdfinfo", pdf(Samples.strip(2500, 400, 60), spec(Paper.ROLL)).toString());
        assertThat(info).containsPattern("Pages: +1\n").containsPattern("Page size: +\\d+.* x 1729\\.13 pts");
    }

    /** ISO 32000-1:2008, Annex C.2: a page side has at most 14,400 units, 5,080 mm. */
    @Test
    void aRollIsSplitOnlyBeyondTheLongestPage() {
        Path pdf = pdf(Samples.strip(7000, 400, 60), spec(Paper.ROLL));
        assertThat(Tools.run("pdfinfo", pdf.toString())).containsPattern("Pages: +3\n");
        assertThat(TemplateSheets.plan(Samples.strip(7000, 400, 60), spec(Paper.ROLL))
                        .tiles())
                .hasSize(2)
                .allSatisfy(t -> assertThat(t.region().widthMm()).isBetween(3500.0, 5080.0));
    }

    /** How many level lines are scale bars; each is measured from the centre of its first tick to that of its last. */
    private static int barsAcross(Raster page) {
        List<Double> lengths = new ArrayList<>();
        for (Raster.Line line : page.levelLines(99)) {
            if (line.lengthMm() < 103) {
                List<Double> ends = page.darkAcross(line.atMm() + 2.1, line.fromMm() - 0.5, line.toMm() + 0.5);
                lengths.add(ends.get(ends.size() - 1) - ends.get(0));
            }
        }
        assertBars(lengths);
        return lengths.size();
    }

    private static int barsUpright(Raster page) {
        List<Double> lengths = new ArrayList<>();
        for (Raster.Line line : page.uprightLines(99)) {
            if (line.lengthMm() < 103) {
                List<Double> ends = page.darkAlong(line.atMm() - 2.0, line.fromMm() - 0.5, line.toMm() + 0.5);
                lengths.add(ends.get(ends.size() - 1) - ends.get(0));
            }
        }
        assertBars(lengths);
        return lengths.size();
    }

    /** 4 in = 101.6 mm by the definition of the inch (25.4 mm, international yard and pound agreement, 1959). */
    private static void assertBars(List<Double> lengthsMm) {
        assertThat(lengthsMm).anySatisfy(l -> assertThat(l).isCloseTo(100, within(0.1)));
        assertThat(lengthsMm).anySatisfy(l -> assertThat(l).isCloseTo(101.6, within(0.1)));
    }

    /** The centre of a cross near a point, from its arms. */
    private static Point2 cross(Raster page, Point2 near) {
        List<Double> x = page.darkAcross(near.y() + 2, near.x() - 2, near.x() + 2);
        List<Double> y = page.darkAlong(near.x() + 2, near.y() - 2, near.y() + 2);
        assertThat(x).hasSize(1);
        assertThat(y).hasSize(1);
        return new Point2(x.get(0), y.get(0));
    }

    /** As {@link #cross}, for a registration cross: its upright arm lies on the seam, its level arm reaches 4.5 mm. */
    private static Point2 levelArm(Raster page, Point2 near) {
        List<Double> x = page.darkAcross(near.y() + 3, near.x() - 2, near.x() + 2);
        List<Double> y = page.darkAlong(near.x() + 3, near.y() - 2, near.y() + 2);
        assertThat(x).hasSize(1);
        assertThat(y).hasSize(1);
        return new Point2(x.get(0), y.get(0));
    }

    private static Drawing crosses(List<Point2> points) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Shape.line(Layer.MARK, Pen.THIN, new Point2(20, 5), new Point2(430, 5)));
        for (Point2 p : points) {
            Point2 across = new Point2(5, 0);
            Point2 up = new Point2(0, 5);
            shapes.add(Shape.line(Layer.MARK, Pen.THIN, p.minus(across), p.plus(across)));
            shapes.add(Shape.line(Layer.MARK, Pen.THIN, p.minus(up), p.plus(up)));
        }
        return new Drawing("Crosses", "Crosses at known points", shapes);
    }

    private Raster page(Path pdf, TilePlan plan, Tile tile) {
        return Raster.ofPdfPage(pdf, 2 + plan.tiles().indexOf(tile), directory);
    }

    private Path pdf(Drawing drawing, SheetSpec spec) {
        return Tools.file(directory, "sheets.pdf", TemplateSheets.pdf(drawing, spec));
    }

    private static SheetSpec spec(Paper paper) {
        return SheetSpec.of(
                paper,
                paper.isRoll() ? 610.0 : null,
                "Placement template",
                List.of("Revision 3"),
                List.of("Check the print scale. Both wings must be symmetric."),
                CREATED);
    }

    @Test
    void aDimensionedDrawingIsPrintedAtItsStatedScale() {
        Drawing small = Samples.everything();
        Path pdf = Tools.file(directory, "single.pdf", SinglePagePdf.write(small, List.of("Revision 3"), CREATED));
        assertThat(Tools.run("qpdf", "--check", pdf.toString())).contains("No syntax or stream encoding errors");
        assertThat(Tools.run("pdftotext", pdf.toString(), "-")).contains("Scale 1:1 on A4", "Revision 3");
        // the tinted outline is 120 mm by 80 mm
        assertThat(Raster.ofPdfPage(pdf, 1, directory).levelLines(119))
                .anySatisfy(line -> assertThat(line.lengthMm()).isCloseTo(120.25, within(0.2)));

        Drawing large = Samples.strip(2500, 400, 60);
        pdf = Tools.file(directory, "single.pdf", SinglePagePdf.write(large, List.of(), CREATED));
        assertThat(Bounds.of(large).widthMm()).isEqualTo(2500);
        assertThat(Tools.run("pdftotext", pdf.toString(), "-")).contains("Scale 1:10 on A4");
    }
}
