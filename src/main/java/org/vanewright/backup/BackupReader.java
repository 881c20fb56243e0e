package org.vanewright.backup;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.vanewright.backup.BackupManifest.Column;
import org.vanewright.backup.BackupManifest.Entry;

/** Makes an empty database what another one was. */
final class BackupReader {
    /** Rows that the migrations themselves write. */
    private static final Set<String> SEEDED = Set.of("instance_setting", "search_index");

    private static final int MOST_ROWS = 500;
    private static final long MOST_BYTES = 4L << 20;

    private final BackupDatabaseRepository database;

    BackupReader(BackupDatabaseRepository database) {
        this.database = database;
    }

    /**
     * Reads a backup into the database, all of it or nothing, and brings an older one to the schema of this version.
     *
     * @throws BackupRefusal with nothing written, where the backup is damaged or of a newer schema, or the database is not
     *     empty
     */
    BackupManifest read(Path file) throws IOException {
        try (BackupArchive archive = BackupArchive.open(file)) {
            archive.check();
            BackupManifest manifest = archive.manifest();
            boolean bare = requireEmpty(manifest);
            try {
                database.migrate(manifest.schema());
                load(archive);
            } catch (IOException | RuntimeException e) {
                if (bare) {
                    database.leaveBare();
                }
                throw e;
            }
            database.migrate("latest");
            return manifest;
        }
    }

    /** Whether there is not even a table. */
    private boolean requireEmpty(BackupManifest manifest) {
        String newest = database.newestVersion();
        BackupRefusal.require(
                BackupDatabaseRepository.compare(manifest.schema(), newest) <= 0,
                "The backup is of schema " + manifest.schema() + ", which is newer than " + newest
                        + ", the last one that this version of the service knows. Use the version that made it, or a later"
                        + " one.");
        if (database.catalogue().isBare()) {
            return true;
        }
        String here = database.version().orElse("none");
        BackupRefusal.require(
                here.equals(manifest.schema()),
                "The database has schema " + here + ", the backup " + manifest.schema()
                        + ". Give it a database without any tables.");
        for (TableInfo table : database.catalogue().tables()) {
            long rows = SEEDED.contains(table.name()) ? 0 : database.rows().count(table.name());
            BackupRefusal.require(
                    rows == 0,
                    "The database is not empty: " + table.name() + " has " + rows
                            + " rows. Nothing has been changed. Give it a database without any tables.");
        }
        return false;
    }

    private void load(BackupArchive archive) throws IOException {
        List<TableInfo> tables = database.catalogue().tables();
        BackupManifest manifest = archive.manifest();
        boolean sameEngine = manifest.engine().equals(database.engine());
        List<TableInfo> wanted =
                tables.stream().filter(t -> sameEngine || !t.isProjection()).toList();
        compare(wanted, manifest, sameEngine);
        try {
            database.together(() -> {
                for (TableInfo table : wanted) {
                    if (SEEDED.contains(table.name())) {
                        database.rows().clear(table.name());
                    }
                    load(archive, table);
                }
                for (TableInfo table : wanted) {
                    goOnCounting(table, entry(manifest, table));
                }
            });
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static void compare(List<TableInfo> wanted, BackupManifest manifest, boolean sameEngine) {
        Set<String> here = wanted.stream().map(TableInfo::name).collect(Collectors.toCollection(TreeSet::new));
        Set<String> there = manifest.tables().stream()
                .map(Entry::name)
                .filter(name -> sameEngine || !name.startsWith("search_"))
                .collect(Collectors.toCollection(TreeSet::new));
        BackupRefusal.require(
                here.equals(there),
                "The backup holds other tables than its schema has: " + there + " instead of " + here + ".");
        for (TableInfo table : wanted) {
            BackupRefusal.require(
                    forms(table.columns()).equals(forms(entry(manifest, table).columns())),
                    "The table " + table.name() + " has other columns in the backup than in its schema.");
        }
    }

    private static Map<String, BackupManifest.Form> forms(List<Column> columns) {
        return columns.stream().collect(Collectors.toMap(Column::name, Column::form));
    }

    private static Entry entry(BackupManifest manifest, TableInfo table) {
        Entry entry = manifest.table(table.name());
        if (entry == null) {
            throw new BackupRefusal("The backup lacks the table " + table.name() + ".");
        }
        return entry;
    }

    /** In the columns' order of the backup. */
    private void load(BackupArchive archive, TableInfo table) {
        Entry entry = entry(archive.manifest(), table);
        TableInfo ordered = new TableInfo(
                table.name(), entry.columns(), table.key(), table.counting(), table.parents(), table.types());
        List<List<@Nullable Object>> batch = new ArrayList<>();
        long[] bytes = {0};
        try {
            archive.rows(entry, row -> {
                batch.add(row);
                bytes[0] += weight(row);
                if (batch.size() >= MOST_ROWS || bytes[0] >= MOST_BYTES) {
                    database.rows().insert(ordered, batch);
                    batch.clear();
                    bytes[0] = 0;
                }
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (!batch.isEmpty()) {
            database.rows().insert(ordered, batch);
        }
        long here = database.rows().count(table.name());
        if (here != entry.rows()) {
            throw new IllegalStateException(table.name() + " has " + here + " rows instead of " + entry.rows());
        }
    }

    private static long weight(List<@Nullable Object> row) {
        long weight = 0;
        for (Object value : row) {
            weight += value instanceof byte[] bytes ? bytes.length : value instanceof String text ? text.length() : 16;
        }
        return weight;
    }

    /** Numbers are not given twice, be it that the last ones were removed. */
    private void goOnCounting(TableInfo table, Entry entry) {
        for (String column : table.counting().keySet()) {
            long behind = database.rows().largest(table.name(), column) + 1;
            database.rows()
                    .countFrom(
                            table.name(), column, Math.max(behind, entry.next().getOrDefault(column, 1L)));
        }
    }
}
