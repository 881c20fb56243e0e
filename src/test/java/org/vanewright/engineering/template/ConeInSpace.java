package org.vanewright.engineering.template;

import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.wing.WingPanel;

/**
 * The upper skin of an untwisted tapered panel with NACA 2412 ends as a cone in space, worked out from the section's
 * formula (Jacobs, Ward, Pinkerton, NACA TR-460, 1933, with the open trailing edge) by plain summation, without any of
 * the service's own unrolling. Coordinates: rearward, outboard, up.
 */
final class ConeInSpace {
    private static final int STEPS = 200_000;

    private final WingPanel panel;
    private final double[] apex;

    ConeInSpace(WingPanel panel) {
        this.panel = panel;
        double toApex = panel.innerChordMm() / (panel.innerChordMm() - panel.outerChordMm());
        this.apex = new double[] {
            toApex * (panel.outerLeadingEdgeMm() - panel.innerLeadingEdgeMm()), toApex * panel.spanMm(), 0
        };
    }

    /** Length of the straight line, a ruling, between two stations at one chord fraction of the upper skin. */
    double straightMm(double fromStationMm, double toStationMm, double chordFraction) {
        return distance(onChord(fromStationMm, chordFraction), onChord(toStationMm, chordFraction));
    }

    /** On the flat sheet, from the inner leading edge: outboard along the leading edge, and down square to it. */
    Point2 flat(double stationMm, double chordFraction) {
        double toApex = distance(apex, onChord(stationMm, chordFraction));
        double angle = angle(chordFraction);
        double wholeEdge = distance(apex, onChord(panel.innerStationMm(), 0));
        return new Point2(wholeEdge - toApex * Math.cos(angle), -toApex * Math.sin(angle));
    }

    double squareToLeadingEdgeMm(double stationMm, double chordFraction) {
        return -flat(stationMm, chordFraction).y();
    }

    /** Angle at the apex between leading edge and ruling once flat: length of the section seen on a unit sphere. */
    private double angle(double chordFraction) {
        double end = parameter(chordFraction);
        double sum = 0;
        double[] before = direction(0);
        for (int i = 1; i <= STEPS; i++) {
            double[] next = direction(end * i / STEPS);
            sum += Math.sqrt(square(next[0] - before[0]) + square(next[1] - before[1]) + square(next[2] - before[2]));
            before = next;
        }
        return sum;
    }

    /** Square root of the parameter along the chord of the mean line at which the upper skin has this abscissa. */
    private static double parameter(double chordFraction) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < 80; i++) {
            double middle = (low + high) / 2;
            if (section(middle)[0] < chordFraction) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    private double[] direction(double root) {
        double[] p = point(panel.innerStationMm(), section(root));
        double length = distance(apex, p);
        return new double[] {(p[0] - apex[0]) / length, (p[1] - apex[1]) / length, (p[2] - apex[2]) / length};
    }

    private double[] onChord(double stationMm, double chordFraction) {
        return point(stationMm, section(parameter(chordFraction)));
    }

    private double[] point(double stationMm, double[] section) {
        double chord = panel.chordMm(stationMm);
        return new double[] {
            panel.leadingEdgeMm(stationMm) + chord * section[0], stationMm - panel.innerStationMm(), chord * section[1]
        };
    }

    /** Upper skin of NACA 2412 at the square of {@code root} along the mean line's chord. */
    private static double[] section(double root) {
        double x = root * root;
        double m = 0.02;
        double p = 0.4;
        double thickness =
                0.6 * (0.2969 * root - 0.1260 * x - 0.3516 * x * x + 0.2843 * x * x * x - 0.1015 * x * x * x * x);
        double camber = x < p ? m / (p * p) * (2 * p * x - x * x) : m / square(1 - p) * (1 - 2 * p + 2 * p * x - x * x);
        double slope = x < p ? 2 * m / (p * p) * (p - x) : 2 * m / square(1 - p) * (p - x);
        double angle = Math.atan(slope);
        return new double[] {x - thickness * Math.sin(angle), camber + thickness * Math.cos(angle)};
    }

    private static double distance(double[] a, double[] b) {
        return Math.sqrt(square(a[0] - b[0]) + square(a[1] - b[1]) + square(a[2] - b[2]));
    }

    private static double square(double value) {
        return value * value;
    }
}
