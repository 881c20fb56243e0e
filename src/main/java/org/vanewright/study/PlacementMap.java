package org.vanewright.study;

import org.vanewright.engineering.flow.SideFlow;
import org.vanewright.engineering.section.SurfaceSide;

/**
 * Height over boundary-layer thickness for every chord position and height at the condition of a study.
 *
 * @param chordFractions of the columns, evenly spaced
 * @param heightsMm of the rows, evenly spaced
 * @param heightToThickness by row, then column; NaN behind separation
 */
@SuppressWarnings("ArrayRecordComponent") // drawn once, never compared
public record PlacementMap(double[] chordFractions, double[] heightsMm, double[][] heightToThickness) {
    private static final int COLUMNS = 40;
    private static final int ROWS = 20;
    private static final double LAST_FRACTION = 0.8;
    private static final double LEAST_HEIGHT_MM = 20;

    /** As far as 80 % of the chord and to at least 20 mm, or twice the row's own height. */
    public static PlacementMap of(RowStudy study) {
        SideFlow side = study.row().side() == SurfaceSide.UPPER
                ? study.flow().upper()
                : study.flow().lower();
        double highest = Math.max(LEAST_HEIGHT_MM, 2 * study.row().vane().heightMm());
        double[] fractions = centres(COLUMNS, LAST_FRACTION);
        double[] heights = centres(ROWS, highest);
        double[][] ratios = new double[ROWS][COLUMNS];
        for (int column = 0; column < COLUMNS; column++) {
            Double thickness =
                    LayerHere.of(side, fractions[column], study.chordMm()).thicknessMm();
            for (int row = 0; row < ROWS; row++) {
                ratios[row][column] = thickness == null ? Double.NaN : heights[row] / thickness;
            }
        }
        return new PlacementMap(fractions, heights, ratios);
    }

    private static double[] centres(int count, double end) {
        double[] centres = new double[count];
        for (int i = 0; i < count; i++) {
            centres[i] = (i + 0.5) * end / count;
        }
        return centres;
    }
}
