package org.vanewright.engineering.drawing;

import java.util.List;

/**
 * A drawing at true scale in mm.
 *
 * @param title short name, goes into file metadata and the SVG title
 * @param description what it shows in words, the text alternative
 * @param shapes in drawing order, later ones on top
 */
public record Drawing(String title, String description, List<Shape> shapes) {
    public Drawing {
        shapes = List.copyOf(shapes);
    }
}
