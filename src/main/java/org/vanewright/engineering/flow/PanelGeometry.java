package org.vanewright.engineering.flow;

import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SkinPoint;
import org.vanewright.engineering.section.SurfaceSide;

/**
 * Straight panels whose ends lie on a section's skin: trailing edge → upper → leading edge → lower → trailing edge,
 * anticlockwise, lengths in the section's unit. {@link PanelSpread} says where they crowd.
 */
final class PanelGeometry {
    /** A trailing edge narrower than this fraction of the chord counts as sharp. */
    private static final double SHARP_WITHIN = 1e-4;

    /** Panel ends. */
    final double[] x;

    final double[] y;
    /** Arc length from the first end along the skin itself, not its chords. */
    final double[] arc;
    /** Unit vectors along the panels, and their lengths; one fewer than ends. */
    final double[] tangentX;

    final double[] tangentY;
    final double[] length;
    /** Index of the end at the leading edge. */
    final int leadingEdge;

    final boolean sharp;
    /** Unit vector rearward along the trailing edge's bisector. */
    final double wakeX;

    final double wakeY;
    final double quarterX;
    final double quarterY;

    private PanelGeometry(double[] x, double[] y, double[] arc, int leadingEdge) {
        int panels = x.length - 1;
        this.x = x;
        this.y = y;
        this.arc = arc;
        this.leadingEdge = leadingEdge;
        tangentX = new double[panels];
        tangentY = new double[panels];
        length = new double[panels];
        for (int j = 0; j < panels; j++) {
            length[j] = Math.hypot(x[j + 1] - x[j], y[j + 1] - y[j]);
            tangentX[j] = (x[j + 1] - x[j]) / length[j];
            tangentY[j] = (y[j + 1] - y[j]) / length[j];
        }
        double bx = tangentX[panels - 1] - tangentX[0];
        double by = tangentY[panels - 1] - tangentY[0];
        double trailX = 0.5 * (x[0] + x[panels]);
        double trailY = 0.5 * (y[0] + y[panels]);
        double chordX = trailX - x[leadingEdge];
        double chordY = trailY - y[leadingEdge];
        double chord = Math.hypot(chordX, chordY);
        double size = Math.hypot(bx, by);
        // both sides square to the chord, as on a circle, have no bisector
        wakeX = size > 0.1 ? bx / size : chordX / chord;
        wakeY = size > 0.1 ? by / size : chordY / chord;
        quarterX = x[leadingEdge] + 0.25 * chordX;
        quarterY = y[leadingEdge] + 0.25 * chordY;
        sharp = Math.hypot(x[0] - x[panels], y[0] - y[panels]) < SHARP_WITHIN * chord;
    }

    /** @param panels at least 20; half of them on each side, the odd one on the lower */
    static PanelGeometry of(Section section, int panels) {
        double[] x = new double[panels + 1];
        double[] y = new double[panels + 1];
        double[] arc = new double[panels + 1];
        int upper = panels / 2;
        double[] up = PanelSpread.arcs(section, SurfaceSide.UPPER, upper);
        double[] low = PanelSpread.arcs(section, SurfaceSide.LOWER, panels - upper);
        double length = up[upper];
        for (int i = 0; i <= upper; i++) {
            set(x, y, upper - i, section.atArcLength(SurfaceSide.UPPER, up[i]));
            arc[upper - i] = length - up[i];
        }
        for (int i = 1; i < low.length; i++) {
            set(x, y, upper + i, section.atArcLength(SurfaceSide.LOWER, low[i]));
            arc[upper + i] = length + low[i];
        }
        return new PanelGeometry(x, y, arc, upper);
    }

    private static void set(double[] x, double[] y, int index, SkinPoint point) {
        x[index] = point.x();
        y[index] = point.y();
    }

    int ends() {
        return x.length;
    }

    int panels() {
        return length.length;
    }

    /** Angle by which the outline turns to the left at an inner end; at the outer ones, against the wake's direction. */
    double turn(int end) {
        if (end == 0) {
            return angle(-wakeX, -wakeY, tangentX[0], tangentY[0]);
        }
        int last = panels() - 1;
        return end > last
                ? angle(tangentX[last], tangentY[last], wakeX, wakeY)
                : angle(tangentX[end - 1], tangentY[end - 1], tangentX[end], tangentY[end]);
    }

    private static double angle(double ax, double ay, double bx, double by) {
        return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
    }
}
