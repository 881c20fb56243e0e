package org.vanewright.engineering.flow;

import java.util.Arrays;

/**
 * Stream function at the panel ends, seen from inside, of linear vorticity on the panels and of a layer displaced from
 * the skin.
 *
 * <pre>
 * ψ_i = y_i cos α − x_i sin α + Σ_j a_ij γ_j − (1/2π) Σ_j d_ij m_j = ψ₀
 * </pre>
 *
 * <p>γ is clockwise vorticity, the speed just outside the skin against the order of the panels; m is the flow that the
 * layer displaces, positive along that order. Sources dm/ds along the skin, integrated by parts, become the doublets m;
 * the layer goes on behind the trailing edge along its bisector with the flow it had there. Sources: J. Katz, A. Plotkin,
 * "Low-Speed Aerodynamics", 2nd ed. (2001), sections 10.2 and 10.3 (potentials of linear panels); M. J. Lighthill, "On
 * displacement thickness", Journal of Fluid Mechanics 4 (1958) 383-392 (equivalent sources).
 */
final class InfluenceMatrix {
    /** Rows: the ends, then Kutta's condition. Columns: γ at the ends, then ψ₀. */
    final double[][] vortices;
    /** d_ij / 2π. */
    final double[][] doublets;

    private static final double PER_TURN = 1 / (2 * Math.PI);
    private static final double TINY = 1e-300;
    /** Below this ratio eight terms of the arctangent's series leave less than 1e-13. */
    private static final double SERIES_BELOW = 0.2;

    private final PanelGeometry geometry;
    /** Logarithms of the squared distances between the ends; each counts for both. */
    private final double[][] logs;

    private final double[] squares;
    /** One over the lengths of the panels. */
    private final double[] inverse;

    InfluenceMatrix(PanelGeometry geometry) {
        this.geometry = geometry;
        int n = geometry.ends();
        logs = logs(geometry);
        squares = new double[n];
        inverse = Arrays.stream(geometry.length).map(length -> 1 / length).toArray();
        vortices = new double[n + 1][n + 1];
        doublets = new double[n][n];
        for (int i = 0; i < n; i++) {
            fillRow(i);
        }
        closeAtTrailingEdge();
    }

