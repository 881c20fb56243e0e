package org.vanewright.engineering.tape;

import java.util.List;

/**
 * A cut plan.
 *
 * @param rollWidthMm of the tape
 * @param lengthMm of tape that it takes
 * @param pieceAreaMm2 of all pieces, by their outlines
 * @param kinds of pieces
 * @param cuts every piece at its place
 */
public record TapePlan(
        double rollWidthMm, double lengthMm, double pieceAreaMm2, List<TapePiece> kinds, List<CutPiece> cuts) {
    public TapePlan {
        kinds = List.copyOf(kinds);
        cuts = List.copyOf(cuts);
    }

    public double tapeAreaMm2() {
        return rollWidthMm * lengthMm;
    }

    /** Fraction of the tape that becomes no piece; 0 where nothing is cut. */
    public double waste() {
        return cuts.isEmpty() ? 0 : 1 - pieceAreaMm2 / tapeAreaMm2();
    }
}
