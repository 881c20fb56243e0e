package org.vanewright.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.testing.Databases;

class MigrationTest {
    @ParameterizedTest
    @EnumSource(Databases.Engine.class)
    void theSameMigrationsRunOnBothDatabases(Databases.Engine engine) {
        try (var database = Databases.empty(engine)) {
            Flyway flyway = Flyway.configure()
                    .dataSource(database)
                    .locations("classpath:db/migration")
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
}
