package org.vanewright.engineering.flighttest;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * |g − w| = V for every ground-speed vector g. Squared and less the square of the mean it is linear: 2 w·g' + (V² − w²) = g'²,
 * with vectors g' from the middle of the tips in units of their largest distance, so that a small circle is no worse than a
 * large one.
 */
final class TrackModel implements GpsModel {
    private final double[] east;
    private final double[] north;
    private final double middleEast;
    private final double middleNorth;
    private final double size;

    TrackModel(List<GpsLeg> legs) {
        east = legs.stream().mapToDouble(l -> l.groundSpeedKt() * l.east()).toArray();
        north = legs.stream().mapToDouble(l -> l.groundSpeedKt() * l.north()).toArray();
        middleEast = mean(east);
        middleNorth = mean(north);
        double largest = 0;
        for (int i = 0; i < east.length; i++) {
            largest = Math.max(largest, Math.hypot(east[i] - middleEast, north[i] - middleNorth));
        }
        size = largest > 0 ? largest : 1;
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    @Override
    public double[] residuals(double[] unknowns) {
        double[] residuals = new double[east.length];
        for (int i = 0; i < residuals.length; i++) {
            residuals[i] = Math.hypot(east[i] - unknowns[1], north[i] - unknowns[2]) - unknowns[0];
        }
        return residuals;
    }

    @Override
    public double[][] slopes(double[] unknowns) {
        double[][] slopes = new double[east.length][];
        for (int i = 0; i < slopes.length; i++) {
            double x = east[i] - unknowns[1];
            double y = north[i] - unknowns[2];
            double length = Math.hypot(x, y);
            // at its very middle the circle has no direction
            slopes[i] = length > 0 ? new double[] {-1, -x / length, -y / length} : new double[] {-1, 0, 0};
        }
        return slopes;
    }

    @Override
    public double[][] linearRows() {
        double[][] rows = new double[east.length][];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = new double[] {1, (east[i] - middleEast) / size, (north[i] - middleNorth) / size};
        }
        return rows;
    }

    @Override
    public double[] linearRight() {
        double[] right = new double[east.length];
        for (int i = 0; i < right.length; i++) {
            double x = (east[i] - middleEast) / size;
            double y = (north[i] - middleNorth) / size;
            right[i] = x * x + y * y;
        }
        return right;
    }

    @Override
    public double @Nullable [] fromLinear(double[] solved) {
        double x = solved[1] / 2;
        double y = solved[2] / 2;
        double radius = Math.sqrt(Math.max(0, solved[0] + x * x + y * y));
        return new double[] {size * radius, middleEast + size * x, middleNorth + size * y};
    }
}
