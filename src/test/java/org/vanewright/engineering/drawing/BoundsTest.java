package org.vanewright.engineering.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.testing.Raster;
import org.vanewright.testing.Tools;

class BoundsTest {
    @TempDir
    Path directory;

    @Test
    void lineAndCircleReachToTheirEnds() {
        Shape line = Shape.line(Layer.MARK, Pen.THIN, new Point2(3, 4), new Point2(-1, 9));
        Shape circle = new Shape.Circle(Layer.MARK, Pen.THIN, Fill.NONE, new Point2(10, 0), 2.5);
        assertThat(Bounds.of(line)).isEqualTo(new Bounds(-1, 4, 3, 9));
        assertThat(Bounds.of(List.of(line, circle))).isEqualTo(new Bounds(-1, -2.5, 12.5, 9));
    }

    /** A page of whole pixels. The rendered ink is the outside measure: a row of capital letters I in the embedded typeface. */
    @Test
    void letteringHasItsStatedHeightAndEstimatedWidth() {
        Shape.Text text = new Shape.Text(Layer.TEXT, "IIIIIIII", new Point2(100, 40), 12, 0, Shape.Align.MIDDLE);
        PdfPage page = new PdfPage(203.2, 101.6, List.of(PdfPage.Part.of(List.of(text))));
        byte[] pdf = PdfWriter.write(new PdfDocumentSpec("Letters", "Letters", Instant.EPOCH, List.of(page)));
        Raster raster = Raster.ofPdfPage(Tools.file(directory, "letters.pdf", pdf), 1, directory);
        List<Double> stems = raster.darkAcross(46, 0, 200);
        assertThat(stems).hasSize(8);
        Bounds bounds = Bounds.of(text);
        double pitch = (stems.get(7) - stems.get(0)) / 7;
        assertThat(bounds.widthMm()).isCloseTo(8 * pitch, within(0.1));
        assertThat((stems.get(0) + stems.get(7)) / 2).isCloseTo(100, within(0.1));
        assertThat(raster.uprightLines(5)).isNotEmpty().allSatisfy(stem -> {
            assertThat(stem.fromMm()).isCloseTo(40, within(0.1));
            assertThat(stem.lengthMm()).isCloseTo(12, within(0.15));
        });
    }

    @Test
    void turnedLetteringStandsUpright() {
        Shape.Text level = new Shape.Text(Layer.TEXT, "Station 1", new Point2(0, 0), 3, 0, Shape.Align.START);
        Shape.Text upright = new Shape.Text(Layer.TEXT, "Station 1", new Point2(0, 0), 3, 90, Shape.Align.START);
        assertThat(Bounds.of(upright).heightMm()).isCloseTo(Bounds.of(level).widthMm(), within(1e-9));
        assertThat(Bounds.of(upright).widthMm()).isCloseTo(Bounds.of(level).heightMm(), within(1e-9));
    }

    @Test
    void longLinesAreCutWithAnEllipsis() {
        String fitted = Lettering.fit("A line that is much too long", 3, 30);
        assertThat(fitted).startsWith("A line").endsWith("…");
        assertThat(Lettering.widthMm(fitted, 3)).isLessThanOrEqualTo(30);
        assertThat(Lettering.fit("short", 3, 30)).isEqualTo("short");
    }

    @Test
    void refusesCoordinatesThatAreNoPlaceOnASheet() {
        for (double x : new double[] {Double.NaN, Double.POSITIVE_INFINITY, 2e6}) {
            Shape line = Shape.line(Layer.MARK, Pen.THIN, Point2.ORIGIN, new Point2(x, 0));
            assertThatThrownBy(() -> Bounds.of(line)).isInstanceOf(InvalidInputException.class);
        }
    }
}
