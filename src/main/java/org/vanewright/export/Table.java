package org.vanewright.export;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.platform.CsvCells;

/**
 * A table of the export.
 *
 * @param name in small letters and underscores
 * @param description what a row is
 * @param key columns that tell rows apart
 */
record Table<R>(
        String name,
        String description,
        List<Column<R>> columns,
        List<String> key,
        List<Columns.ForeignKey> foreignKeys) {
    static <R> Table<R> of(String name, String description, List<String> key, Columns<R> columns) {
        return new Table<>(name, description, columns.all(), key, columns.foreignKeys());
    }

    List<String> header() {
        return columns.stream().map(Column::name).toList();
    }

    /** A row as it is written: nothing where there is no value, and no text that a spreadsheet would run as a formula. */
    List<String> cells(R row) {
        return columns.stream().map(c -> cell(c.value().apply(row))).toList();
    }

    private static String cell(@Nullable Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof Double number) {
            return Double.isFinite(number) ? new BigDecimal(number.toString()).toPlainString() : "";
        }
        if (value instanceof Instant time) {
            return time.truncatedTo(ChronoUnit.SECONDS).toString();
        }
        return value instanceof String text ? CsvCells.defuse(text) : value.toString();
    }
}
