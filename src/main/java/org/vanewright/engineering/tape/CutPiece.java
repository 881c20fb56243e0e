package org.vanewright.engineering.tape;

import java.util.List;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.geometry.Point2;

/**
 * A piece at its place on the roll: x along it, y across it from its lower edge.
 *
 * @param kind index of its kind
 * @param turned whether it is turned by 90°
 * @param bounds the rectangle it takes
 * @param outline as it is cut
 */
public record CutPiece(int kind, boolean turned, Bounds bounds, List<Point2> outline) {
    public CutPiece {
        outline = List.copyOf(outline);
    }
}
