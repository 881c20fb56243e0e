package org.vanewright.backup;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What a backup holds.
 *
 * @param format {@value #FORMAT}
 * @param version of the archive's form
 * @param schema version of the database's schema, as the migrations count it
 * @param engine database it was made of: {@code h2} or {@code postgresql}
 * @param madeAt in ISO 8601
 * @param tables every table but the migrations' own
 */
record BackupManifest(String format, int version, String schema, String engine, String madeAt, List<Entry> tables) {
    @SuppressWarnings("NullAway") // an archive may lack anything
    BackupManifest {
        schema = schema == null ? "" : schema;
        engine = engine == null ? "" : engine;
        tables = tables == null ? List.of() : List.copyOf(tables);
    }

    static final String NAME = "backup.json";
    static final String FORMAT = "vanewright-backup";
    static final int VERSION = 1;

    /**
     * A table.
     *
     * @param name of the table
     * @param columns each with how its values are written, in their order
     * @param rows how many
     * @param bytes of the file
     * @param sha256 of the file
     * @param next value of each column that counts by itself
     */
    record Entry(String name, List<Column> columns, long rows, long bytes, String sha256, Map<String, Long> next) {
        @SuppressWarnings("NullAway") // an archive may lack anything
        Entry {
            name = name == null ? "" : name;
            columns = columns == null ? List.of() : List.copyOf(columns);
            sha256 = sha256 == null ? "" : sha256;
            next = next == null ? Map.of() : Map.copyOf(next);
        }

        /** File of the archive: a JSON array of values a line. */
        String file() {
            return "tables/" + name + ".jsonl";
        }
    }

    /** A column and how its values are written. */
    record Column(String name, Form form) {}

    /** How values are written, whatever database they are of. */
    enum Form {
        /** A JSON string. */
        TEXT,
        /** A JSON number without a fraction. */
        WHOLE,
        /** A JSON number. */
        DECIMAL,
        /** JSON's true or false. */
        BOOLEAN,
        /** A moment in ISO 8601, UTC. */
        MOMENT,
        /** Base64. */
        BYTES,
        /** What one database alone knows, as its own text. */
        NATIVE
    }

    @Nullable
    Entry table(String name) {
        return tables.stream().filter(t -> t.name().equals(name)).findFirst().orElse(null);
    }
}
