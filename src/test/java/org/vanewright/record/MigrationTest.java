package org.vanewright.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.testing.Databases;

class MigrationTest {
    @ParameterizedTest
    @EnumSource(Databases.Engine.class)
    void theSameMigrationsRunOnBothDatabases(Databases.Engine engine) {
        try (var database = Databases.empty(engine)) {
            Flyway flyway = Flyway.configure()
                    .dataSource(database)
                    .locations(Databases.migrations(engine))
                    .load();
            int pending = flyway.info().pending().length;
            assertThat(flyway.migrate().migrationsExecuted).isEqualTo(pending).isPositive();
            assertThat(flyway.migrate().migrationsExecuted).isZero();
            flyway.validate();
            List<String> tables = JdbcClient.create(database)
                    .sql("select table_name from information_schema.tables where table_schema = 'public'")
                    .query(String.class)
                    .list();
            assertThat(tables).contains("airframe_revision", "device_revision", "layout_revision");
        }
    }

    /** A pool closes the connection that made the tables after a while; what it made must go on without it. */
    @ParameterizedTest
    @EnumSource(Databases.Engine.class)
    void checksOutliveTheConnectionThatMadeThem(Databases.Engine engine) {
        try (var database = Databases.empty(engine)) {
            Flyway.configure()
                    .dataSource(database)
                    .locations(Databases.migrations(engine))
                    .load()
                    .migrate();
            database.getHikariPoolMXBean().softEvictConnections();

            JdbcClient jdbc = JdbcClient.create(database);
            String insert = "insert into person (id, email, name, role, state, version, created_at)"
                    + " values (:id, :id, 'Somebody', :role, 'ACTIVE', 1, current_timestamp)";
            assertThat(jdbc.sql(insert)
                            .param("id", "a@club.example")
                            .param("role", "MEMBER")
                            .update())
                    .isEqualTo(1);
            assertThatExceptionOfType(DataIntegrityViolationException.class)
                    .isThrownBy(() -> jdbc.sql(insert)
                            .param("id", "b@club.example")
                            .param("role", "PILOT")
                            .update());
            if (engine == Databases.Engine.H2) {
                assertThat(jdbc.sql("select check_clause from information_schema.check_constraints")
                                .query(String.class)
                                .list())
                        .isNotEmpty()
                        .noneMatch(clause -> clause.matches("(?s).*[\")] IN ?\\(.*"));
            }
        }
    }
}
