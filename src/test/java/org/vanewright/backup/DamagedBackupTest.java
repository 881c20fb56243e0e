package org.vanewright.backup;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.vanewright.backup.BackupManifest.Entry;
import org.vanewright.platform.Downloads;
import org.vanewright.testing.Databases;
import org.vanewright.testing.Databases.Engine;

/** Backups that were damaged, or made to do damage: each is refused with its reason, and nothing is written. */
class DamagedBackupTest {
    private static final String PERSON = "tables/person.jsonl";
    private static final String MANIFEST = "backup.json";

    @TempDir
    private static Path directory;

    /** What was done to a sound one. */
    private record Case(String name, Consumer<Map<String, byte[]>> damage, String reason) {}

    private static List<Case> cases() {
        return List.of(
                new Case("another hash", files -> replace(files, PERSON, "Builds", "Boils "), "SHA-256"),
                new Case("a table without its file", files -> files.remove(PERSON), "lacks tables/person.jsonl"),
                new Case("no manifest", files -> files.remove(MANIFEST), "no backup"),
                new Case(
                        "a table that nobody mentions",
                        DamagedBackupTest::withoutPerson,
                        "which its manifest does not name"),
                new Case(
                        "a table that is gone altogether",
                        files -> {
                            withoutPerson(files);
                            files.remove(PERSON);
                        },
                        "other tables than its schema has"),
                new Case("a name that leads out", files -> files.put("../../etc/x", new byte[1]), "../../etc/x"),
                new Case("a table that leads out", files -> named(files, "../person"), "wrongly or twice"),
                new Case(
                        "a table that is a statement",
                        files -> named(files, "person; drop table person"),
                        "wrongly or twice"),
                new Case(
                        "more than it says",
                        files -> files.put(PERSON, new byte[60_000_000]),
                        "longer than the manifest says"),
                new Case(
                        "a later form",
                        files -> replace(files, MANIFEST, "\"version\" : 1", "\"version\" : 2"),
                        "form 2"),
                new Case("a later schema", files -> ofSchema(files, "9999"), "newer than"),
                new Case("a schema that is none", files -> ofSchema(files, "x"), "of which schema"),
                new Case(
                        "a manifest that is none",
                        files -> files.put(MANIFEST, new byte[] {'{', 'x'}),
                        "cannot be read"),
                new Case("another archive", files -> files.put(MANIFEST, bytes("{\"version\": 1}")), "another kind"),
                new Case(
                        "a value of another form",
                        files -> rewritten(files, "\"MEMBER\",", "17,"),
                        "not of the form TEXT"),
                new Case("no JSON", files -> rewritten(files, "[", "[["), "no JSON"),
                new Case("a column too few", files -> rewritten(files, "\"MEMBER\",", ""), "not the columns"),
                new Case(
                        "a role that the schema does not know",
                        files -> rewritten(files, "\"MEMBER\",", "\"KING\","),
                        ""));
    }

    @TestFactory
    Stream<DynamicTest> eachIsRefusedAndNothingIsWritten() throws IOException {
        HikariDataSource filled = FilledDatabase.atSchema(Engine.H2, "latest", "backup/people.sql");
        Path sound = BackupTest.backup(filled, directory.resolve("sound.zip"));
        filled.close();
        Map<String, byte[]> files = unpacked(sound);
        HikariDataSource empty = Databases.empty(Engine.H2);
        return cases().stream()
                .map(c -> DynamicTest.dynamicTest(c.name(), () -> {
                    Map<String, byte[]> damaged = new LinkedHashMap<>(files);
                    c.damage().accept(damaged);
                    Path file = packed(damaged);
                    Throwable refusal =
                            catchThrowableOfType(RuntimeException.class, () -> BackupTest.restore(file, empty));
                    assertThat(refusal).isNotNull().hasMessageContaining(c.reason());
                    assertThat(FilledDatabase.rows(empty)).as("tables").isEmpty();
                }))
                .onClose(empty::close);
    }

