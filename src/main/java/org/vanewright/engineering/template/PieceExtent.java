package org.vanewright.engineering.template;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.placement.Station;

/**
 * How far a piece reaches: along the span from a little before its first device to a little after its last, along the
 * chord from the register line over the bases, with a band for lettering beside them.
 */
final class PieceExtent {
    /** Paper round the bases. */
    static final double MARGIN_MM = 8;

    /** Paper between the bases and a band ahead of them, where the forward ticks and the numbers stand. */
    static final double MARGIN_AHEAD_MM = 14;

    private static final double STEP_MM = 25;

    private final SheetFrame frame;
    private final TemplateRow row;
    private final LetteringBand band;
    private final double reachMm;
    private final PieceSpan span;
    private final List<Station> stations;

    PieceExtent(SheetFrame frame, TemplateRow row, List<Station> stations) {
        this.frame = frame;
        this.row = row;
        this.stations = stations;
        this.reachMm = row.plan().footprint().reachMm();
        this.span = PieceSpan.of(frame.panel(), row, stations);
        this.band = LetteringBand.of(frame, row, span);
    }

    PieceSpan span() {
        return span;
    }

    LetteringBand band() {
        return band;
    }

    double fromMm() {
        return span.fromMm();
    }

    double toMm() {
        return span.toMm();
    }

    double reachMm() {
        return reachMm;
    }

    /** True when the lettering lies behind the bases; false when it lies in front of them. */
    boolean bandBehind() {
        return band.behind();
    }

    /** Distance from the leading edge to the front edge of the piece. */
    double frontArcMm(double stationMm) {
        double ahead = band.behind() ? MARGIN_MM : band.marginMm() + band.depthMm();
        double needed = Math.max(0, rowArcMm(stationMm) - reachMm - ahead);
        return registerIsAhead() ? registerArcMm(stationMm) : needed;
    }

    /** Distance from the leading edge to the rear edge of the piece. */
    double rearArcMm(double stationMm) {
        double behind = band.behind() ? band.marginMm() + band.depthMm() : MARGIN_MM;
        double needed = Math.min(frame.wholeArcMm(stationMm), rowArcMm(stationMm) + reachMm + behind);
        return registerIsAhead() ? needed : registerArcMm(stationMm);
    }

    /** Distance from the leading edge to the line between bases and lettering. */
    double bandEdgeArcMm(double stationMm) {
        double reach = reachMm + band.marginMm();
        return band.behind()
                ? Math.min(rowArcMm(stationMm) + reach, rearArcMm(stationMm))
                : Math.max(rowArcMm(stationMm) - reach, frontArcMm(stationMm));
    }

    /** Distance from the leading edge to the upper edge of the band as one reads it. */
    double bandTopArcMm(double stationMm) {
        double edge = bandEdgeArcMm(stationMm);
        return band.behind() ? edge : Math.max(frontArcMm(stationMm), edge - band.depthMm());
    }

    /** Distance from the leading edge to the base centres. */
    double rowArcMm(double stationMm) {
        return LetteringBand.rowArcMm(frame, row, stationMm);
    }

    double registerArcMm(double stationMm) {
        return LetteringBand.registerArcMm(frame, row, stationMm);
    }

    /** Stations to sample an edge at, both ends included. */
    List<Double> samples() {
        return samples(0);
    }

    /** As {@link #samples()}, leaving a little out at both ends. */
    List<Double> samples(double insetMm) {
        double from = fromMm() + insetMm;
        double to = toMm() - insetMm;
        int steps = Math.max(1, (int) Math.ceil((to - from) / STEP_MM));
        List<Double> samples = new ArrayList<>(steps + 1);
        for (int i = 0; i <= steps; i++) {
            samples.add(from + (to - from) * i / steps);
        }
        return samples;
    }

    /** From the end of the piece to the nearest base centre along the span. */
    double toNearestBaseMm(double endMm) {
        return stations.stream()
                .mapToDouble(s -> Math.abs(s.stationMm() - endMm))
                .min()
                .orElseThrow();
    }

    /** @throws InvalidInputException when the spar line runs through the bases */
    void requireRegisterClearOfBases() {
        if (row.register() != Register.SPAR_LINE) {
            return;
        }
        boolean ahead = registerIsAhead();
        for (Station s : stations) {
            double clear = s.arcMm() - registerArcMm(s.stationMm());
            if ((ahead ? clear : -clear) < reachMm) {
                throw new InvalidInputException(new FieldProblem(
                        "rows[" + row.plan().index() + "].registerChordFraction",
                        Double.toString(row.registerXOverC()),
                        "a line that does not run through the bases of the row"));
            }
        }
    }

    private boolean registerIsAhead() {
        return registerArcMm(fromMm()) < rowArcMm(fromMm());
    }
}
