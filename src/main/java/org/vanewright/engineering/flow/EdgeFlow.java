package org.vanewright.engineering.flow;

import org.vanewright.engineering.section.SurfaceSide;

/**
 * Speed at the edge of one side's boundary layer, from the stagnation point rearward, in units of the free stream. Station
 * 0 is the stagnation point, the others are panel ends. Between stations the speed is a cubic with the slopes of the
 * parabolas through three neighbours.
 */
final class EdgeFlow {
    /** A slower edge cannot carry a layer: the flow there has stopped or turned back. */
    private static final double SLOWEST = 1e-3;

    final double[] s;
    final double[] speed;
    /** Derivative of speed by s. */
    final double[] slope;

    final double[] x;
    final double[] y;
    /** Stations that a layer can be followed over. */
    final int usable;

    private final SmoothCurve curve;

    EdgeFlow(double[] s, double[] speed, double[] x, double[] y) {
        this.s = s;
        this.speed = speed;
        this.x = x;
        this.y = y;
        curve = new SmoothCurve(s, speed);
        slope = curve.slopes;
        int n = 1;
        while (n < s.length && speed[n] > (n < 3 ? 0 : SLOWEST)) {
            n++;
        }
        usable = n;
    }

    static EdgeFlow of(PanelSolution flow, StagnationPoint stagnation, SurfaceSide side) {
        boolean upper = side == SurfaceSide.UPPER;
        PanelGeometry g = flow.geometry();
        int count = upper ? stagnation.end() + 2 : g.ends() - stagnation.end();
        double[] s = new double[count];
        double[] speed = new double[count];
        double[] x = new double[count];
        double[] y = new double[count];
        double origin = stagnation.along(g.arc);
        x[0] = stagnation.along(g.x);
        y[0] = stagnation.along(g.y);
        for (int i = 1; i < count; i++) {
            int end = end(stagnation, side, i);
            s[i] = Math.abs(g.arc[end] - origin);
            speed[i] = upper ? flow.vorticity()[end] : -flow.vorticity()[end];
            x[i] = g.x[end];
            y[i] = g.y[end];
        }
        if (s[1] <= 0) {
            // the stagnation point falls on an end: part them by a hair so that arc length increases
            s[1] = 1e-9 * s[2];
            speed[1] = 1e-9 * speed[2];
        }
        return new EdgeFlow(s, speed, x, y);
    }

    /** Panel end at a station other than 0. */
    static int end(StagnationPoint stagnation, SurfaceSide side, int station) {
        return side == SurfaceSide.UPPER ? stagnation.end() + 1 - station : stagnation.end() + station;
    }

    double speedAt(double at) {
        return curve.at(at);
    }

    double slopeAt(double at) {
        return curve.slopeAt(at);
    }

    /** Linear between stations. */
    double along(double[] values, double at) {
        return curve.along(values, at);
    }

    /** Arc length at the rearmost place with this x; 0 where the stagnation point lies behind it. */
    double arcAtX(double wanted) {
        for (int i = s.length - 1; i > 0; i--) {
            if (x[i - 1] <= wanted && wanted <= x[i]) {
                double part = x[i] > x[i - 1] ? (wanted - x[i - 1]) / (x[i] - x[i - 1]) : 0;
                return s[i - 1] + part * (s[i] - s[i - 1]);
            }
        }
        return wanted > x[s.length - 1] ? s[s.length - 1] : 0;
    }
}
