package org.vanewright.engineering.flow;

/**
 * The edge flow behind a place over the number of stations passed since, as cubics that meet at the stations: a step of
 * integration from station to station crosses none of the places where the flow's curvature jumps.
 */
final class StationPath {
    /** A cubic whose slopes at the ends exceed its mean slope no more often than this never turns back. */
    private static final double STEEPEST = 3;

    private final double[] s;
    private final double[] stretch;
    private final double[] speed;
    private final double[] speedRise;

    /** At the place moved to: edge speed, d ln U by number, and ds by number. */
    double here;

    double rise;
    double length;

    /** @param first station behind the start, before the last usable one or that */
    StationPath(EdgeFlow edge, double start, int first) {
        int nodes = edge.usable - first + 1;
        s = new double[nodes];
        speed = new double[nodes];
        speedRise = new double[nodes];
        s[0] = start;
        speed[0] = edge.speedAt(start);
        speedRise[0] = edge.slopeAt(start);
        System.arraycopy(edge.s, first, s, 1, nodes - 1);
        System.arraycopy(edge.speed, first, speed, 1, nodes - 1);
        System.arraycopy(edge.slope, first, speedRise, 1, nodes - 1);
        stretch = nodes > 1 ? stretch(s) : new double[1];
        for (int i = 0; i < nodes; i++) {
            speedRise[i] *= stretch[i];
        }
    }

    private static double[] stretch(double[] s) {
        int last = s.length - 1;
        double[] stretch = new double[s.length];
        stretch[0] = s[1] - s[0];
        for (int i = 1; i < last; i++) {
            double shorter = Math.min(s[i] - s[i - 1], s[i + 1] - s[i]);
            stretch[i] = Math.min(0.5 * (s[i + 1] - s[i - 1]), STEEPEST * shorter);
        }
        stretch[last] = s[last] - s[last - 1];
        return stretch;
    }

    /** Stations on the path, the start not among them. */
    int last() {
        return s.length - 1;
    }

    double arcAt(double number) {
        int i = piece(number);
        double t = number - i;
        double r = 1 - t;
        return r * r * (1 + 2 * t) * s[i]
                + t * t * (3 - 2 * t) * s[i + 1]
                + t * r * (r * stretch[i] - t * stretch[i + 1]);
    }

    void moveTo(double number, double slowest) {
        int i = piece(number);
        double t = number - i;
        double r = 1 - t;
        double ahead = t * t * (3 - 2 * t);
        here = Math.max(
                slowest,
                speed[i] + ahead * (speed[i + 1] - speed[i]) + t * r * (r * speedRise[i] - t * speedRise[i + 1]));
        double middle = 6 * t * r;
        double front = r * (1 - 3 * t);
        double rear = t * (3 * t - 2);
        rise = (middle * (speed[i + 1] - speed[i]) + front * speedRise[i] + rear * speedRise[i + 1]) / here;
        length = middle * (s[i + 1] - s[i]) + front * stretch[i] + rear * stretch[i + 1];
    }

    private int piece(double number) {
        return Math.min((int) number, s.length - 2);
    }
}
