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

class PdfWriterTest {
    private static final Instant CREATED = Instant.parse("2026-01-02T03:04:05Z");

    @TempDir
    Path directory;

    @Test
    void outsideReadersFindItSound() {
        Path pdf = pdf(spec(PdfPage.Part.of(Samples.everything().shapes())));
        assertThat(Tools.run("qpdf", "--check", pdf.toString())).contains("No syntax or stream encoding errors");
        assertThat(Tools.run("pdffonts", pdf.toString())).containsPattern("[A-Z]{6}\\+LiberationSans .* yes yes yes");
        assertThat(Tools.run("pdftotext", pdf.toString(), "-")).contains("Angle 15° ± 0.5°", "naïve", "“fillet”");
        assertThat(Tools.run("pdfinfo", "-isodates", pdf.toString()))
                .containsPattern("Title: +A title")
                .containsPattern("CreationDate: +2026-01-02T03:04:05Z");
    }

    @Test
    void theSameSpecificationGivesTheSameBytes() {
        PdfDocumentSpec spec = spec(PdfPage.Part.of(Samples.everything().shapes()));
        assertThat(PdfWriter.write(spec)).isEqualTo(PdfWriter.write(spec));
    }

    @Test
    void shapesLieWhereTheTransformPutsThem() {
        Shape cross = Shape.line(Layer.MARK, Pen.THIN, new Point2(10, -5), new Point2(10, 5));
        Similarity turned = new Similarity(2, 90, new Point2(100, 50));
        Raster page = Raster.ofPdfPage(pdf(spec(new PdfPage.Part(List.of(cross), turned, null))), 1, directory);
        // (10, y) turned by 90 degrees and doubled lies at (100 - 2y, 70)
        assertThat(page.darkAlong(100, 0, 140))
                .singleElement()
                .satisfies(y -> assertThat(y).isCloseTo(70, within(0.1)));
        assertThat(page.darkAcross(70, 0, 200))
                .singleElement()
                .satisfies(x -> assertThat(x).isCloseTo(100, within(0.1)));
    }

    @Test
    void nothingShowsOutsideTheClip() {
        Shape line = Shape.line(Layer.MARK, Pen.THICK, new Point2(0, 50), new Point2(200, 50));
        Raster page = Raster.ofPdfPage(
                pdf(spec(new PdfPage.Part(List.of(line), Similarity.NONE, new Bounds(60, 40, 80, 60)))), 1, directory);
        assertThat(page.darkAcross(50, 0, 200))
                .singleElement()
                .satisfies(x -> assertThat(x).isCloseTo(70, within(0.1)));
    }

    @Test
    void aPageLongerThanTheFormatAllowsIsRefused() {
        assertThatThrownBy(() -> new PdfPage(5081, 300, List.of()))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("widthMm");
    }

    private static PdfDocumentSpec spec(PdfPage.Part part) {
        return new PdfDocumentSpec("A title", "A subject", CREATED, List.of(new PdfPage(200, 140, List.of(part))));
    }

    private Path pdf(PdfDocumentSpec spec) {
        return Tools.file(directory, "file.pdf", PdfWriter.write(spec));
    }
}
