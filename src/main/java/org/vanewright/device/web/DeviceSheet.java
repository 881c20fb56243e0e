package org.vanewright.device.web;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.device.DeviceDocument;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Lettering;
import org.vanewright.engineering.drawing.PdfDocumentSpec;
import org.vanewright.engineering.drawing.PdfPage;
import org.vanewright.engineering.drawing.PdfWriter;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.Similarity;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.solid.DeviceDrawing;
import org.vanewright.record.Licence;
import org.vanewright.record.Revision;

/**
 * The three-view drawing of a revision on A4, with what it belongs to and the cautions in the corner above the front
 * view, which third-angle projection leaves free.
 */
final class DeviceSheet {
    private static final double WIDTH_MM = 297;
    private static final double HEIGHT_MM = 210;
    private static final double TEXT_MM = 2.2;
    private static final double LINE_MM = 3.8;
    private static final double GAP_MM = 6;
    private static final double WIDEST_MM = 85;
    /** Height of the corner that the text may need. */
    private static final double CORNER_MM = 60;

    private DeviceSheet() {}

    /** @param caution one paragraph */
    static Drawing drawing(Revision<DeviceDocument> revision, String caution) {
        DeviceDocument device = revision.content();
        Drawing plain = DeviceDrawing.threeView(device.design(), device.name());
        Bounds frame = Bounds.of(plain);
        double room = Math.min(WIDEST_MM, firstInCorner(plain, frame) - frame.minXMm() - 2 * GAP_MM);
        List<Shape> shapes = new ArrayList<>(plain.shapes());
        double y = frame.maxYMm() - GAP_MM - TEXT_MM;
        for (String line : lines(revision, caution, room)) {
            Point2 at = new Point2(frame.minXMm() + GAP_MM, y);
            shapes.add(new Shape.Text(Layer.TEXT, line, at, TEXT_MM, 0, Shape.Align.START));
            y -= LINE_MM;
        }
        String title =
                revision.printedName() + ", revision " + revision.number() + (device.invented() ? ", invented" : "");
        return new Drawing(title, plain.description(), shapes);
    }

    /** The drawing in the middle of a sheet of A4 on its side, at its own scale. */
    static byte[] pdf(Revision<DeviceDocument> revision, String caution) {
        Drawing drawing = drawing(revision, caution);
        Point2 middle = new Point2(WIDTH_MM / 2, HEIGHT_MM / 2);
        Point2 shift = middle.minus(Bounds.of(drawing).centre());
        PdfPage.Part part = new PdfPage.Part(drawing.shapes(), Similarity.shift(shift.x(), shift.y()), null);
        PdfPage page = new PdfPage(WIDTH_MM, HEIGHT_MM, List.of(part));
        return PdfWriter.write(
                new PdfDocumentSpec(drawing.title(), drawing.description(), revision.createdAt(), List.of(page)));
    }

    /** The views alone, for a page that says the rest itself. */
    static Drawing views(Drawing sheet, String name) {
        Bounds frame = Bounds.of(sheet);
        List<Shape> views = sheet.shapes().stream()
                // the notes come last, after the name
                .takeWhile(shape ->
                        !(shape instanceof Shape.Text text && text.text().equals(name)))
                .filter(shape -> !Bounds.of(shape).contains(frame))
                .toList();
        return new Drawing(sheet.title(), sheet.description(), views);
    }

    /** Where the drawing begins beside the corner. */
    private static double firstInCorner(Drawing plain, Bounds frame) {
        return plain.shapes().stream()
                .map(Bounds::of)
                .filter(b -> !b.contains(frame) && b.maxYMm() > frame.maxYMm() - CORNER_MM)
                .mapToDouble(Bounds::minXMm)
                .min()
                .orElse(frame.maxXMm());
    }

    private static List<String> lines(Revision<DeviceDocument> r, String caution, double room) {
        List<String> lines = new ArrayList<>();
        Licence licence = r.standing().licence();
        lines.addAll(wrapped(
                "Revision " + r.number() + " · SHA-256 " + r.shortHash()
                        + (licence == null ? "" : " · " + licence.label())
                        + (r.isReleased() ? "" : " · " + Revision.NOT_PUBLISHED),
                room));
        if (r.content().invented()) {
            lines.addAll(wrapped("INVENTED demonstration data: do not build from it.", room));
        }
        lines.addAll(wrapped(caution, room));
        return lines;
    }

    private static List<String> wrapped(String paragraph, double room) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : paragraph.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && Lettering.widthMm(longer, TEXT_MM) > room) {
                lines.add(line);
                longer = word;
            }
            line = longer;
        }
        lines.add(line);
        return lines;
    }
}
