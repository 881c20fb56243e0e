package org.vanewright.engineering.flow;

import java.util.Arrays;
import org.vanewright.engineering.section.Section;

/**
 * Potential flow about one section at unit speed, factorised once for all angles of attack and displacements.
 *
 * <p>Stream-function panel method: vorticity linear along each panel, stream function constant over the panel ends seen
 * from inside, Kutta's condition at the trailing edge. Error of speed and lift of second order in the panel length.
 * Source: J. Katz, A. Plotkin, "Low-Speed Aerodynamics", 2nd ed. (2001), chapters 9 to 11.
 */
final class PotentialFlow {
    private final PanelGeometry geometry;
    private final double[][] doublets;
    private final DenseFactorisation factors;
    private final double[] alongX;
    private final double[] alongY;

    PotentialFlow(PanelGeometry geometry) {
        this.geometry = geometry;
        InfluenceMatrix influence = new InfluenceMatrix(geometry);
        doublets = influence.doublets;
        factors = new DenseFactorisation(influence.vortices);
        int n = geometry.ends();
        double[] streamX = new double[n + 1];
        double[] streamY = new double[n + 1];
        for (int i = 0; i < n; i++) {
            streamX[i] = -geometry.y[i];
            streamY[i] = geometry.x[i];
        }
        if (geometry.sharp) {
            streamX[n - 1] = 0;
            streamY[n - 1] = 0;
        }
        alongX = factors.solve(streamX);
        alongY = factors.solve(streamY);
    }

    static PotentialFlow about(Section section, int panels) {
        return new PotentialFlow(PanelGeometry.of(section, panels));
    }

    PanelGeometry geometry() {
        return geometry;
    }

    PanelSolution at(double angleRad) {
        return at(angleRad, new double[geometry.ends()]);
    }

    /** @param added to the vorticity, as {@link #response} gives it */
    PanelSolution at(double angleRad, double[] added) {
        double cos = Math.cos(angleRad);
        double sin = Math.sin(angleRad);
        double[] vorticity = new double[geometry.ends()];
        for (int i = 0; i < vorticity.length; i++) {
            vorticity[i] = cos * alongX[i] + sin * alongY[i] + added[i];
        }
        return new PanelSolution(geometry, angleRad, vorticity);
    }

    /** Vorticity at the ends in answer to displaced flow there, positive along the order of the panels. */
    double[] response(double[] displacedFlow) {
        int n = geometry.ends();
        double[] right = new double[n + 1];
        for (int i = 0; i < n; i++) {
            right[i] = DenseFactorisation.dot(doublets[i], displacedFlow, 0, n);
        }
        return factors.solve(right);
    }

    /** The same to some places of a grid, a column for each. */
    double[][] responses(DisplacementGrid grid, int from, int to) {
        int n = geometry.ends();
        double[][] right = new double[n + 1][];
        for (int i = 0; i < n; i++) {
            right[i] = Arrays.copyOfRange(grid.gather(doublets[i]), from, to);
        }
        right[n] = new double[to - from];
        return factors.solve(right);
    }

    /** Angle at which the potential flow has this lift coefficient, by circulation. */
    double angleForLift(double liftCoefficient) {
        double a = 2 * circulation(alongX);
        double b = 2 * circulation(alongY);
        double sine = Math.max(-1, Math.min(1, liftCoefficient / Math.hypot(a, b)));
        return Math.asin(sine) - Math.atan2(a, b);
    }

    /** Change of lift coefficient by angle of attack, per radian, at zero angle. */
    double liftSlope() {
        return 2 * circulation(alongY);
    }

    private double circulation(double[] vorticity) {
        double sum = 0;
        for (int j = 0; j < geometry.panels(); j++) {
            sum += 0.5 * (vorticity[j] + vorticity[j + 1]) * geometry.length[j];
        }
        return sum;
    }
}