    private static double[][] logs(PanelGeometry g) {
        int n = g.ends();
        double[][] logs = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double dx = g.x[i] - g.x[j];
                double dy = g.y[i] - g.y[j];
                logs[i][j] = Math.log(Math.max(dx * dx + dy * dy, TINY));
                logs[j][i] = logs[i][j];
            }
        }
        return logs;
    }

    private void fillRow(int i) {
        int n = geometry.ends();
        double[] a = vortices[i];
        double[] d = doublets[i];
        double px = geometry.x[i];
        double py = geometry.y[i];
        for (int j = 0; j < n; j++) {
            double dx = px - geometry.x[j];
            double dy = py - geometry.y[j];
            squares[j] = dx * dx + dy * dy;
        }
        for (int j = 0; j + 1 < n; j++) {
            addPanel(a, d, logs[i], j, px, py, isAt(i, j) || isAt(i, j + 1));
        }
        for (int j = 0; j < n; j++) {
            d[j] += isAt(i, j) ? (Math.PI + geometry.turn(j)) * PER_TURN : 0;
        }
        d[0] += isAt(i, 0) ? 0 : wakeAngle(px - geometry.x[0], py - geometry.y[0]) * PER_TURN;
        d[n - 1] -= isAt(i, n - 1) ? 0 : wakeAngle(px - geometry.x[n - 1], py - geometry.y[n - 1]) * PER_TURN;
        a[n] = -1;
    }

    /** Both ends at a sharp edge are one place, from which no angle between them can be told. */
    private boolean isAt(int i, int j) {
        int last = geometry.panels();
        return i == j || geometry.sharp && i + j == last && (i == 0 || j == 0);
    }

    private void addPanel(double[] a, double[] d, double[] log, int j, double px, double py, boolean own) {
        double tx = geometry.tangentX[j];
        double ty = geometry.tangentY[j];
        double length = geometry.length[j];
        double dx = px - geometry.x[j];
        double dy = py - geometry.y[j];
        double x1 = tx * dx + ty * dy;
        double x2 = x1 - length;
        double h = own ? 0 : tx * dy - ty * dx;
        double log1 = log[j];
        double log2 = log[j + 1];
        double seen = own ? 0 : angle(length * h, x1 * x2 + h * h);
        double whole = 0.5 * (x1 * log1 - x2 * log2) - length + h * seen;
        double moment = 0.25 * (squares[j] * (log1 - 1) - squares[j + 1] * (log2 - 1));
        double perLength = inverse[j];
        double second = (x1 * whole - moment) * perLength;
        a[j] += (whole - second) * PER_TURN;
        a[j + 1] += second * PER_TURN;
        double rear = (x1 * seen - 0.5 * h * (log1 - log2)) * perLength;
        d[j] += (seen - rear) * PER_TURN;
        d[j + 1] += rear * PER_TURN;
    }

    /** Most panels are far away and seen under a small angle, for which the series is faster than the library's atan2. */
    private static double angle(double sine, double cosine) {
        if (cosine <= 0 || Math.abs(sine) > SERIES_BELOW * cosine) {
            return Math.atan2(sine, cosine);
        }
        double t = sine / cosine;
        double q = t * t;
        return t
                * (1
                        - q
                                * (1 / 3.0
                                        - q
                                                * (1 / 5.0
                                                        - q
                                                                * (1 / 7.0
                                                                        - q
                                                                                * (1 / 9.0
                                                                                        - q
                                                                                                * (1 / 11.0
                                                                                                        - q
                                                                                                                * (1
                                                                                                                                / 13.0
                                                                                                                        - q
                                                                                                                                / 15.0)))))));
    }

    /** Angle of a place seen from the trailing edge, from straight upstream. */
    private double wakeAngle(double dx, double dy) {
        double ux = -geometry.wakeX;
        double uy = -geometry.wakeY;
        return Math.atan2(ux * dy - uy * dx, ux * dx + uy * dy);
    }

    private void closeAtTrailingEdge() {
        int last = geometry.panels();
        double[] kutta = vortices[last + 1];
        kutta[0] = 1;
        kutta[last] = 1;
        if (geometry.sharp) {
            extrapolateAtSharpEdge(vortices[last], last);
        } else {
            for (int i = 0; i <= last; i++) {
                double base = base(i);
                vortices[i][0] += base;
                vortices[i][last] -= base;
            }
        }
    }

    /**
     * Both ends at a sharp edge see the same stream function; in the second's place the mean of the speeds on both sides
     * is carried on linearly from the two ends before.
     */
    private void extrapolateAtSharpEdge(double[] row, int last) {
        Arrays.fill(row, 0);
        Arrays.fill(doublets[last], 0);
        double upper = geometry.length[0] / geometry.length[1];
        double lower = geometry.length[last - 1] / geometry.length[last - 2];
        row[0] = 1;
        row[1] = -1 - upper;
        row[2] = upper;
        row[last] = -1;
        row[last - 1] = 1 + lower;
        row[last - 2] = -lower;
    }

    /**
     * A blunt base, per unit of γ at the first end: the dead air behind it moves along the bisector with the speed of
     * the flow beside it, which needs a source and a vortex panel over the base.
     */
    private double base(int i) {
        int last = geometry.panels();
        double bx = geometry.x[0] - geometry.x[last];
        double by = geometry.y[0] - geometry.y[last];
        double width = Math.hypot(bx, by);
        double tx = bx / width;
        double ty = by / width;
        double dx = geometry.x[i] - geometry.x[last];
        double dy = geometry.y[i] - geometry.y[last];
        double ex = geometry.x[i] - geometry.x[0];
        double ey = geometry.y[i] - geometry.y[0];
        boolean own = i == 0 || i == last;
        double x1 = tx * dx + ty * dy;
        double x2 = i == 0 ? 0 : x1 - width;
        double h = own ? 0 : tx * dy - ty * dx;
        double log1 = Math.log(Math.max(dx * dx + dy * dy, TINY));
        double log2 = Math.log(Math.max(ex * ex + ey * ey, TINY));
        double angle1 = Math.atan2(x1, h);
        double angle2 = Math.atan2(x2, h);
        double vortex = 0.5 * (x1 * log1 - x2 * log2) - width + h * (angle1 - angle2);
        double source = 0.5 * h * (log1 - log2) - x1 * angle1 + x2 * angle2;
        double across = geometry.wakeX * ty - geometry.wakeY * tx;
        double along = geometry.wakeX * tx + geometry.wakeY * ty;
        return 0.5 * (across * source - along * vortex) * PER_TURN;
    }
}
