package org.vanewright.engineering.bond;

/**
 * A base on its tape, tipped about one edge.
 *
 * @param edgeMm length of the edge about which it is tipped
 * @param acrossMm from that edge to the far one
 * @param tapeThicknessMm of the tape or bond line
 */
public record TapedBase(double edgeMm, double acrossMm, double tapeThicknessMm) {
    /** The same base tipped the other way. */
    public TapedBase turned() {
        return new TapedBase(acrossMm, edgeMm, tapeThicknessMm);
    }

    double areaM2() {
        return edgeMm * acrossMm * 1e-6;
    }

    double acrossM() {
        return acrossMm * 1e-3;
    }

    double edgeM() {
        return edgeMm * 1e-3;
    }

    /** Moment of a load about the underside of the tape: F (h_F + t). */
    double momentNm(BondLoad load) {
        return load.forceN() * (load.heightMm() + tapeThicknessMm) * 1e-3;
    }
}
