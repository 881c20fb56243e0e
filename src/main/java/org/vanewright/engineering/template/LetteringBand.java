package org.vanewright.engineering.template;

import org.vanewright.engineering.geometry.Point2;

/**
 * Where the lettering of a piece stands: a band along the row, behind the bases or ahead of them. It lies on the far
 * side from the register line; where the skin ends too soon there, between the bases and the register line.
 *
 * @param behind true when it lies behind the bases
 * @param depthMm along the chord
 * @param scale 1, or less where neither side has room for it
 */
record LetteringBand(boolean behind, double depthMm, double scale) {
    /** Depth that three lines, the arrows and the span stations need, square to the row. */
    static final double DEPTH_MM = 34;

    static final double LINE_MM = 5;

    /** On a short piece the same words take more lines. */
    private static final int MAX_FURTHER_LINES = 9;

    private static final double COMFORTABLE_MM = 150;
    private static final double SMALLEST_SCALE = 0.4;
    private static final double LEAST_SINE = 0.5;

    static LetteringBand of(SheetFrame frame, TemplateRow row, PieceSpan span) {
        double wanted = (DEPTH_MM + LINE_MM * furtherLines(span)) / skew(frame, row, span);
        boolean outward = registerIsAhead(frame, row, span);
        double outwardRoom = room(frame, row, span, outward);
        double inwardRoom = room(frame, row, span, !outward);
        boolean away = outwardRoom >= wanted || outwardRoom >= inwardRoom;
        double depth = Math.max(0, Math.min(wanted, away ? outwardRoom : inwardRoom));
        return new LetteringBand(away == outward, depth, Math.max(SMALLEST_SCALE, depth / wanted));
    }

    /** Bases to the edge of the band; ahead of the bases the forward ticks need room too. */
    double marginMm() {
        return behind ? PieceExtent.MARGIN_MM : PieceExtent.MARGIN_AHEAD_MM;
    }

    static int furtherLines(PieceSpan span) {
        double room = Math.max(20, span.lengthMm() - 50);
        return (int) Math.max(0, Math.min(MAX_FURTHER_LINES, Math.ceil(3 * (COMFORTABLE_MM / room - 1))));
    }

    /** Sine of the angle between the row and the chordwise direction: a skewed row makes a band shallower. */
    private static double skew(SheetFrame frame, TemplateRow row, PieceSpan span) {
        Point2 inner = frame.atArc(span.fromMm(), rowArcMm(frame, row, span.fromMm()));
        Point2 outer = frame.atArc(span.toMm(), rowArcMm(frame, row, span.toMm()));
        double middle = (span.fromMm() + span.toMm()) / 2;
        double xOverC = frame.xOverC(middle, rowArcMm(frame, row, middle));
        Point2 rearward = frame.pose(middle, xOverC, 0).rearward();
        return Math.max(LEAST_SINE, Math.abs(rearward.cross(outer.minus(inner))) / outer.distanceTo(inner));
    }

    /** Skin between the bases and where it or the piece ends, on one side of the row, where it is shortest. */
    private static double room(SheetFrame frame, TemplateRow row, PieceSpan span, boolean behind) {
        return Math.min(roomAt(frame, row, span.fromMm(), behind, span), roomAt(frame, row, span.toMm(), behind, span));
    }

    private static double roomAt(SheetFrame frame, TemplateRow row, double stationMm, boolean behind, PieceSpan span) {
        double arc = rowArcMm(frame, row, stationMm);
        boolean registerSide = behind != registerIsAhead(frame, row, span);
        double limit = registerSide ? registerArcMm(frame, row, stationMm) : behind ? frame.wholeArcMm(stationMm) : 0;
        double margin = behind ? PieceExtent.MARGIN_MM : PieceExtent.MARGIN_AHEAD_MM;
        return Math.abs(limit - arc) - row.plan().footprint().reachMm() - margin;
    }

    private static boolean registerIsAhead(SheetFrame frame, TemplateRow row, PieceSpan span) {
        return registerArcMm(frame, row, span.fromMm()) < rowArcMm(frame, row, span.fromMm());
    }

    static double rowArcMm(SheetFrame frame, TemplateRow row, double stationMm) {
        return frame.rowArcMm(row.plan().position(), stationMm);
    }

    static double registerArcMm(SheetFrame frame, TemplateRow row, double stationMm) {
        return switch (row.register()) {
            case LEADING_EDGE -> 0;
            case TRAILING_EDGE -> frame.wholeArcMm(stationMm);
            case SPAR_LINE -> frame.arcMm(stationMm, row.registerXOverC());
        };
    }
}
