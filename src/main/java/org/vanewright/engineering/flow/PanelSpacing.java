package org.vanewright.engineering.flow;

import java.util.List;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SkinPoint;
import org.vanewright.engineering.section.SurfaceSide;

/**
 * Where panels end on one side: evenly in a measure of the skin that counts, beside the cosine of arc length, the root of
 * curvature. So they crowd at the nose and wherever else the skin bends, and less so at the trailing edge.
 */
final class PanelSpacing {
    /**
     * The cosine's angle at the trailing edge falls short of π by this over the number of panels: panels there are less
     * short than at the nose, for a layer is thicker there, yet shrink with the square of their number, as the root of
     * distance by which the load on a thin edge falls asks for.
     */
    private static final double SHORT_OF_HALF_TURN = 65;

    private static final double FARTHEST_SHORT = 1;

    /** Part of the panels that curvature sets out. */
    private static final double BY_CURVATURE = 0.3;
    /** Sharpest bend that counts, times the length of the side: a nose of 0.25 % radius. */
    private static final double SHARPEST = 400;

    private static final int SAMPLES = 80;
    /** Passes of a running mean over three samples, against the ripples of given coordinates. */
    private static final int MEANS = 4;

    private PanelSpacing() {}

    /** Panel ends from the leading edge on. */
    static List<SkinPoint> ends(Section section, SurfaceSide side, int panels) {
        double length = section.arcLength(side);
        double[] cosine = new double[SAMPLES + 1];
        for (int i = 0; i <= SAMPLES; i++) {
            cosine[i] = length * cosine(i / (double) SAMPLES, panels);
        }
        cosine[SAMPLES] = length;
        List<SkinPoint> samples = section.nearArcLengths(side, cosine);
        double[] measure = measure(samples, length);
        double[] arcs = new double[panels + 1];
        int piece = 0;
        for (int i = 1; i < panels; i++) {
            double wanted = measure[SAMPLES] * i / panels;
            while (measure[piece + 1] < wanted) {
                piece++;
            }
            double part = (piece + (wanted - measure[piece]) / (measure[piece + 1] - measure[piece])) / SAMPLES;
            arcs[i] = length * cosine(part, panels);
        }
        arcs[panels] = length;
        return section.nearArcLengths(side, arcs);
    }

    /** Grows from sample to sample by one, mixed with their mean of the root of curvature. */
    private static double[] measure(List<SkinPoint> samples, double length) {
        double[] bends = new double[SAMPLES + 1];
        for (int i = 0; i <= SAMPLES; i++) {
            bends[i] = Math.sqrt(Math.min(SHARPEST, Math.abs(samples.get(i).curvature()) * length));
        }
        for (int i = 0; i < MEANS; i++) {
            bends = means(bends);
        }
        for (int i = 0; i <= SAMPLES; i++) {
            // the trailing edge is the cosine's alone, so that four times shorter panels stand there at twice their
            // number
            bends[i] *= 1 - (double) (i * i) / (SAMPLES * SAMPLES);
        }
        double[] turned = new double[SAMPLES + 1];
        for (int i = 1; i <= SAMPLES; i++) {
            double piece = samples.get(i).arcLength() - samples.get(i - 1).arcLength();
            turned[i] = turned[i - 1] + 0.5 * (bends[i - 1] + bends[i]) * piece;
        }
        double scale = SAMPLES / Math.max(1e-12, turned[SAMPLES]);
        for (int i = 0; i <= SAMPLES; i++) {
            turned[i] = (1 - BY_CURVATURE) * i + BY_CURVATURE * scale * turned[i];
        }
        return turned;
    }

    private static double[] means(double[] values) {
        double[] means = values.clone();
        for (int i = 1; i + 1 < values.length; i++) {
            means[i] = 0.25 * (values[i - 1] + 2 * values[i] + values[i + 1]);
        }
        return means;
    }

    private static double cosine(double part, int panels) {
        double whole = Math.PI - Math.min(FARTHEST_SHORT, 0.5 * SHORT_OF_HALF_TURN / panels);
        return (1 - Math.cos(whole * part)) / (1 - Math.cos(whole));
    }
}
