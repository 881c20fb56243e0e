package org.vanewright.backup;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.springframework.jdbc.core.JdbcTemplate;
import org.vanewright.backup.BackupManifest.Column;
import org.vanewright.backup.BackupManifest.Form;

/** Reads from the database's catalogue which tables there are, so that none is forgotten. */
final class CatalogueRepository {
    private static final String HISTORY = "flyway_schema_history";

    private final JdbcTemplate jdbc;
    private final boolean postgres;

    CatalogueRepository(JdbcTemplate jdbc, boolean postgres) {
        this.jdbc = jdbc;
        this.postgres = postgres;
    }

    /** Every table but that of the migrations, parents before their children. */
    List<TableInfo> tables() {
        Map<String, TableInfo> found = new TreeMap<>();
        for (String name : names()) {
            found.put(name, table(name));
        }
        List<TableInfo> ordered = new ArrayList<>();
        Set<String> placed = new TreeSet<>();
        while (ordered.size() < found.size()) {
            List<TableInfo> next = found.values().stream()
                    .filter(t -> !placed.contains(t.name()) && placed.containsAll(t.parents()))
                    .toList();
            if (next.isEmpty()) {
                throw new IllegalStateException("tables refer to each other in a circle: " + found.keySet());
            }
            next.forEach(t -> placed.add(t.name()));
            ordered.addAll(next);
        }
        return ordered;
    }

    /** Whether it has any table, be it of the migrations. */
    boolean isBare() {
        return names().isEmpty() && !hasHistory();
    }

    boolean hasHistory() {
        return count("lower(table_name) = '" + HISTORY + "'") > 0;
    }

    private int count(String condition) {
        Integer count = jdbc.queryForObject(
                "select count(*) from information_schema.tables where table_schema = 'public' and " + condition,
                Integer.class);
        return count == null ? 0 : count;
    }

    private List<String> names() {
        return jdbc.queryForList(
                "select table_name from information_schema.tables where table_schema = 'public'"
                        + " and table_type = 'BASE TABLE' and lower(table_name) <> '" + HISTORY
                        + "' order by table_name",
                String.class);
    }

    private TableInfo table(String name) {
        List<Column> columns = new ArrayList<>();
        Map<String, String> types = new HashMap<>();
        Map<String, Long> counting = new LinkedHashMap<>();
        jdbc.query(
                "select column_name, data_type, is_identity from information_schema.columns"
                        + " where table_schema = 'public' and table_name = ? order by ordinal_position",
                row -> {
                    String column = row.getString(1);
                    String type = row.getString(2).toLowerCase(Locale.ROOT);
                    columns.add(new Column(column, form(type)));
                    types.put(column, type);
                    if (row.getString(3).equals("YES")) {
                        counting.put(column, 0L);
                    }
                },
                name);
        counting.replaceAll((column, none) -> next(name, column));
        return jdbc.execute((Connection connection) -> new TableInfo(
                name,
                List.copyOf(columns),
                key(connection.getMetaData(), name),
                counting,
                parents(connection.getMetaData(), name),
                types));
    }

    private static Form form(String type) {
        return switch (type) {
            case "character varying", "character", "text", "character large object" -> Form.TEXT;
            case "smallint", "integer", "bigint" -> Form.WHOLE;
            case "double precision", "real", "numeric", "decfloat" -> Form.DECIMAL;
            case "boolean" -> Form.BOOLEAN;
            case "timestamp with time zone" -> Form.MOMENT;
            case "bytea", "binary varying", "binary large object" -> Form.BYTES;
            default -> Form.NATIVE;
        };
    }

    private Long next(String table, String column) {
        return postgres ? nextOfSequence(table, column) : nextOfColumn(table, column);
    }

    private Long nextOfSequence(String table, String column) {
        String sequence = jdbc.queryForObject("select pg_get_serial_sequence(?, ?)", String.class, table, column);
        Long next = jdbc.queryForObject(
                "select last_value + case when is_called then 1 else 0 end from " + sequence, Long.class);
        return next == null ? 1 : next;
    }

    private Long nextOfColumn(String table, String column) {
        Long next = jdbc.queryForObject(
                "select identity_base from information_schema.columns where table_schema = 'public'"
                        + " and table_name = ? and column_name = ?",
                Long.class,
                table,
                column);
        return next == null ? 1 : next;
    }

    private static List<String> key(DatabaseMetaData data, String table) throws SQLException {
        Map<Integer, String> columns = new TreeMap<>();
        try (ResultSet rows = data.getPrimaryKeys(null, "public", table)) {
            while (rows.next()) {
                columns.put(rows.getInt("KEY_SEQ"), rows.getString("COLUMN_NAME"));
            }
        }
        return List.copyOf(columns.values());
    }

    private static Set<String> parents(DatabaseMetaData data, String table) throws SQLException {
        Set<String> parents = new TreeSet<>();
        try (ResultSet rows = data.getImportedKeys(null, "public", table)) {
            while (rows.next()) {
                parents.add(rows.getString("PKTABLE_NAME"));
            }
        }
        parents.remove(table);
        return parents;
    }
}
