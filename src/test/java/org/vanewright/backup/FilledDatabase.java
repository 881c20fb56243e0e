package org.vanewright.backup;

import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.sql.Clob;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.flywaydb.core.Flyway;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.ClassPathResource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.init.ResourceDatabasePopulator;
import org.vanewright.testing.Databases;
import org.vanewright.testing.Databases.Engine;

/** A database with rows in every table: what an upgrade test brings forward, and beside it what that lacks. */
final class FilledDatabase {
    private FilledDatabase() {}

    static HikariDataSource of(Engine engine) {
        HikariDataSource database = atSchema(engine, "19", "upgrade/V19.sql");
        migrate(engine, database, "latest");
        JdbcClient jdbc = JdbcClient.create(database);
        bytes(jdbc);
        search(jdbc, engine);
        jdbc.sql("update job set slot = 'record-export' where id like 'f0000000%'")
                .update();
        return database;
    }

    static HikariDataSource atSchema(Engine engine, String version, String rows) {
        HikariDataSource database = Databases.empty(engine);
        migrate(engine, database, version);
        new ResourceDatabasePopulator(new ClassPathResource(rows)).execute(database);
        return database;
    }

    private static void migrate(Engine engine, HikariDataSource database, String target) {
        Flyway.configure()
                .dataSource(database)
                .locations(Databases.migrations(engine))
                .target(target)
                .load()
                .migrate();
    }

    /** Of every value that a byte has, and as many as a row of H2 holds. */
    private static void bytes(JdbcClient jdbc) {
        Random random = new Random(7);
        byte[] large = new byte[1_000_000];
        random.nextBytes(large);
        byte[] all = new byte[256];
        for (int i = 0; i < all.length; i++) {
            all[i] = (byte) i;
        }
        jdbc.sql("insert into photograph (sha256, large, small, is_public, created_at)"
                        + " values (?, ?, ?, true, current_timestamp)")
                .params("ab".repeat(32), large, all)
                .update();
        jdbc.sql("insert into photograph_owner (sha256, person_id, added_at) values (?, 'x', current_timestamp)")
                .param("ab".repeat(32))
                .update();
        jdbc.sql("insert into spring_session_attributes values ('c0000000-0000-4000-8000-000000000001', 'a', ?)")
                .param(all)
                .update();
        jdbc.sql("insert into kit_photograph values ('11111111-1111-4111-8111-111111111111', ?, ?)")
                .params("cd".repeat(32), new byte[0])
                .update();
        for (int number = 0; number < 45; number++) {
            byte[] piece = new byte[random.nextInt(400)];
            random.nextBytes(piece);
            jdbc.sql("insert into job_part values ('f0000000-0000-4000-8000-000000000001', ?, ?)")
                    .params(number, piece)
                    .update();
            jdbc.sql("insert into flight_log_part values ('e0000000-0000-4000-8000-000000000001', ?, ?)")
                    .params(number, piece)
                    .update();
        }
        // More rows than one page, with a key of several columns, and texts that are hard to carry.
        for (int version = 3; version < 1_100; version++) {
            jdbc.sql("insert into draft_version values ('d0000000-0000-4000-8000-000000000001', ?, ?, 'x', 'y', ?)")
                    .params(
                            version,
                            "line\nend\r\n\u2028 \"quotes\" \\ \u0001 é 漢 \uD83D\uDEE9 " + version,
                            OffsetDateTime.parse("2026-03-29T02:30:00.000001+01:00")
                                    .plusNanos(version * 1_000L))
                    .update();
        }
    }

    private static void search(JdbcClient jdbc, Engine engine) {
        jdbc.sql("update search_index set version = 9, changes = 5").update();
        jdbc.sql("insert into search_signature (sha256) values (?)")
                .param("12".repeat(32))
                .update();
        jdbc.sql("insert into search_facet select id, 'KIND', 'vane', 'Vane', 1 from search_signature")
                .update();
        jdbc.sql("insert into search_entry (kind, slug, revision, name, summary, invented, contributor, published_at,"
                        + " effect_ppm, prominence, signature_id, version) select 'device', 'vane', 1, 'Vane', '', true,"
                        + " 'x', current_timestamp, -1, 50, id, 9 from search_signature")
                .update();
        jdbc.sql("insert into search_vocabulary values ('vanes', 'vane')").update();
        jdbc.sql("insert into search_removed values (77, 4)").update();
        jdbc.sql("insert into record_summary values ('layout', 'heron', 1, 1, '{\"devices\":12}')")
                .update();
        if (engine == Engine.H2) {
            jdbc.sql("insert into search_word select 'vanes', id, 1 from search_entry")
                    .update();
            jdbc.sql("insert into search_trigram values ('van', 'vanes')").update();
        } else {
            jdbc.sql("update search_entry set words = 'vanes:1A ''=vane'':2'").update();
        }
    }

    /** Every row of every table, as the database gives them, from its own catalogue. */
    static Map<String, List<String>> rows(HikariDataSource database) {
        JdbcClient jdbc = JdbcClient.create(database);
        Map<String, List<String>> all = new TreeMap<>();
        List<String> tables = jdbc.sql("select table_name from information_schema.tables"
                        + " where table_schema = 'public' and table_type = 'BASE TABLE'")
                .query(String.class)
                .list();
        for (String table : tables) {
            if (!table.equals("flyway_schema_history")) {
                List<String> rows = new ArrayList<>();
                jdbc.sql("select * from " + table).query().listOfRows().forEach(row -> {
                    Map<String, String> plain = new TreeMap<>();
                    row.forEach((column, value) -> plain.put(column, plain(value)));
                    rows.add(plain.toString());
                });
                rows.sort(String::compareTo);
                all.put(table, rows);
            }
        }
        return all;
    }

    private static String plain(@Nullable Object value) {
        if (value instanceof OffsetDateTime at) {
            return at.toInstant().toString();
        }
        if (value instanceof Timestamp at) {
            Instant instant = at.toInstant();
            return instant.toString();
        }
        if (value instanceof byte[] bytes) {
            return HexFormat.of().formatHex(bytes);
        }
        if (value instanceof Clob text) {
            try (var reader = text.getCharacterStream()) {
                StringWriter out = new StringWriter();
                reader.transferTo(out);
                return out.toString();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            } catch (SQLException e) {
                throw new IllegalStateException(e);
            }
        }
        return String.valueOf(value);
    }
}
