package org.vanewright.engineering.drawing.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.PdfPage;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.sheet.FlowingSheet.Table;
import org.vanewright.engineering.drawing.sheet.TextColumn.Paragraph;

class FlowingSheetTest {
    private static List<String> words(PdfPage page) {
        return page.parts().get(0).shapes().stream()
                .filter(Shape.Text.class::isInstance)
                .map(s -> ((Shape.Text) s).text())
                .toList();
    }

    private static Table table(int rows) {
        List<List<String>> cells = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            cells.add(List.of("row " + i, ""));
        }
        return new Table(List.of("Head", "Blank"), List.of(2.0, 1.0), cells, 7);
    }

    @Test
    void aLongTableGoesOnWithItsHeadsAndNothingLeavesThePage() {
        FlowingSheet sheet = new FlowingSheet(Paper.A4.portrait(), List.of("foot", "second line"));
        sheet.heading("A table");
        sheet.table(table(80));
        List<PdfPage> pages = sheet.pages();
        assertThat(pages).hasSize(3);
        for (int i = 0; i < pages.size(); i++) {
            assertThat(words(pages.get(i))).contains("Head", "foot · page " + (i + 1) + " of 3", "second line");
            Bounds around = Bounds.of(pages.get(i).parts().get(0).shapes());
            assertThat(around.minXMm()).isGreaterThanOrEqualTo(FlowingSheet.MARGIN_MM - 0.1);
            assertThat(around.maxXMm()).isLessThanOrEqualTo(210 - FlowingSheet.MARGIN_MM + 0.1);
            assertThat(around.minYMm()).isGreaterThan(10);
            assertThat(around.maxYMm())
                    .as("letters rise a little over their capitals")
                    .isLessThanOrEqualTo(297 - FlowingSheet.MARGIN_MM + 2);
        }
        assertThat(pages.stream().flatMap(p -> words(p).stream()).filter(w -> w.startsWith("row ")))
                .hasSize(80);
    }

    @Test
    void aHeadingStaysWithWhatFollows() {
        FlowingSheet sheet = new FlowingSheet(Paper.LETTER.portrait(), List.of("foot"));
        sheet.table(table(32));
        sheet.heading("Not alone at the foot");
        sheet.set(List.of(Paragraph.plain("after it", 2.4)));
        for (PdfPage page : sheet.pages()) {
            assertThat(words(page).contains("Not alone at the foot"))
                    .isEqualTo(words(page).contains("after it"));
        }
    }

    @Test
    void whatCannotBeSetIsRefused() {
        FlowingSheet sheet = new FlowingSheet(Paper.A4.portrait(), List.of("foot"));
        assertThatThrownBy(() -> sheet.set(List.of(Paragraph.plain("word ".repeat(20_000), 3))))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Table(List.of("a", "b"), List.of(1.0), List.of(), 7))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Table(List.of("a"), List.of(1.0), List.of(List.of("x", "y")), 7))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
