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
    /** ln U and its derivative by number. */
    private final double[] logSpeed;

    private final double[] logRise;

    /** At the place moved to: ln U, d ln U by number, and ds by number. */
    double here;

    double rise;
    double length;

    /**
     * @param first station behind the start, or the number of usable ones
     * @param slowest speed that counts
     */
    StationPath(EdgeFlow edge, double start, int first, double slowest) {
        int nodes = edge.usable - first + 1;
        s = new double[nodes];
        logSpeed = new double[nodes];
        logRise = new double[nodes];
        s[0] = start;
        System.arraycopy(edge.s, first, s, 1, nodes - 1);
        stretch = nodes > 1 ? stretch(s) : new double[1];
        set(0, Math.max(slowest, edge.speedAt(start)), edge.slopeAt(start));
        for (int i = 1; i < nodes; i++) {
            set(i, Math.max(slowest, edge.speed[first + i - 1]), edge.slope[first + i - 1]);
        }
    }

    private void set(int i, double speed, double slope) {
        logSpeed[i] = Math.log(speed);
        logRise[i] = slope / speed * stretch[i];
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
        return s[i] + t * t * (3 - 2 * t) * (s[i + 1] - s[i]) + t * r * (r * stretch[i] - t * stretch[i + 1]);
    }

    void moveTo(double number) {
        int i = piece(number);
        double t = number - i;
        double r = 1 - t;
        double gained = logSpeed[i + 1] - logSpeed[i];
        here = logSpeed[i] + t * t * (3 - 2 * t) * gained + t * r * (r * logRise[i] - t * logRise[i + 1]);
        double middle = 6 * t * r;
        double front = r * (1 - 3 * t);
        double rear = t * (3 * t - 2);
        rise = middle * gained + front * logRise[i] + rear * logRise[i + 1];
        length = middle * (s[i + 1] - s[i]) + front * stretch[i] + rear * stretch[i + 1];
    }

    private int piece(double number) {
        return Math.min((int) number, s.length - 2);
    }
}
