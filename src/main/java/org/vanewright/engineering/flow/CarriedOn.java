package org.vanewright.engineering.flow;

/**
 * Displaced flow carried on from two angles to the next as far away: what moves, stagnation and transition, moves on, and
 * between those places the flow changes on.
 */
final class CarriedOn {
    /** Trailing edge, upper transition, stagnation point, lower transition, trailing edge: arc lengths, all increasing. */
    private static final int MARKS = 5;
    /** Two of them no closer than this part of the outline. */
    private static final double APART = 1e-3;

    private CarriedOn() {}

    /** @param grid arc lengths of the places that displaced flow is known at */
    static double[] from(CoupledFlow before, CoupledFlow here, double[] grid) {
        double[] old = marks(before, grid);
        double[] now = marks(here, grid);
        double[] next = new double[MARKS];
        for (int m = 0; m < MARKS; m++) {
            next[m] = 2 * now[m] - old[m];
        }
        part(next);
        SmoothCurve was = new SmoothCurve(grid, before.onward());
        SmoothCurve is = new SmoothCurve(grid, here.onward());
        double[] start = new double[grid.length];
        int m = 0;
        for (int k = 0; k < grid.length; k++) {
            while (m < MARKS - 2 && grid[k] > next[m + 1]) {
                m++;
            }
            double part = (grid[k] - next[m]) / (next[m + 1] - next[m]);
            start[k] = 2 * is.at(now[m] + part * (now[m + 1] - now[m])) - was.at(old[m] + part * (old[m + 1] - old[m]));
        }
        return start;
    }

    private static double[] marks(CoupledFlow flow, double[] grid) {
        double first = grid[0];
        double last = grid[grid.length - 1];
        double stagnation = flow.stagnation().along(flow.outer().geometry().arc);
        double[] marks = {
            first,
            Math.max(first, stagnation - flow.upper().transition),
            stagnation,
            Math.min(last, stagnation + flow.lower().transition),
            last
        };
        part(marks);
        return marks;
    }

    /** Keeps the inner ones in order and apart. */
    private static void part(double[] marks) {
        double gap = APART * (marks[MARKS - 1] - marks[0]);
        for (int m = 1; m < MARKS - 1; m++) {
            marks[m] = Math.max(marks[m], marks[m - 1] + gap);
        }
        for (int m = MARKS - 2; m > 0; m--) {
            marks[m] = Math.min(marks[m], marks[m + 1] - gap);
        }
    }
}
