package org.vanewright.engineering.flighttest;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * |V h + w| = s for every heading h and ground speed s. Squared: A + 2 B·h = s² with A = V² + W² and B = V w, so V² is the
 * larger root of x² − A x + B² = 0, the airspeed being above the wind speed.
 */
final class HeadingModel implements GpsModel {
    /** A discriminant below 0 by no more than rounding is 0. */
    private static final double ROUNDING = 1e-9;

    private final List<GpsLeg> legs;
    private final double size;

    HeadingModel(List<GpsLeg> legs) {
        this.legs = List.copyOf(legs);
        double largest = legs.stream().mapToDouble(GpsLeg::groundSpeedKt).max().orElseThrow();
        size = largest > 0 ? largest : 1;
    }

    @Override
    public double[] residuals(double[] unknowns) {
        return legs.stream()
                .mapToDouble(l -> l.groundSpeedKt() - Math.hypot(x(l, unknowns), y(l, unknowns)))
                .toArray();
    }

    @Override
    public double[][] slopes(double[] unknowns) {
        return legs.stream().map(l -> slope(l, unknowns)).toArray(double[][]::new);
    }

    private static double[] slope(GpsLeg leg, double[] unknowns) {
        double x = x(leg, unknowns);
        double y = y(leg, unknowns);
        double length = Math.hypot(x, y);
        return length > 0
                ? new double[] {-(x * leg.east() + y * leg.north()) / length, -x / length, -y / length}
                : new double[] {-1, 0, 0};
    }

    private static double x(GpsLeg leg, double[] unknowns) {
        return unknowns[0] * leg.east() + unknowns[1];
    }

    private static double y(GpsLeg leg, double[] unknowns) {
        return unknowns[0] * leg.north() + unknowns[2];
    }

    @Override
    public double[][] linearRows() {
        return legs.stream()
                .map(l -> new double[] {1, 2 * l.east(), 2 * l.north()})
                .toArray(double[][]::new);
    }

    @Override
    public double[] linearRight() {
        return legs.stream()
                .mapToDouble(l -> l.groundSpeedKt() / size)
                .map(s -> s * s)
                .toArray();
    }

    @Override
    public double @Nullable [] fromLinear(double[] solved) {
        double sum = solved[0];
        double discriminant = sum * sum - 4 * (solved[1] * solved[1] + solved[2] * solved[2]);
        if (!(sum > 0) || discriminant < -ROUNDING) {
            return null;
        }
        double airspeed = Math.sqrt((sum + Math.sqrt(Math.max(0, discriminant))) / 2);
        return new double[] {size * airspeed, size * solved[1] / airspeed, size * solved[2] / airspeed};
    }
}
