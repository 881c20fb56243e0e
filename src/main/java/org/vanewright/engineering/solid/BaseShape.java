package org.vanewright.engineering.solid;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.solid.DeviceDesign.BaseOutline;

/** The plate: its outline, its upper face's outline inside the bevel, and the height of its underside. */
final class BaseShape {
    /** Semi-axis of an elliptic end along the base, in widths of the base. */
    static final double ELLIPSE_END = 0.75;

    private final Dimensions d;
    private final Ring outline;
    private final List<Point2> upper;

    BaseShape(Dimensions d) {
        this.d = d;
        outline = Ring.mirrored(halfOutline());
        upper = outline.offset(-d.bevel(), d.flush());
    }

    Ring outline() {
        return outline;
    }

    /** Outline of the flat upper face, corner for corner as {@link #outline()}. */
    List<Point2> upper() {
        return upper;
    }

    /** Whether the bevel leaves every edge of the outline something to run along. */
    boolean bevelFits() {
        return d.bevel() == 0 || outline.keepsEdges(upper, 1e-3);
    }

    /** Height of the underside; 0 at the middle of the base. */
    double undersideZ(double x) {
        double k = d.undersideCurvature();
        // R − √(R² − x²), written so that it keeps its digits for a large R
        return -k * x * x / (1 + Math.sqrt(1 - k * k * x * x));
    }

    double upperZ() {
        return d.baseThickness() + Math.max(0, undersideZ(d.baseLength() / 2));
    }

    private List<Point2> halfOutline() {
        double a = d.baseLength() / 2;
        List<Point2> front = end();
        List<Point2> half = new ArrayList<>(front);
        List<Point2> rear = new ArrayList<>();
        if (d.flush()) {
            rear.add(new Point2(a, d.baseWidth() / 2));
        } else {
            for (int i = front.size() - 1; i >= 0; i--) {
                rear.add(new Point2(-front.get(i).x(), front.get(i).y()));
            }
        }
        Point2 from = front.get(front.size() - 1);
        double run = rear.get(0).x() - from.x();
        // two ends that meet share their corner
        if (run > 1e-9) {
            int n = (int) Math.max(1, Math.ceil(run / widestStrip()));
            for (int i = 1; i < n; i++) {
                half.add(new Point2(from.x() + run * i / n, from.y()));
            }
            half.add(rear.get(0));
        }
        half.addAll(rear.subList(1, rear.size()));
        return half;
    }

    /** Width of strip that keeps the faceted underside within tolerance, for slopes up to 30 degrees. */
    private double widestStrip() {
        double k = Math.abs(d.undersideCurvature());
        return k == 0 ? Double.POSITIVE_INFINITY : Math.sqrt(8 * d.tolerance() / k) * Math.cos(Math.PI / 6);
    }

    private List<Point2> end() {
        double w = d.baseWidth() / 2;
        if (d.outline() == BaseOutline.ELLIPSE_ENDED) {
            return arc(Math.min(d.baseLength() / 2, ELLIPSE_END * d.baseWidth()), w, 0);
        }
        if (d.cornerRadius() == 0) {
            return List.of(new Point2(-d.baseLength() / 2, w));
        }
        return arc(d.cornerRadius(), d.cornerRadius(), w - d.cornerRadius());
    }

    /** Quarter ellipse from the front end of the base, {@code startY} off the axis, to its side. */
    private List<Point2> arc(double alongX, double alongY, double startY) {
        // an ellipse is a stretched circle: its chords are off by no more than those of the circle over its longer axis
        int n = Math.max(2, Arcs.segments(Math.max(alongX, alongY), Math.PI / 2, d.tolerance()));
        n = (int) Math.max(n, Math.ceil(alongX * Math.PI / 2 / widestStrip()));
        List<Point2> arc = new ArrayList<>();
        arc.add(new Point2(-d.baseLength() / 2, startY));
        for (int i = 1; i < n; i++) {
            double angle = Math.PI / 2 * i / n;
            arc.add(new Point2(alongX * (1 - Math.cos(angle)) - d.baseLength() / 2, startY + alongY * Math.sin(angle)));
        }
        arc.add(new Point2(alongX - d.baseLength() / 2, d.baseWidth() / 2));
        return arc;
    }
}
