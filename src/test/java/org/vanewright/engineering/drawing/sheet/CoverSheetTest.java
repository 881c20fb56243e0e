package org.vanewright.engineering.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.PdfPage;
import org.vanewright.engineering.drawing.Samples;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.input.InvalidInputException;

class CoverSheetTest {
    private static final Instant CREATED = Instant.parse("2026-01-02T03:04:05Z");

    @ParameterizedTest
    @EnumSource(Paper.class)
    void nothingOverlapsAndNothingIsLost(Paper paper) {
        Drawing tall = Samples.strip(900, 1400, 12);
        String caution = "Keep clear of stall warning, vents, fuel caps and controls; both wings symmetric. ".repeat(8);
        for (double margin : new double[] {3, 10, 25}) {
            for (int cautions : new int[] {0, 3, 20}) {
                SheetSpec spec = new SheetSpec(
                        paper,
                        900.0,
                        margin,
                        10,
                        "A header that is rather long for a sheet of paper ".repeat(3),
                        Collections.nCopies(4, "A footer line ".repeat(20)),
                        Collections.nCopies(cautions, caution),
                        CREATED);
                List<PdfPage> pages = CoverSheet.pages(TemplateSheets.plan(tall, spec), tall, spec);
                pages.forEach(page -> assertCalm(page, margin));
                assertThat(words(pages).split("stall warning", -1)).hasSize(cautions * 8 + 1);
            }
        }
    }

    @Test
    void refusesEveryValueOutOfRangeAtOnce() {
        assertThatThrownBy(() -> new SheetSpec(Paper.ROLL, null, 1, 99, " ", List.of(), List.of(""), CREATED))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("rollWidthMm = missing")
                .hasMessageContaining("marginMm")
                .hasMessageContaining("overlapMm")
                .hasMessageContaining("headerLine")
                .hasMessageContaining("cautions[0]");
    }

    /** Lettering stays inside the margins and clear of other lettering. */
    private static void assertCalm(PdfPage page, double marginMm) {
        Bounds inside = new SheetFrame(new SheetSize(page.widthMm(), page.heightMm()), marginMm, 0)
                .printable()
                .grown(0.5);
        List<Bounds> texts = page.parts().stream()
                .flatMap(part -> part.shapes().stream())
                .filter(Shape.Text.class::isInstance)
                .map(Bounds::of)
                .toList();
        assertThat(texts).isNotEmpty().allMatch(inside::contains);
        for (int i = 0; i < texts.size(); i++) {
            for (int k = i + 1; k < texts.size(); k++) {
                assertThat(texts.get(i).touches(texts.get(k)))
                        .as("%s over %s", texts.get(i), texts.get(k))
                        .isFalse();
            }
        }
    }

    private static String words(List<PdfPage> pages) {
        return pages.stream()
                .flatMap(page -> page.parts().stream())
                .flatMap(part -> part.shapes().stream())
                .filter(Shape.Text.class::isInstance)
                .map(shape -> ((Shape.Text) shape).text())
                .collect(Collectors.joining(" "));
    }
}
