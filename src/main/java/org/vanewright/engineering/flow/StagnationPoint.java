package org.vanewright.engineering.flow;

/**
 * Where the flow parts: between which ends the vorticity changes sign, and how far behind the first of them.
 *
 * @param end the last panel end that belongs to the upper side
 * @param fraction of the panel behind it, 0 to 1
 */
record StagnationPoint(int end, double fraction) {
    /** Sought over the front half of the section; of several changes of sign, the one where speed rises fastest. */
    static StagnationPoint of(PanelSolution flow) {
        double[] g = flow.vorticity();
        double[] arc = flow.geometry().arc;
        int found = -1;
        double steepest = 0;
        int quarter = g.length / 4;
        for (int i = quarter; i < g.length - quarter; i++) {
            double rise = (g[i] - g[i + 1]) / (arc[i + 1] - arc[i]);
            if (g[i] > 0 && g[i + 1] <= 0 && rise > steepest) {
                steepest = rise;
                found = i;
            }
        }
        if (found < 0) {
            return new StagnationPoint(flow.geometry().leadingEdge, 0);
        }
        return new StagnationPoint(found, g[found] / (g[found] - g[found + 1]));
    }

    double along(double[] values) {
        return values[end] + fraction * (values[end + 1] - values[end]);
    }
}
