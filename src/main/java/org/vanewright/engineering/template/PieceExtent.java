package org.vanewright.engineering.template;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.placement.Station;
import org.vanewright.engineering.wing.WingPanel;

/**
 * How far a piece reaches: along the span from a little before its first device to a little after its last, along the
 * chord from the register line over the bases to a band for lettering on the far side.
 */
final class PieceExtent {
    /** Paper round the bases. */
    static final double MARGIN_MM = 8;

    /** Depth of the band that carries the lettering. */
    static final double BAND_MM = 34;

    /** A piece is made at least this long where the panel allows, so that its lettering fits. */
    private static final double MIN_SPAN_MM = 240;

    private static final double STEP_MM = 25;
    private static final double ROUNDING_MM = 10;

    private final SheetFrame frame;
    private final TemplateRow row;
    private final double reachMm;
    private final double fromMm;
    private final double toMm;
    private final List<Station> stations;

    PieceExtent(SheetFrame frame, TemplateRow row, List<Station> stations) {
        this.frame = frame;
        this.row = row;
        this.stations = stations;
        this.reachMm = row.plan().footprint().reachMm();
        WingPanel panel = frame.panel();
        double reach = reachMm + MARGIN_MM;
        double first = stations.get(0).stationMm() - reach;
        double last = stations.get(stations.size() - 1).stationMm() + reach;
        double lacking = Math.max(0, MIN_SPAN_MM - (last - first)) / 2;
        double from = Math.floor((first - lacking) / ROUNDING_MM) * ROUNDING_MM;
        double to = Math.ceil((last + lacking) / ROUNDING_MM) * ROUNDING_MM;
        this.fromMm = Math.max(panel.innerStationMm(), from);
        this.toMm = Math.min(panel.outerStationMm(), to);
    }

    double fromMm() {
        return fromMm;
    }

    double toMm() {
        return toMm;
    }

    double reachMm() {
        return reachMm;
    }

    /** True when the lettering lies behind the bases; false when it lies in front of them. */
    boolean bandBehind() {
        return switch (row.register()) {
            case LEADING_EDGE -> true;
            case TRAILING_EDGE -> false;
            case SPAR_LINE -> registerIsAhead();
        };
    }

    /** Distance from the leading edge to the front edge of the piece. */
    double frontArcMm(double stationMm) {
        if (row.register() == Register.LEADING_EDGE) {
            return 0;
        }
        return bandBehind()
                ? registerArcMm(stationMm)
                : Math.max(0, rowArcMm(stationMm) - reachMm - MARGIN_MM - BAND_MM);
    }

    /** Distance from the leading edge to the rear edge of the piece. */
    double rearArcMm(double stationMm) {
        return bandBehind()
                ? Math.min(frame.wholeArcMm(stationMm), rowArcMm(stationMm) + reachMm + MARGIN_MM + BAND_MM)
                : registerArcMm(stationMm);
    }

    /** Distance from the leading edge to the line between bases and lettering. */
    double bandEdgeArcMm(double stationMm) {
        double reach = reachMm + MARGIN_MM;
        return bandBehind()
                ? Math.min(rowArcMm(stationMm) + reach, rearArcMm(stationMm))
                : Math.max(rowArcMm(stationMm) - reach, frontArcMm(stationMm));
    }

    /** Distance from the leading edge to the base centres. */
    double rowArcMm(double stationMm) {
        return RowLineArc.arcMm(frame, row.plan().position(), stationMm);
    }

    double registerArcMm(double stationMm) {
        return switch (row.register()) {
            case LEADING_EDGE -> 0;
            case TRAILING_EDGE -> frame.wholeArcMm(stationMm);
            case SPAR_LINE -> frame.arcMm(stationMm, row.registerXOverC());
        };
    }

    /** Stations to sample an edge at, both ends included. */
    List<Double> samples() {
        int steps = Math.max(1, (int) Math.ceil((toMm - fromMm) / STEP_MM));
        List<Double> samples = new ArrayList<>(steps + 1);
        for (int i = 0; i <= steps; i++) {
            samples.add(fromMm + (toMm - fromMm) * i / steps);
        }
        return samples;
    }

    /** @throws InvalidInputException when the spar line runs through the bases */
    void requireRegisterClearOfBases() {
        if (row.register() != Register.SPAR_LINE) {
            return;
        }
        for (Station s : stations) {
            if (Math.abs(registerArcMm(s.stationMm()) - s.arcMm()) < reachMm) {
                throw new InvalidInputException(new FieldProblem(
                        "rows[" + row.plan().index() + "].registerChordFraction",
                        Double.toString(row.registerXOverC()),
                        "a line that does not run through the bases of the row"));
            }
        }
    }

    private boolean registerIsAhead() {
        Station first = stations.get(0);
        return registerArcMm(first.stationMm()) < first.arcMm();
    }
}
