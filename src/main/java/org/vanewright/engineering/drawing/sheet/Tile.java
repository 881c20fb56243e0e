package org.vanewright.engineering.drawing.sheet;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.Similarity;
import org.vanewright.engineering.geometry.Point2;

/**
 * The part of a drawing that one sheet shows.
 *
 * @param name row letter and column number, such as B3
 * @param row counted from 0, from above
 * @param column counted from 0, from the left
 * @param region what the sheet shows, overlap included, in mm on the drawing
 * @param toSheet from the drawing to the sheet, lower left corner of the sheet at the origin
 * @param shapes those that may show in the region
 * @param neighbours names of the sheets that join at an edge
 */
public record Tile(
        String name,
        int row,
        int column,
        Bounds region,
        Similarity toSheet,
        List<Shape> shapes,
        Map<Edge, String> neighbours) {
    public Tile {
        shapes = List.copyOf(shapes);
        EnumMap<Edge, String> ordered = new EnumMap<>(Edge.class);
        ordered.putAll(neighbours);
        neighbours = Collections.unmodifiableMap(ordered);
    }

    /** The region on the sheet. */
    public Bounds frame() {
        Point2 shift = toSheet.shiftMm();
        return region.shifted(shift.x(), shift.y());
    }

    /** The region less half the overlap where a neighbour joins: what stays visible in the assembled drawing. */
    public Bounds core(double overlapMm) {
        double half = overlapMm / 2;
        return new Bounds(
                region.minXMm() + (neighbours.containsKey(Edge.LEFT) ? half : 0),
                region.minYMm() + (neighbours.containsKey(Edge.BELOW) ? half : 0),
                region.maxXMm() - (neighbours.containsKey(Edge.RIGHT) ? half : 0),
                region.maxYMm() - (neighbours.containsKey(Edge.ABOVE) ? half : 0));
    }
}
