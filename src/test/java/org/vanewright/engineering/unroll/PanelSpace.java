package org.vanewright.engineering.unroll;

import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SkinPoint;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.wing.WingPanel;

/** The panel in space, written down independently of the code under test. */
final class PanelSpace {
    private PanelSpace() {}

    static WingPanel panel(
            double span, double inner, double outer, double offset, Section in, Section out, double twist) {
        return new WingPanel(250, 250 + span, inner, outer, 40, 40 + offset, in, out, twist);
    }

    static WingPanel panel(double span, double inner, double outer, double offset, Section section) {
        return panel(span, inner, outer, offset, section, section, 0);
    }

    /** x rearward, y outboard, z up from the inner leading edge. */
    static double[] point(WingPanel panel, SurfaceSide side, double t, double chordFraction) {
        double[] a = onSection(panel.innerSection(), side, chordFraction, panel.innerChordMm(), 0);
        double[] b = onSection(panel.outerSection(), side, chordFraction, panel.outerChordMm(), panel.twistDeg());
        double sweep = panel.outerLeadingEdgeMm() - panel.innerLeadingEdgeMm();
        return new double[] {
            (1 - t) * a[0] + t * (b[0] + sweep), t * panel.spanMm(), (1 - t) * a[1] + t * b[1],
        };
    }

    private static double[] onSection(Section section, SurfaceSide side, double x, double chord, double twistDeg) {
        SkinPoint p = x == 0 ? section.atArcLength(side, 0) : section.atX(side, Math.min(x, section.maximumX(side)));
        double angle = -Math.toRadians(twistDeg);
        double c = Math.cos(angle);
        double s = Math.sin(angle);
        return new double[] {chord * (p.x() * c - p.y() * s), chord * (p.x() * s + p.y() * c)};
    }

    static double distance(double[] a, double[] b) {
        double dx = a[0] - b[0];
        double dy = a[1] - b[1];
        double dz = a[2] - b[2];
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }

    /** The surface in space, from pairs of plane triangles. */
    static double area(WingPanel panel, SurfaceSide side, int n) {
        double coarse = facetArea(panel, side, n);
        double fine = facetArea(panel, side, 2 * n);
        return fine + (fine - coarse) / 3;
    }

    private static double facetArea(WingPanel panel, SurfaceSide side, int n) {
        int spanwise = n / 8;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < spanwise; j++) {
                double[] a = point(panel, side, (double) j / spanwise, square(i, n));
                double[] b = point(panel, side, (double) j / spanwise, square(i + 1, n));
                double[] c = point(panel, side, (double) (j + 1) / spanwise, square(i + 1, n));
                double[] d = point(panel, side, (double) (j + 1) / spanwise, square(i, n));
                sum += triangle(a, b, c) + triangle(a, c, d);
            }
        }
        return sum;
    }

    /** Chord fractions closer together at the nose. */
    static double square(int i, int n) {
        double f = (double) i / n;
        return f * f * (3 - 2 * f);
    }

    private static double triangle(double[] a, double[] b, double[] c) {
        double[] u = {b[0] - a[0], b[1] - a[1], b[2] - a[2]};
        double[] v = {c[0] - a[0], c[1] - a[1], c[2] - a[2]};
        double x = u[1] * v[2] - u[2] * v[1];
        double y = u[2] * v[0] - u[0] * v[2];
        double z = u[0] * v[1] - u[1] * v[0];
        return 0.5 * Math.sqrt(x * x + y * y + z * z);
    }

    /** Area inside the outline of the sheet, from polygons. */
    static double flatArea(FlatSkin skin, int n) {
        double coarse = polygonArea(skin, n);
        double fine = polygonArea(skin, 2 * n);
        return fine + (fine - coarse) / 3;
    }

    private static double polygonArea(FlatSkin skin, int n) {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += skin.toFlat(0, square(i, n)).cross(skin.toFlat(0, square(i + 1, n)));
            sum -= skin.toFlat(1, square(i, n)).cross(skin.toFlat(1, square(i + 1, n)));
        }
        Point2 trailing = skin.toFlat(0, 1);
        sum += trailing.cross(skin.toFlat(1, 1));
        return 0.5 * Math.abs(sum);
    }
}
