package org.vanewright.layout.web;

import java.util.List;
import java.util.Locale;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.layout.StationRow;
import org.vanewright.platform.page.HtmlRows;
import org.vanewright.platform.page.Units;

/**
 * The stations of one wing as rows of a table.
 *
 * @param name of the wing in words
 * @param html rows
 */
public record StationRows(String name, String html) {
    /** Of both wings, those without a device left out. */
    static List<StationRows> of(List<StationRow> stations, Units units) {
        return List.of(Wing.LEFT, Wing.RIGHT).stream()
                .filter(wing -> stations.stream().anyMatch(s -> s.wing() == wing))
                .map(wing ->
                        new StationRows(wing == Wing.LEFT ? "Left wing" : "Right wing", rows(wing, stations, units)))
                .toList();
    }

    private static String rows(Wing wing, List<StationRow> stations, Units units) {
        HtmlRows rows = new HtmlRows();
        stations.stream().filter(s -> s.wing() == wing).forEach(s -> row(rows, s, units));
        return rows.html();
    }

    private static void row(HtmlRows rows, StationRow s, Units units) {
        String hand = s.hand().name().toLowerCase(Locale.ROOT).replace('_', '-');
        rows.row(Integer.toString(s.device()))
                .words(s.rowName())
                .figure(units.length(s.spanStationMm()))
                .figure(units.length(s.chordMm()))
                .figure(units.share(s.chordFraction()))
                .figure(units.length(s.arcFromLeadingEdgeMm()))
                .figure(units.angle(s.angleDeg()))
                .words(s.moved() ? hand + ", moved" : hand);
    }
}
