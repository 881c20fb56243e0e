package org.vanewright.backup;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.vanewright.backup.BackupManifest.Column;
import org.vanewright.backup.BackupManifest.Form;

/** Reads and writes rows of any table, some at a time. */
final class RowsRepository {
    /** Rows may hold a megabyte each. */
    private static final int FEW = 20;

    private static final int MANY = 1_000;

    private final JdbcTemplate jdbc;

    RowsRepository(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    long count(String table) {
        Long count = jdbc.queryForObject("select count(*) from " + table, Long.class);
        return count == null ? 0 : count;
    }

    /** 0 where there is no row. */
    long largest(String table, String column) {
        Long largest = jdbc.queryForObject("select max(" + column + ") from " + table, Long.class);
        return largest == null ? 0 : largest;
    }

    /** Gives every row, in the order of its key, reading on from the last one. */
    void each(TableInfo table, Consumer<List<@Nullable Object>> sink) {
        int atOnce = table.columns().stream().anyMatch(c -> c.form() == Form.BYTES) ? FEW : MANY;
        if (table.key().isEmpty()) {
            throw new IllegalStateException("no primary key: " + table.name());
        }
        List<Integer> places = table.key().stream()
                .map(k -> table.columns().stream().map(Column::name).toList().indexOf(k))
                .toList();
        List<@Nullable Object> last = null;
        int read;
        do {
            List<List<@Nullable Object>> page = page(table, places, last, atOnce);
            page.forEach(sink);
            read = page.size();
            last = read == 0 ? last : page.get(read - 1);
        } while (read == atOnce);
    }

    private List<List<@Nullable Object>> page(
            TableInfo table, List<Integer> places, @Nullable List<@Nullable Object> last, int most) {
        String columns = table.columns().stream()
                .map(c -> c.form() == Form.NATIVE ? "cast(" + c.name() + " as varchar)" : c.name())
                .collect(Collectors.joining(", "));
        List<Object> parameters = new ArrayList<>();
        String condition = last == null ? "" : " where " + behind(table, places, last, parameters);
        String sql = "select " + columns + " from " + table.name() + condition + " order by "
                + String.join(", ", table.key()) + " fetch first " + most + " rows only";
        return jdbc.query(sql, (row, n) -> values(table, row), parameters.toArray());
    }

    /** Behind a key of several columns; the first condition alone is what an index is asked for. */
    private static String behind(
            TableInfo table, List<Integer> places, List<@Nullable Object> last, List<Object> parameters) {
        List<String> key = table.key();
        List<String> ways = new ArrayList<>();
        List<Object> first = new ArrayList<>();
        first.add(bound(last.get(places.get(0))));
        List<Object> rest = new ArrayList<>();
        for (int i = 0; i < key.size(); i++) {
            List<String> parts = new ArrayList<>();
            for (int j = 0; j < i; j++) {
                parts.add(key.get(j) + " = ?");
                rest.add(bound(last.get(places.get(j))));
            }
            parts.add(key.get(i) + " > ?");
            rest.add(bound(last.get(places.get(i))));
            ways.add("(" + String.join(" and ", parts) + ")");
        }
        parameters.addAll(first);
        parameters.addAll(rest);
        return key.get(0) + " >= ? and (" + String.join(" or ", ways) + ")";
    }

    private static Object bound(@Nullable Object value) {
        if (value == null) {
            throw new IllegalStateException("a key without a value");
        }
        return value instanceof Instant moment ? moment.atOffset(ZoneOffset.UTC) : value;
    }

    private static List<@Nullable Object> values(TableInfo table, ResultSet row) throws SQLException {
        List<@Nullable Object> values = new ArrayList<>();
        for (int i = 0; i < table.columns().size(); i++) {
            values.add(value(row, i + 1, table.columns().get(i).form()));
        }
        return values;
    }

    private static @Nullable Object value(ResultSet row, int column, Form form) throws SQLException {
        Object value = switch (form) {
            case TEXT, NATIVE -> row.getString(column);
            case WHOLE -> row.getLong(column);
            case DECIMAL -> row.getBigDecimal(column);
            case BOOLEAN -> row.getBoolean(column);
            case MOMENT -> {
                OffsetDateTime at = row.getObject(column, OffsetDateTime.class);
                yield at == null ? null : at.toInstant();
            }
            case BYTES -> row.getBytes(column);
        };
        return row.wasNull() ? null : value;
    }

    void clear(String table) {
        jdbc.update("delete from " + table);
    }

    void insert(TableInfo table, List<List<@Nullable Object>> rows) {
        String columns = table.columns().stream().map(Column::name).collect(Collectors.joining(", "));
        String places = table.columns().stream()
                .map(c -> c.form() == Form.NATIVE ? "cast(? as " + table.types().get(c.name()) + ")" : "?")
                .collect(Collectors.joining(", "));
        String counted = table.counting().isEmpty() ? "" : " overriding system value";
        List<Object[]> batch = rows.stream()
                .map(row -> row.stream()
                        .map(v -> v instanceof Instant moment ? moment.atOffset(ZoneOffset.UTC) : v)
                        .toArray())
                .toList();
        jdbc.batchUpdate(
                "insert into " + table.name() + " (" + columns + ")" + counted + " values (" + places + ")", batch);
    }

    /** Not before everything else is written: H2 commits by it. */
    void countFrom(String table, String column, long next) {
        jdbc.execute("alter table " + table + " alter column " + column + " restart with " + next);
    }
}
