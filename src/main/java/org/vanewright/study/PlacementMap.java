package org.vanewright.study;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.flow.SideFlow;

/**
 * Two ratios of a vane for every chord position and height at the condition of a study.
 *
 * @param chordFractions of the columns, evenly spaced
 * @param heightsMm of the rows, evenly spaced
 * @param heightToThickness height over boundary-layer thickness by row, then column; NaN behind separation
 * @param distanceToHeight distance to separation along the skin, in heights; NaN behind it, or where nothing separates
 * @param separationX that it is counted to; null where the layer stays attached even at the largest lift claimed
 * @param separatesHere whether the layer separates there at this condition; else only at the largest lift claimed
 */
@SuppressWarnings("ArrayRecordComponent") // drawn once, never compared
public record PlacementMap(
        double[] chordFractions,
        double[] heightsMm,
        double[][] heightToThickness,
        double[][] distanceToHeight,
        @Nullable Double separationX,
        boolean separatesHere) {
    private static final int COLUMNS = 40;
    private static final int ROWS = 20;
    private static final double LAST_FRACTION = 0.8;
    private static final double LEAST_HEIGHT_MM = 20;

    /** As far as 80 % of the chord and to at least 20 mm, or twice the device's own height. */
    public static PlacementMap of(StationFlow here, Place place) {
        SideFlow side = here.side(place.side());
        Double height = place.heightMm();
        double highest = Math.max(LEAST_HEIGHT_MM, height == null ? 0 : 2 * height);
        double[] fractions = centres(COLUMNS, LAST_FRACTION);
        double[] heights = centres(ROWS, highest);
        double[][] ratios = new double[ROWS][COLUMNS];
        double[][] distances = new double[ROWS][COLUMNS];
        Double now = here.separationX(place.side());
        Double separation = now == null ? here.latestSeparationX(place.side()) : now;
        double end = separation == null ? Double.NaN : LayerHere.arcMm(side, separation, here.chordMm());
        for (int column = 0; column < COLUMNS; column++) {
            LayerHere layer = LayerHere.of(side, fractions[column], here.chordMm());
            Double thickness = layer.thicknessMm();
            double left = end - layer.arcMm();
            for (int row = 0; row < ROWS; row++) {
                ratios[row][column] = thickness == null ? Double.NaN : heights[row] / thickness;
                distances[row][column] = left > 0 ? left / heights[row] : Double.NaN;
            }
        }
        return new PlacementMap(fractions, heights, ratios, distances, separation, now != null);
    }

    private static double[] centres(int count, double end) {
        double[] centres = new double[count];
        for (int i = 0; i < count; i++) {
            centres[i] = (i + 0.5) * end / count;
        }
        return centres;
    }
}
