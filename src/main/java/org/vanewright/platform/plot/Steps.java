package org.vanewright.platform.plot;

import java.util.ArrayList;
import java.util.List;

/** Curves that stay level between their points. */
public final class Steps {
    private Steps() {}

    /**
     * A curve that keeps each value until the next point changes it.
     *
     * @param from where it begins
     * @param changes to which value it goes where, rising across
     * @param toX where it ends
     */
    public static List<PlotPoint> of(PlotPoint from, List<PlotPoint> changes, double toX) {
        List<PlotPoint> points = new ArrayList<>();
        points.add(from);
        double level = from.y();
        for (PlotPoint change : changes) {
            points.add(new PlotPoint(change.x(), level));
            points.add(change);
            level = change.y();
        }
        if (points.get(points.size() - 1).x() < toX) {
            points.add(new PlotPoint(toX, level));
        }
        return List.copyOf(points);
    }
}
