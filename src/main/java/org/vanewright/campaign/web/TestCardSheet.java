package org.vanewright.campaign.web;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.Measure;
import org.vanewright.campaign.Schedule;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Lettering;
import org.vanewright.engineering.drawing.PdfDocumentSpec;
import org.vanewright.engineering.drawing.PdfPage;
import org.vanewright.engineering.drawing.PdfWriter;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.sheet.TextColumn;
import org.vanewright.engineering.drawing.sheet.TextColumn.Paragraph;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.record.Revision;

/** Test cards on A4, one page for each flight, to be read and written on in a cockpit. */
final class TestCardSheet {
    private static final double WIDTH_MM = 210;
    private static final double HEIGHT_MM = 297;
    private static final double MARGIN_MM = 14;
    /** As large as the page has room for. */
    private static final double[] TEXT_MM = {2.7, 2.5, 2.3, 2.1, 1.9};

    /** Of the service's cautions; the others are about templates, and the card has its own. */
    private static final int CAUTIONS = 3;

    private static final double SMALL_MM = 1.9;
    private static final double TITLE_MM = 4.2;
    private static final double HEADING_MM = 3;
    private static final double ROW_MM = 10;
    /** As high as the whole table may be, so that the card stays on its page. */
    private static final double TABLE_MM = 56;

    private static final int SPARE_ROWS = 2;
    private static final int MOST_ROWS = 10;
    private static final List<String> HEAD_BLANKS =
            List.of("Date", "Crew", "Start mass, kg", "Fuel at start, kg", "QNH");

    private final Revision<CampaignDocument> revision;
    private final @Nullable AirframeDocument airframe;
    private final List<String> cautions;
    private final int sorties;

    private TestCardSheet(
            Revision<CampaignDocument> revision,
            @Nullable AirframeDocument airframe,
            List<String> cautions,
            int sorties) {
        this.revision = revision;
        this.airframe = airframe;
        this.cautions = cautions;
        this.sorties = sorties;
    }

    /** @param cautions of the service, in the order of weight */
    static byte[] pdf(
            Revision<CampaignDocument> revision,
            @Nullable AirframeDocument airframe,
            List<Schedule.Sortie> chosen,
            int sorties,
            List<String> cautions) {
        TestCardSheet sheet = new TestCardSheet(revision, airframe, cautions, sorties);
        List<PdfPage> pages = chosen.stream().map(sheet::page).toList();
        String title = "Test cards: " + revision.printedName() + ", revision " + revision.number();
        return PdfWriter.write(new PdfDocumentSpec(
                title, "What to fly, in which order, and blanks to fill in.", revision.createdAt(), pages));
    }

    private PdfPage page(Schedule.Sortie sortie) {
        List<Shape> footer = footer();
        double lowest = footer.stream()
                        .mapToDouble(shape -> Bounds.of(shape).maxYMm())
                        .max()
                        .orElse(MARGIN_MM)
                + 2;
        List<Shape> shapes = new ArrayList<>();
        for (double size : TEXT_MM) {
            shapes.clear();
            if (fill(shapes, sortie, size) > lowest) {
                break;
            }
        }
        shapes.addAll(footer);
        return new PdfPage(WIDTH_MM, HEIGHT_MM, List.of(PdfPage.Part.of(shapes)));
    }

