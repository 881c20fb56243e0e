package org.vanewright.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.core.io.ClassPathResource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.init.ResourceDatabasePopulator;
import org.vanewright.adhesive.AdhesiveDocument;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.device.DeviceDocument;
import org.vanewright.inspection.InspectionDocument;
import org.vanewright.installation.InstallationDocument;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.printrun.PrintRunDocument;
import org.vanewright.testing.Databases;

/**
 * A database that an earlier release filled comes through all later migrations with every row as it was, and today's
 * documents read it and hash it alike. The rows under {@code upgrade} were written by those releases.
 */
class UpgradeTest {
    private static final Map<String, Class<? extends RecordContent>> DOCUMENTS = Map.of(
            "airframe_revision", AirframeDocument.class,
            "device_revision", DeviceDocument.class,
            "layout_revision", LayoutDocument.class,
            "adhesive_revision", AdhesiveDocument.class,
            "print_run_revision", PrintRunDocument.class,
            "installation_revision", InstallationDocument.class,
            "inspection_revision", InspectionDocument.class,
            "campaign_revision", CampaignDocument.class);

    @ParameterizedTest
    @CsvSource({
        "H2, 1",
        "POSTGRESQL, 1",
        "H2, 6",
        "POSTGRESQL, 6",
        "H2, 15",
        "POSTGRESQL, 15",
        "H2, 19",
        "POSTGRESQL, 19",
        "H2, 22",
        "POSTGRESQL, 22"
    })
    void everyRowIsKept(Databases.Engine engine, String version) {
        try (var database = Databases.empty(engine)) {
            flyway(engine, database, version).migrate();
            fixtures(version).forEach(file -> new ResourceDatabasePopulator(file).execute(database));
            JdbcClient jdbc = JdbcClient.create(database);
            Map<String, String> columns = columns(jdbc);
            Map<String, List<Map<String, Object>>> before = rows(jdbc, columns);
            assertThat(before.get("device_revision")).hasSizeGreaterThanOrEqualTo(3);

            flyway(engine, database, "latest").migrate();
            assertThat(rows(jdbc, columns)).isEqualTo(before);
            DOCUMENTS.forEach((table, type) -> assertHashedAlike(before.getOrDefault(table, List.of()), type));
            assertThat(airframes(jdbc, "layout_airframe"))
                    .isEqualTo(named(before, "layout_revision", LayoutDocument.class, LayoutDocument::airframe));
            assertThat(airframes(jdbc, "campaign_airframe"))
                    .isEqualTo(named(
                            before,
                            "campaign_revision",
                            CampaignDocument.class,
                            c -> c.plan().airframe()));
        }
    }

    /** The release with schema 22 kept what the one with 19 did, and more. */
    private static List<ClassPathResource> fixtures(String version) {
        return Stream.of("19", version)
                .filter(v -> v.equals(version) || version.equals("22"))
                .distinct()
                .map(v -> new ClassPathResource("upgrade/V" + v + ".sql"))
                .toList();
    }

    /** Which airframe each revision names, as a migration found it in the text. */
    private static Map<String, String> airframes(JdbcClient jdbc, String table) {
        Map<String, String> found = new TreeMap<>();
        jdbc.sql("select slug, revision, airframe_slug from " + table).query(row -> {
            found.put(row.getString(1) + " " + row.getInt(2), row.getString(3));
        });
        return found;
    }

    /** The same as the documents say it. */
    private static <T extends RecordContent> Map<String, String> named(
            Map<String, List<Map<String, Object>>> rows,
            String table,
            Class<T> type,
            Function<T, @Nullable RevisionRef> airframe) {
        CanonicalJson json = new CanonicalJson();
        Map<String, String> found = new TreeMap<>();
        for (Map<String, Object> row : rows.getOrDefault(table, List.of())) {
            RevisionRef ref = airframe.apply(json.read(String.valueOf(row.get("content")), type));
            if (ref != null) {
                found.put(row.get("slug") + " " + row.get("revision"), ref.slug());
            }
        }
        return found;
    }

    private static Flyway flyway(Databases.Engine engine, DataSource database, String target) {
        return Flyway.configure()
                .dataSource(database)
                .locations(Databases.migrations(engine))
                .target(target)
                .load();
    }

    /** Of each table, the columns that the release knew. */
    private static Map<String, String> columns(JdbcClient jdbc) {
        Map<String, String> columns = new LinkedHashMap<>();
        jdbc.sql("select table_name, column_name from information_schema.columns where table_schema = 'public'"
                        + " and table_name not like 'flyway%' order by table_name, ordinal_position")
                .query((row, n) -> Map.entry(row.getString(1), row.getString(2)))
                .list()
                .forEach(column -> columns.merge(column.getKey(), column.getValue(), (a, b) -> a + ", " + b));
        return columns;
    }

    private static Map<String, List<Map<String, Object>>> rows(JdbcClient jdbc, Map<String, String> columns) {
        Map<String, List<Map<String, Object>>> rows = new LinkedHashMap<>();
        columns.forEach((table, names) -> {
            List<Map<String, Object>> found = new ArrayList<>(
                    jdbc.sql("select " + names + " from " + table).query().listOfRows());
            found.sort((a, b) -> a.toString().compareTo(b.toString()));
            rows.put(table, found);
        });
        return rows;
    }

    private static void assertHashedAlike(List<Map<String, Object>> revisions, Class<? extends RecordContent> type) {
        CanonicalJson json = new CanonicalJson();
        for (Map<String, Object> row : revisions) {
            String content = String.valueOf(row.get("content"));
            assertThat(json.write(json.read(content, type)))
                    .as("%s", row.get("slug"))
                    .isEqualTo(content);
            assertThat(json.sha256(content)).isEqualTo(row.get("sha256"));
        }
    }
}
