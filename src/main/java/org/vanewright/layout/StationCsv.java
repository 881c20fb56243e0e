package org.vanewright.layout;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.vanewright.platform.CsvCells;

/** The station table as comma-separated values (RFC 4180), units in the column names. */
public final class StationCsv {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setHeader(
                    "surface",
                    "wing",
                    "device",
                    "row",
                    "row_name",
                    "side",
                    "panel",
                    "span_station_mm",
                    "chord_mm",
                    "chord_fraction",
                    "arc_from_leading_edge_mm",
                    "angle_deg",
                    "hand",
                    "skin_radius_mm",
                    "moved")
            .get();

    private StationCsv() {}

    public static String write(List<StationRow> rows) {
        StringBuilder out = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(out, FORMAT)) {
            for (StationRow r : rows) {
                printer.printRecord(
                        CsvCells.defuse(r.surface()),
                        r.wing(),
                        r.device(),
                        r.row(),
                        CsvCells.defuse(r.rowName()),
                        r.side(),
                        r.panel(),
                        number("%.2f", r.spanStationMm()),
                        number("%.2f", r.chordMm()),
                        number("%.5f", r.chordFraction()),
                        number("%.2f", r.arcFromLeadingEdgeMm()),
                        number("%.2f", r.angleDeg()),
                        r.hand(),
                        r.skinRadiusMm() == null ? "" : number("%.0f", r.skinRadiusMm()),
                        r.moved());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    private static String number(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
