package org.vanewright.engineering.flow;

import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SkinPoint;
import org.vanewright.engineering.section.SurfaceSide;

/**
 * Where the panel ends of one side go. The cosine of arc length, which crowds them at both ends, is the measure along
 * which they would be even; a part of them goes instead where the skin bends, by the root of its curvature.
 *
 * <p>Curvature is the turn of the skin between places a panel or two apart, smoothed, so that the ripples of coordinates
 * cancel; towards the trailing edge it counts for nothing, since both sides' panels must match there. The density of ends
 * changes gently, by at most {@value #STEEPEST} times itself over the whole side. No panel is longer than that of the
 * cosine alone by more than the part that curvature takes.
 */
final class PanelSpread {
    /** Part of the ends that goes by curvature. */
    static final double BY_CURVATURE = 0.3;

    /**
     * The cosine's angle at the trailing edge falls short of π by this over the number of panels: panels there are less
     * short than at the nose, for a layer is thicker there, yet shrink with the square of their number, as the root of
     * distance by which the load on a thin edge falls asks for.
     */
    private static final double SHORT_OF_HALF_TURN = 32;

    private static final double FARTHEST_SHORT = 1;
    /** The angle at the nose, in panels, so that the first two do not differ threefold. */
    private static final double FIRST = 1;

    private static final int SAMPLES = 64;
    private static final int SMOOTHINGS = 3;
    private static final double STEEPEST = 10;
    /** Parts of the side between which curvature ceases to count. */
    private static final double COUNTS_TO = 0.6;

    private static final double COUNTS_NO_MORE = 0.9;

    private final double firstAngle;
    private final double shortOfHalfTurn;
    /** Density of ends over the cosine's measure, at the samples, and the part of the ends up to each. */
    private final double[] density;

    private final double[] part = new double[SAMPLES + 1];

    private PanelSpread(Section section, SurfaceSide side, int panels) {
        firstAngle = FIRST * Math.PI / panels;
        shortOfHalfTurn = Math.min(FARTHEST_SHORT, SHORT_OF_HALF_TURN / panels);
        density = bending(section, side);
        smooth(density);
        mixWithEven(density);
        soften(density);
        for (int k = 1; k <= SAMPLES; k++) {
            part[k] = part[k - 1] + 0.5 * (density[k - 1] + density[k]) / SAMPLES;
        }
    }

    /** Arc lengths of the ends from the leading edge, one more than panels. */
    static double[] arcs(Section section, SurfaceSide side, int panels) {
        PanelSpread spread = new PanelSpread(section, side, panels);
        double length = section.arcLength(side);
        double[] arcs = new double[panels + 1];
        for (int i = 1; i < panels; i++) {
            arcs[i] = length * spread.cosine(spread.measure((double) i / panels));
        }
        arcs[panels] = length;
        return arcs;
    }

    /** Part of the side's length by part of the cosine's measure. */
    private double cosine(double measure) {
        double last = Math.PI - shortOfHalfTurn;
        double from = Math.cos(firstAngle);
        return (from - Math.cos(firstAngle + (last - firstAngle) * measure)) / (from - Math.cos(last));
    }

    /** Root of curvature over the measure, without a unit. */
    private double[] bending(Section section, SurfaceSide side) {
        double length = section.arcLength(side);
        double[] arc = new double[SAMPLES + 1];
        SkinPoint[] skin = new SkinPoint[SAMPLES + 1];
        for (int k = 0; k <= SAMPLES; k++) {
            arc[k] = length * Math.min(1, cosine((double) k / SAMPLES));
            skin[k] = section.atArcLength(side, arc[k]);
        }
        double[] bending = new double[SAMPLES + 1];
        for (int k = 0; k <= SAMPLES; k++) {
            int before = Math.max(0, k - 1);
            int after = Math.min(SAMPLES, k + 1);
            double width = (arc[after] - arc[before]) / length;
            double turn = Math.abs(turn(skin[before], skin[after]));
            bending[k] = counts(arc[k] / length) * Math.sqrt(turn * width) / (after - before);
        }
        return bending;
    }

    private static double turn(SkinPoint a, SkinPoint b) {
        double sine = a.tangentX() * b.tangentY() - a.tangentY() * b.tangentX();
        double cosine = a.tangentX() * b.tangentX() + a.tangentY() * b.tangentY();
        return Math.atan2(sine, cosine);
    }

    private static double counts(double along) {
        double t = Math.max(0, Math.min(1, (COUNTS_NO_MORE - along) / (COUNTS_NO_MORE - COUNTS_TO)));
        return t * t * (3 - 2 * t);
    }

    private static void smooth(double[] values) {
        int last = values.length - 1;
        for (int pass = 0; pass < SMOOTHINGS; pass++) {
            double before = values[0];
            for (int k = 0; k <= last; k++) {
                double here = values[k];
                double after = values[Math.min(last, k + 1)];
                values[k] = 0.25 * (before + 2 * here + after);
                before = here;
            }
        }
    }

    private static void mixWithEven(double[] bending) {
        double mean = mean(bending);
        for (int k = 0; k < bending.length; k++) {
            bending[k] = 1 - BY_CURVATURE + (mean > 0 ? BY_CURVATURE * bending[k] / mean : BY_CURVATURE);
        }
    }

    /** Raises what falls off too steeply, and takes the whole back to 1. */
    private static void soften(double[] values) {
        double most = Math.exp(STEEPEST / SAMPLES);
        int last = values.length - 1;
        for (int k = 1; k <= last; k++) {
            values[k] = Math.max(values[k], values[k - 1] / most);
        }
        for (int k = last - 1; k >= 0; k--) {
            values[k] = Math.max(values[k], values[k + 1] / most);
        }
        double mean = mean(values);
        for (int k = 0; k <= last; k++) {
            values[k] /= mean;
        }
    }

    /** By trapezes. */
    private static double mean(double[] values) {
        double sum = -0.5 * (values[0] + values[values.length - 1]);
        for (double value : values) {
            sum += value;
        }
        return sum / (values.length - 1);
    }

    /** The cosine's measure up to which this part of the ends stands; density is linear between samples. */
    private double measure(double wanted) {
        int k = 0;
        while (k < SAMPLES - 1 && part[k + 1] < wanted) {
            k++;
        }
        double rest = SAMPLES * (wanted - part[k]);
        double rise = density[k + 1] - density[k];
        double within = 2 * rest / (density[k] + Math.sqrt(Math.max(0, density[k] * density[k] + 2 * rise * rest)));
        return (k + Math.min(1, within)) / SAMPLES;
    }
}
