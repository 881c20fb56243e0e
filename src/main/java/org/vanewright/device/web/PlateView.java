package org.vanewright.device.web;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.SvgWriter;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.engineering.solid.Plate;

/**
 * One build plate as its page shows it.
 *
 * @param svg the bed from above with the room each piece takes
 */
public record PlateView(int number, int pieces, int firstPiece, int lastPiece, String svg) {
    static List<PlateView> of(List<Plate> plates, Mesh mesh) {
        return plates.stream().map(p -> of(p, mesh)).toList();
    }

    private static PlateView of(Plate plate, Mesh mesh) {
        List<Plate.Placement> pieces = plate.placements();
        return new PlateView(
                plate.number(),
                pieces.size(),
                pieces.get(0).order(),
                pieces.get(pieces.size() - 1).order(),
                SvgWriter.inline(drawing(plate, mesh), "drawing bed", "plate-" + plate.number()));
    }

    private static Drawing drawing(Plate plate, Mesh mesh) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(box(Pen.THIN, Fill.NONE, 0, 0, plate.bedWidthMm(), plate.bedDepthMm()));
        for (Plate.Placement p : plate.placements()) {
            double[] room = p.footprint(mesh);
            shapes.add(box(Pen.THIN, Fill.ACCENT, room[0], room[1], room[2], room[3]));
        }
        return new Drawing(
                "Plate " + plate.number() + " of " + plate.plates(),
                "The bed from above, front edge at the bottom, with the room of each of the "
                        + plate.placements().size() + " pieces.",
                shapes);
    }

    private static Shape box(Pen pen, Fill fill, double x0, double y0, double x1, double y1) {
        return Shape.outline(
                Layer.MARK,
                pen,
                fill,
                List.of(new Point2(x0, y0), new Point2(x1, y0), new Point2(x1, y1), new Point2(x0, y1)));
    }
}
