package org.vanewright.engineering.tape;

import java.util.List;
import org.vanewright.engineering.geometry.Point2;

/**
 * A kind of piece to be cut.
 *
 * @param name what it is for
 * @param outline closed, mm, the first point not repeated
 * @param count how many
 */
public record TapePiece(String name, List<Point2> outline, int count) {
    public TapePiece {
        outline = List.copyOf(outline);
    }
}