    @Test
    void whatIsCutOffIsRefused() throws IOException {
        HikariDataSource filled = FilledDatabase.atSchema(Engine.H2, "latest", "backup/people.sql");
        byte[] sound = Files.readAllBytes(BackupTest.backup(filled, directory.resolve("whole.zip")));
        filled.close();
        try (HikariDataSource empty = Databases.empty(Engine.H2)) {
            for (int length : new int[] {0, 4, sound.length / 2, sound.length - 30}) {
                Path cut = directory.resolve("cut-" + length + ".zip");
                Files.write(cut, Arrays.copyOf(sound, length));
                BackupRefusal refusal = catchThrowableOfType(BackupRefusal.class, () -> BackupTest.restore(cut, empty));
                assertThat(refusal).as("%s bytes", length).hasMessageContaining("no backup");
            }
            assertThat(FilledDatabase.rows(empty)).isEmpty();
        }
    }

    private static void ofSchema(Map<String, byte[]> files, String version) {
        Matcher schema = Pattern.compile("\"schema\" : \"[0-9.]+\"")
                .matcher(new String(Objects.requireNonNull(files.get(MANIFEST)), StandardCharsets.UTF_8));
        assertThat(schema.find()).isTrue();
        replace(files, MANIFEST, schema.group(), "\"schema\" : \"" + version + "\"");
    }

    private static void replace(Map<String, byte[]> files, String file, String what, String with) {
        String text = new String(content(files, file), StandardCharsets.UTF_8);
        assertThat(text).contains(what);
        files.put(file, bytes(text.replaceFirst(Pattern.quote(what), with)));
    }

    /** With the hash and size that the manifest then has to have. */
    private static void rewritten(Map<String, byte[]> files, String what, String with) {
        byte[] before = content(files, PERSON);
        replace(files, PERSON, what, with);
        byte[] after = content(files, PERSON);
        replace(files, MANIFEST, Downloads.sha256(before), Downloads.sha256(after));
        replace(files, MANIFEST, "\"bytes\" : " + before.length + ",", "\"bytes\" : " + after.length + ",");
    }

    private static void withoutPerson(Map<String, byte[]> files) {
        tables(files, t -> t.name().equals("person") ? Stream.empty() : Stream.of(t));
    }

    private static void named(Map<String, byte[]> files, String name) {
        tables(
                files,
                t -> Stream.of(
                        t.name().equals("person")
                                ? new Entry(name, t.columns(), t.rows(), t.bytes(), t.sha256(), t.next())
                                : t));
    }

    private static void tables(Map<String, byte[]> files, Function<Entry, Stream<Entry>> change) {
        BackupManifest m = RowJson.manifest(content(files, MANIFEST));
        List<Entry> tables = m.tables().stream().flatMap(change).toList();
        files.put(
                MANIFEST,
                RowJson.manifest(
                        new BackupManifest(m.format(), m.version(), m.schema(), m.engine(), m.madeAt(), tables)));
    }

    private static byte[] content(Map<String, byte[]> files, String file) {
        return Objects.requireNonNull(files.get(file), file);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static Map<String, byte[]> unpacked(Path archive) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (ZipFile zip = ZipFile.builder().setPath(archive).get()) {
            for (ZipArchiveEntry entry : Collections.list(zip.getEntries())) {
                files.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
            }
        }
        return files;
    }

    private static Path packed(Map<String, byte[]> files) throws IOException {
        Path file = Files.createTempFile(directory, "damaged", ".zip");
        try (ZipArchiveOutputStream zip = new ZipArchiveOutputStream(Files.newOutputStream(file))) {
            for (Map.Entry<String, byte[]> each : files.entrySet()) {
                zip.putArchiveEntry(new ZipArchiveEntry(each.getKey()));
                zip.write(each.getValue());
                zip.closeArchiveEntry();
            }
        }
        return file;
    }
}
