package org.vanewright.campaign.web;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A grid of tufts in plan, nose up, as a page draws it. Lengths count in units of the drawing.
 *
 * @param id unique on the page
 * @param title what it shows, short
 * @param description what it shows, for whoever does not see it
 * @param viewBox as SVG wants it
 * @param wide whether both sides are on it, so that a phone scrolls it
 * @param outlines of the panels, as SVG wants points
 * @param cells of the tufts, in the grid's order
 * @param lines of separation, as SVG wants points
 * @param labels of stations
 */
public record TuftMap(
        String id,
        String title,
        String description,
        String viewBox,
        boolean wide,
        List<String> outlines,
        List<Cell> cells,
        List<String> lines,
        List<Label> labels) {
    /**
     * One tuft.
     *
     * @param points of its cell
     * @param kind how it is drawn: {@code steady}, {@code unsteady}, {@code reversed}, {@code unseen}; in a difference
     *     {@code same}, {@code better}, {@code worse}, {@code other}, {@code unseen}
     * @param place moves and sizes its mark, as SVG's transform
     * @param field of the form that says what it did; null where none does
     * @param words where it is and what it did
     */
    public record Cell(
            String points,
            String kind,
            String place,
            @Nullable String field,
            String words) {}

    /** Lettering at a place. */
    public record Label(String x, String y, String text) {}
}
