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
import org.vanewright.record.Revision;

/** The three-view drawing of a device on a sheet of A4, with its revision and the cautions. */
final class DeviceSheet {
    private static final double WIDTH_MM = 297;
    private static final double HEIGHT_MM = 210;
    private static final double MARGIN_MM = 12;
    private static final double TEXT_MM = 2.2;
    private static final double LINE_MM = 4.2;
    private static final double FOOT_MM = 24;

    private DeviceSheet() {}

    /** @param caution one paragraph, wrapped over the width of the sheet */
    static byte[] pdf(Revision<DeviceDocument> revision, Drawing drawing, String caution) {
        Bounds content = Bounds.of(drawing);
        double room = HEIGHT_MM - 2 * MARGIN_MM - FOOT_MM;
        double fit = Math.min(1, Math.min((WIDTH_MM - 2 * MARGIN_MM) / content.widthMm(), room / content.heightMm()));
        Point2 middle = new Point2(WIDTH_MM / 2, HEIGHT_MM - MARGIN_MM - room / 2);
        Similarity placed = new Similarity(fit, 0, middle.minus(content.centre().times(fit)));
        PdfPage page = new PdfPage(
                WIDTH_MM,
                HEIGHT_MM,
                List.of(new PdfPage.Part(drawing.shapes(), placed, null), PdfPage.Part.of(foot(revision, caution))));
        return PdfWriter.write(
                new PdfDocumentSpec(drawing.title(), drawing.description(), revision.createdAt(), List.of(page)));
    }

    private static List<Shape> foot(Revision<DeviceDocument> r, String caution) {
        List<String> lines = new ArrayList<>();
        lines.add(r.content().name() + " · revision " + r.number() + " · SHA-256 " + r.shortHash()
                + (r.content().invented() ? " · INVENTED demonstration data: do not build from it" : ""));
        lines.addAll(wrapped(caution));
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Point2 at = new Point2(MARGIN_MM, MARGIN_MM + (lines.size() - 1 - i) * LINE_MM);
            String fitting = Lettering.fit(lines.get(i), TEXT_MM, WIDTH_MM - 2 * MARGIN_MM);
            shapes.add(new Shape.Text(Layer.TEXT, fitting, at, TEXT_MM, 0, Shape.Align.START));
        }
        return shapes;
    }

    private static List<String> wrapped(String paragraph) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : paragraph.split(" ", -1)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && Lettering.widthMm(longer, TEXT_MM) > WIDTH_MM - 2 * MARGIN_MM) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        lines.add(line.toString());
        return lines;
    }
}
