package org.vanewright.engineering.flow;

/**
 * Flow at the panel ends at one angle of attack.
 *
 * @param geometry the panels
 * @param angleRad angle of attack from the section's x axis
 * @param vorticity clockwise, in units of the free stream: speed rearward on the upper side, its negative on the lower
 */
record PanelSolution(PanelGeometry geometry, double angleRad, double[] vorticity) {

    double pressureCoefficient(int end) {
        return 1 - vorticity[end] * vorticity[end];
    }

    /** Lift from the pressure on all panels, square to the free stream, per unit length. */
    double liftCoefficient() {
        double forceX = 0;
        double forceY = 0;
        for (int j = 0; j < geometry.panels(); j++) {
            double pressure = meanPressure(j) * geometry.length[j];
            forceX += pressure * -geometry.tangentY[j];
            forceY += pressure * geometry.tangentX[j];
        }
        return forceY * Math.cos(angleRad) - forceX * Math.sin(angleRad);
    }

    /** About the quarter point of the chord, nose up positive, per unit length squared. */
    double momentCoefficient() {
        double moment = 0;
        for (int j = 0; j < geometry.panels(); j++) {
            double a = vorticity[j];
            double b = vorticity[j + 1];
            double length = geometry.length[j];
            double rx = geometry.x[j] - geometry.quarterX;
            double ry = geometry.y[j] - geometry.quarterY;
            double square = rx * geometry.tangentX[j] + ry * geometry.tangentY[j];
            // pressure and its first moment along the panel, exact for linear speed
            double whole = meanPressure(j) * length;
            double first = length * length * (0.5 - (a * a + 2 * a * b + 3 * b * b) / 12);
            moment -= square * whole + first;
        }
        return moment;
    }

    /** Speed on the panel nearest to a place. */
    double speedNear(double px, double py) {
        double nearest = Double.POSITIVE_INFINITY;
        double speed = 0;
        for (int j = 0; j < geometry.panels(); j++) {
            double dx = px - geometry.x[j];
            double dy = py - geometry.y[j];
            double along = dx * geometry.tangentX[j] + dy * geometry.tangentY[j];
            double part = Math.max(0, Math.min(1, along / geometry.length[j]));
            double distance = Math.hypot(
                    dx - part * geometry.length[j] * geometry.tangentX[j],
                    dy - part * geometry.length[j] * geometry.tangentY[j]);
            if (distance < nearest) {
                nearest = distance;
                speed = Math.abs(vorticity[j] + part * (vorticity[j + 1] - vorticity[j]));
            }
        }
        return speed;
    }

    private double meanPressure(int j) {
        double a = vorticity[j];
        double b = vorticity[j + 1];
        return 1 - (a * a + a * b + b * b) / 3;
    }
}
