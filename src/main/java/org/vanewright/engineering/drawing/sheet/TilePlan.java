package org.vanewright.engineering.drawing.sheet;

import java.util.List;
import org.vanewright.engineering.drawing.Bounds;

/**
 * A drawing spread over sheets.
 *
 * @param sheet size of every sheet as it lies
 * @param marginMm left free at every edge of a sheet
 * @param rows of the grid; a cell with nothing in it has no tile
 * @param columns of the grid
 * @param grid the whole grid in mm on the drawing
 * @param overlapMm width of the strip two neighbours share
 * @param tiles row by row from the upper left
 */
public record TilePlan(
        SheetSize sheet, double marginMm, int rows, int columns, Bounds grid, double overlapMm, List<Tile> tiles) {
    public TilePlan {
        tiles = List.copyOf(tiles);
    }

    /** Distance from one column to the next. */
    double columnStepMm() {
        return (grid.widthMm() - overlapMm) / columns;
    }

    /** Distance from one row to the next. */
    double rowStepMm() {
        return (grid.heightMm() - overlapMm) / rows;
    }
}
