package org.vanewright.engineering.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.geometry.Point2;

class GlyphOutlinesTest {
    private static double high(List<List<List<Point2>>> letters) {
        return letters.stream()
                .flatMap(List::stream)
                .flatMap(List::stream)
                .mapToDouble(Point2::y)
                .max()
                .orElseThrow();
    }

    @Test
    void capitalsAreAsHighAsAskedAndStandOnTheBaseLine() {
        List<List<List<Point2>>> letters = GlyphOutlines.of("HET", 5);
        assertThat(letters).hasSize(3);
        assertThat(high(letters)).isCloseTo(5, within(0.01));
        letters.stream()
                .flatMap(List::stream)
                .flatMap(List::stream)
                .forEach(p -> assertThat(p.y()).isGreaterThan(-0.01));
    }

    @Test
    void countersAreRingsOfTheirOwn() {
        assertThat(GlyphOutlines.of("L", 5).get(0)).hasSize(1);
        assertThat(GlyphOutlines.of("O", 5).get(0)).hasSize(2);
        assertThat(GlyphOutlines.of("8", 5).get(0)).hasSize(3);
    }

    @Test
    void lettersStandWhereTheMeasuresSay() {
        String text = "ROW 12 LEFT";
        List<List<List<Point2>>> letters = GlyphOutlines.of(text, 4);
        assertThat(letters).as("blanks have no ink").hasSize(9);
        double right =
                letters.get(8).get(0).stream().mapToDouble(Point2::x).max().orElseThrow();
        assertThat(right).isBetween(Lettering.widthMm("ROW 12 LEF", 4), Lettering.widthMm(text, 4));
    }

    @Test
    void whatIsNotAsciiBecomesAQuestionMark() {
        assertThat(GlyphOutlines.of("ä\u0000\uD83D\uDE00", 4)).isEqualTo(GlyphOutlines.of("????", 4));
        assertThat(GlyphOutlines.of("", 4)).isEmpty();
    }
}
