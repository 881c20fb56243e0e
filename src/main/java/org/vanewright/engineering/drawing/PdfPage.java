package org.vanewright.engineering.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;

/**
 * One page of a PDF file; coordinates in mm from its lower left corner.
 *
 * @param widthMm of the sheet, at most {@link #MAX_SIDE_MM}
 * @param heightMm of the sheet, at most {@link #MAX_SIDE_MM}
 * @param parts in drawing order
 */
public record PdfPage(double widthMm, double heightMm, List<Part> parts) {
    /** 14,400 units of 1/72 inch: the largest page side of PDF 1.7 (ISO 32000-1:2008, Annex C.2) without UserUnit. */
    public static final double MAX_SIDE_MM = 14_400 * 25.4 / 72;

    public PdfPage {
        parts = List.copyOf(parts);
        Checks checks = new Checks();
        checks.range("widthMm", widthMm, 1, MAX_SIDE_MM, "mm");
        checks.range("heightMm", heightMm, 1, MAX_SIDE_MM, "mm");
        checks.throwIfAny();
    }

    /**
     * Shapes placed on the page.
     *
     * @param transform from the coordinates of the shapes to the page
     * @param clip rectangle on the page outside which nothing is drawn; null for none
     */
    public record Part(
            List<Shape> shapes,
            Similarity transform,
            @Nullable Bounds clip) {
        public Part {
            shapes = List.copyOf(shapes);
        }

        /** Shapes already in page coordinates. */
        public static Part of(List<Shape> shapes) {
            return new Part(shapes, Similarity.NONE, null);
        }
    }
}
