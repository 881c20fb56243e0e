package org.vanewright.engineering.template;

import java.util.List;
import org.vanewright.engineering.placement.Station;
import org.vanewright.engineering.wing.WingPanel;

/**
 * From where to where along the span a piece reaches: a little before its first device to a little after its last.
 *
 * @param fromMm span station of the inner end
 * @param toMm span station of the outer end
 */
record PieceSpan(double fromMm, double toMm) {
    /** A piece is made at least this long where the panel allows, so that its lettering fits. */
    private static final double MIN_SPAN_MM = 240;

    private static final double ROUNDING_MM = 10;

    static PieceSpan of(WingPanel panel, TemplateRow row, List<Station> stations) {
        double reach = row.plan().footprint().reachMm() + PieceExtent.MARGIN_MM;
        double first = stations.get(0).stationMm() - reach;
        double last = stations.get(stations.size() - 1).stationMm() + reach;
        double lacking = Math.max(0, MIN_SPAN_MM - (last - first)) / 2;
        double from = Math.floor((first - lacking) / ROUNDING_MM) * ROUNDING_MM;
        double to = Math.ceil((last + lacking) / ROUNDING_MM) * ROUNDING_MM;
        return new PieceSpan(Math.max(panel.innerStationMm(), from), Math.min(panel.outerStationMm(), to));
    }

    double lengthMm() {
        return toMm - fromMm;
    }
}
