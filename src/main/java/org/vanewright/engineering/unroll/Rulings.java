package org.vanewright.engineering.unroll;

import java.util.Arrays;
import org.vanewright.engineering.section.SkinPoint;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.wing.WingPanel;

/** The rulings of a panel, straight lines between places of one chord fraction, over the parameter u of its ends. */
final class Rulings {
    private final EndCurve inner;
    private final EndCurve outer;
    private final double innerChordMm;
    private final double outerChordMm;
    private final Vector3 tip;
    private final double twistCos;
    private final double twistSin;

    Rulings(WingPanel panel, SurfaceSide side) {
        this.inner = new EndCurve(panel.innerSection(), side);
        this.outer = new EndCurve(panel.outerSection(), side);
        this.innerChordMm = panel.innerChordMm();
        this.outerChordMm = panel.outerChordMm();
        this.tip = new Vector3(panel.outerLeadingEdgeMm() - panel.innerLeadingEdgeMm(), panel.spanMm(), 0);
        this.twistCos = Math.cos(Math.toRadians(panel.twistDeg()));
        this.twistSin = Math.sin(Math.toRadians(panel.twistDeg()));
    }

    double first() {
        return inner.hasBrow() || outer.hasBrow() ? -1 : 0;
    }

    double last() {
        return Math.sqrt(Math.max(inner.maximumX(), outer.maximumX()));
    }

    /** Ascending; between them the rulings move smoothly, as far as the sections do. */
    double[] edges() {
        double[] ends = {
            Math.sqrt(inner.frontX()),
            Math.sqrt(outer.frontX()),
            Math.sqrt(inner.maximumX()),
            Math.sqrt(outer.maximumX())
        };
        int parts = 12;
        double[] edges = new double[parts + 1 + ends.length + 1];
        for (int i = 0; i <= parts; i++) {
            edges[i] = last() * i / parts;
        }
        System.arraycopy(ends, 0, edges, parts + 1, ends.length);
        edges[edges.length - 1] = first();
        Arrays.sort(edges);
        return edges;
    }

    /** Chord at a span fraction. */
    double chordMm(double spanFraction) {
        return innerChordMm + spanFraction * (outerChordMm - innerChordMm);
    }

    double longestChordMm() {
        return Math.max(innerChordMm, outerChordMm);
    }

    /** u of a chord fraction; 0 is the leading edge itself. */
    double parameter(double chordFraction) {
        return chordFraction == 0 ? first() : Math.min(Math.sqrt(chordFraction), last());
    }

    static double chordFraction(double u) {
        return u <= 0 ? 0 : Math.min(u * u, 1);
    }

    RulingEnds at(double u) {
        SkinPoint innerAt = inner.at(u);
        SkinPoint outerAt = outer.at(u);
        return new RulingEnds(
                EndCurve.place(innerAt, innerChordMm),
                tip.plus(twisted(EndCurve.place(outerAt, outerChordMm))),
                EndCurve.direction(innerAt, innerChordMm * inner.arcRate(u, innerAt)),
                twisted(EndCurve.direction(outerAt, outerChordMm * outer.arcRate(u, outerAt))));
    }

    /** Turned about the section's origin, nose up. */
    private Vector3 twisted(Vector3 v) {
        return new Vector3(v.x() * twistCos + v.z() * twistSin, v.y(), v.z() * twistCos - v.x() * twistSin);
    }
}
