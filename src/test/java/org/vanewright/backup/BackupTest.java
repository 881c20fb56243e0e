package org.vanewright.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import com.zaxxer.hikari.HikariDataSource;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.env.MockEnvironment;
import org.vanewright.testing.Databases;
import org.vanewright.testing.Databases.Engine;

/** What is restored is what was backed up: every row of every table, on either database and from one to the other. */
class BackupTest {
    private static final Map<Engine, HikariDataSource> FILLED = new EnumMap<>(Engine.class);

    @TempDir
    private Path directory;

    @AfterAll
    static void close() {
        FILLED.values().forEach(HikariDataSource::close);
        FILLED.clear();
    }

    private static HikariDataSource filled(Engine engine) {
        return FILLED.computeIfAbsent(engine, FilledDatabase::of);
    }

    static BackupDatabaseRepository opened(HikariDataSource source) {
        return BackupDatabaseRepository.open(
                source.getJdbcUrl(),
                source.getUsername(),
                source.getPassword(),
                "classpath:db/migration",
                "classpath:db/vendor/{vendor}");
    }

    static Path backup(HikariDataSource source, Path file) throws IOException {
        try (BackupDatabaseRepository database = opened(source)) {
            new BackupWriter(database, Clock.systemUTC()).write(file);
        }
        return file;
    }

    static void restore(Path file, HikariDataSource source) throws IOException {
        try (BackupDatabaseRepository database = opened(source)) {
            new BackupReader(database).read(file);
        }
    }

    @ParameterizedTest
    @CsvSource({"H2, H2", "POSTGRESQL, POSTGRESQL", "H2, POSTGRESQL", "POSTGRESQL, H2"})
    void everyRowOfEveryTableComesBack(Engine from, Engine to) throws IOException {
        Map<String, List<String>> before = FilledDatabase.rows(filled(from));
        assertThat(before)
                .hasSizeGreaterThan(40)
                .allSatisfy((table, rows) -> assertThat(rows).as(table).isNotEmpty());
        Path file = backup(filled(from), directory.resolve("one.zip"));
        try (HikariDataSource empty = Databases.empty(to)) {
            restore(file, empty);
            Map<String, List<String>> after = FilledDatabase.rows(empty);
            if (from != to) {
                assertThat(after.get("search_index"))
                        .as("made anew")
                        .singleElement()
                        .asString()
                        .contains("version=0");
                before.keySet().removeIf(table -> table.startsWith("search_"));
                after.keySet().removeIf(table -> table.startsWith("search_"));
            }
            assertThat(after.keySet()).isEqualTo(before.keySet());
            before.forEach(
                    (table, rows) -> assertThat(after.get(table)).as(table).isEqualTo(rows));
            goesOnCounting(empty);
        }
    }

    private static void goesOnCounting(HikariDataSource database) {
        JdbcClient jdbc = JdbcClient.create(database);
        jdbc.sql("insert into audit_entry (at, person, event, subject, detail, address)"
                        + " values (current_timestamp, 'x', 'new', '', '', '')")
                .update();
        assertThat(jdbc.sql("select id from audit_entry where event = 'new'")
                        .query(Long.class)
                        .single())
                .isGreaterThan(42);
        jdbc.sql("insert into review_remark (kind, slug, revision, field, words, person_id, person, written_at)"
                        + " values ('k', 's', 1, '', '', '', '', current_timestamp)")
                .update();
    }

    /** There and back again, through the other database. */
    @Test
    void nothingIsLostOnTheWayThroughTheOtherDatabase() throws IOException {
        try (HikariDataSource there = Databases.empty(Engine.POSTGRESQL);
                HikariDataSource back = Databases.empty(Engine.H2)) {
            restore(backup(filled(Engine.H2), directory.resolve("one.zip")), there);
            restore(backup(there, directory.resolve("two.zip")), back);
            Map<String, List<String>> before = FilledDatabase.rows(filled(Engine.H2));
            Map<String, List<String>> after = FilledDatabase.rows(back);
            before.forEach((table, rows) -> {
                if (!table.startsWith("search_")) {
                    assertThat(after.get(table)).as(table).isEqualTo(rows);
                }
            });
        }
    }

    @ParameterizedTest
    @EnumSource(Engine.class)
    void anOlderOneIsBroughtForward(Engine engine) throws IOException {
        try (HikariDataSource old = FilledDatabase.atSchema(engine, "15", "upgrade/V15.sql");
                HikariDataSource empty = Databases.empty(engine)) {
            Path file = backup(old, directory.resolve("old.zip"));
            restore(file, empty);
            JdbcClient jdbc = JdbcClient.create(empty);
            assertThat(FilledDatabase.rows(old).get("person"))
                    .isEqualTo(FilledDatabase.rows(empty).get("person"));
            assertThat(jdbc.sql("select count(*) from layout_airframe")
                            .query(Integer.class)
                            .single())
                    .as("filled by a later migration")
                    .isEqualTo(4);
            assertThat(jdbc.sql("select count(*) from job").query(Integer.class).single())
                    .isZero();
        }
    }

    @ParameterizedTest
    @EnumSource(Engine.class)
    void aDatabaseThatHoldsSomethingIsLeftAlone(Engine engine) throws IOException {
        Path file = backup(filled(engine), directory.resolve("one.zip"));
        Map<String, List<String>> before = FilledDatabase.rows(filled(engine));
        assertThatExceptionOfType(BackupRefusal.class)
                .isThrownBy(() -> restore(file, filled(engine)))
                .withMessageContaining("The database is not empty")
                .withMessageContaining("Nothing has been changed");
        assertThat(FilledDatabase.rows(filled(engine))).isEqualTo(before);
        try (HikariDataSource migrated = Databases.migrated(engine)) {
            restore(file, migrated);
            assertThat(FilledDatabase.rows(migrated)).isEqualTo(before);
        }
    }

    @Test
    void aBackupIsItsOwnersAndNeverWrittenOverAnother() throws IOException {
        Path file = backup(filled(Engine.H2), directory.resolve("one.zip"));
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-------");
        byte[] before = Files.readAllBytes(file);
        assertThatExceptionOfType(BackupRefusal.class).isThrownBy(() -> backup(filled(Engine.H2), file));
        assertThat(file).hasBinaryContent(before);
        try (HikariDataSource empty = Databases.empty(Engine.H2)) {
            Path none = directory.resolve("none.zip");
            assertThatExceptionOfType(BackupRefusal.class).isThrownBy(() -> backup(empty, none));
            assertThat(directory).isDirectoryNotContaining(p -> !p.equals(file));
        }
    }

    @Test
    void theCommandsSayWhatTheyDid() throws IOException {
        try (HikariDataSource empty = Databases.empty(Engine.H2)) {
            Path file = directory.resolve("one.zip");
            assertThat(run("restore", file, empty)).startsWith("1 There is no file ");
            assertThat(run("backup", file, filled(Engine.H2))).startsWith("0 ").contains("password hashes");
            assertThat(run("restore", file, empty)).startsWith("0 ").contains("are back");
            assertThat(run("restore", file, empty)).startsWith("1 The database is not empty");
        }
    }

    private static String run(String command, Path file, HikariDataSource source) throws IOException {
        MockEnvironment settings = new MockEnvironment()
                .withProperty("spring.datasource.url", source.getJdbcUrl())
                .withProperty("spring.datasource.username", "sa")
                .withProperty("spring.datasource.password", "");
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(said, true, StandardCharsets.UTF_8);
        return Commands.run(command, file, settings, out, out) + " " + said.toString(StandardCharsets.UTF_8);
    }
}