    /** Everything but the footer; gives where it ends. */
    private double fill(List<Shape> shapes, Schedule.Sortie sortie, double size) {
        TextColumn column =
                new TextColumn(MARGIN_MM, HEIGHT_MM - MARGIN_MM, WIDTH_MM - 2 * MARGIN_MM, Double.NEGATIVE_INFINITY);
        CampaignDocument campaign = revision.content();
        column.set(List.of(
                Paragraph.plain(revision.printedName(), TITLE_MM),
                Paragraph.plain(
                        "Flight " + sortie.number() + " of " + sorties + " · block " + sortie.block()
                                + " · configuration " + sortie.key()
                                + (campaign.invented() ? " · INVENTED, for demonstration" : ""),
                        HEADING_MM)));
        column.skip(2);
        double y = blanks(shapes, column.top(), HEAD_BLANKS, 1, false);
        column.skip(column.top() - y + 3);
        list(column, "Set-up", TestCards.setUp(campaign, sortie), size);
        list(column, "Limits", TestCards.limits(airframe), size);
        Measure measure = TestCards.measure(campaign);
        list(column, "Steps", numbered(TestCards.steps(measure, sortie.points())), size);
        column.skip(2);
        int rows = Math.min(MOST_ROWS, sortie.points() + SPARE_ROWS);
        y = blanks(shapes, column.top(), TestCards.blanks(measure), rows, true);
        column.skip(column.top() - y + 3);
        list(column, "Stop and land when", TestCards.STOP, size);
        list(column, "Cautions", TestCards.CAUTIONS, size);
        shapes.addAll(column.shapes());
        return column.top();
    }

    private static List<String> numbered(List<String> steps) {
        List<String> lines = new ArrayList<>();
        for (String step : steps) {
            lines.add((lines.size() + 1) + ". " + step);
        }
        return lines;
    }

    private static void list(TextColumn column, String heading, List<String> lines, double size) {
        column.set(List.of(Paragraph.heading(heading)));
        column.set(lines.stream()
                .map(l -> l.matches("\\d\\. .*")
                        ? Paragraph.item(l.substring(0, 2), l.substring(3), size)
                        : Paragraph.item("–", l, size))
                .toList());
    }

    /**
     * A table to write into; every other column as wide as the next, the last taking what is left.
     *
     * @return where it ends
     */
    private static double blanks(List<Shape> to, double top, List<String> heads, int rows, boolean numbered) {
        double width = (WIDTH_MM - 2 * MARGIN_MM) / heads.size();
        double right = WIDTH_MM - MARGIN_MM;
        double head = SMALL_MM + 2.5;
        double row = Math.min(ROW_MM, TABLE_MM / rows);
        double bottom = top - head - rows * row;
        for (int i = 0; i <= rows + 1; i++) {
            double y = i == 0 ? top : top - head - (i - 1) * row;
            to.add(Shape.line(Layer.MARK, Pen.THIN, new Point2(MARGIN_MM, y), new Point2(right, y)));
        }
        for (int i = 0; i <= heads.size(); i++) {
            double x = MARGIN_MM + i * width;
            to.add(Shape.line(Layer.MARK, Pen.THIN, new Point2(x, top), new Point2(x, bottom)));
        }
        for (int i = 0; i < heads.size(); i++) {
            to.add(text(
                    Lettering.fit(heads.get(i), SMALL_MM, width - 2),
                    MARGIN_MM + i * width + 1,
                    top - head + 1.3,
                    SMALL_MM));
        }
        for (int i = 0; numbered && i < rows; i++) {
            to.add(text(String.valueOf(i + 1), MARGIN_MM + 1.5, top - head - (i + 1) * row + 1.8, SMALL_MM));
        }
        return bottom;
    }

    private List<Shape> footer() {
        String first = "Campaign " + revision.slug() + " · revision " + revision.number() + " · SHA-256 "
                + revision.shortHash() + (revision.isReleased() ? "" : " · " + Revision.NOT_PUBLISHED);
        List<Paragraph> lines = Stream.concat(
                        Stream.of(first, TestCards.SOURCES), cautions.stream().limit(CAUTIONS))
                .map(l -> Paragraph.plain(l, SMALL_MM))
                .toList();
        double room = WIDTH_MM - 2 * MARGIN_MM;
        TextColumn measured = new TextColumn(0, 0, room, Double.NEGATIVE_INFINITY);
        measured.set(lines);
        TextColumn column = new TextColumn(MARGIN_MM, MARGIN_MM / 2 - measured.top(), room, Double.NEGATIVE_INFINITY);
        column.set(lines);
        return column.shapes();
    }

    private static Shape text(String line, double x, double y, double cap) {
        return new Shape.Text(Layer.TEXT, line, new Point2(x, y), cap, 0, Shape.Align.START);
    }
}
