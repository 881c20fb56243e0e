package org.vanewright.backup;

import com.zaxxer.hikari.HikariDataSource;
import java.util.Arrays;
import java.util.Optional;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationVersion;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.springframework.boot.jdbc.DataSourceBuilder;
import org.springframework.boot.jdbc.DatabaseDriver;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/** The database of the service: its schema, its tables and its rows, by one connection for itself. */
final class BackupDatabaseRepository implements AutoCloseable {
    private final DataSource source;
    private final String[] locations;
    private final String engine;
    private final JdbcTransactionManager transactions;
    private final CatalogueRepository catalogue;
    private final RowsRepository rows;
    private final AutoCloseable closing;

    private BackupDatabaseRepository(DataSource source, String url, String[] locations, AutoCloseable closing) {
        this.source = source;
        this.closing = closing;
        this.engine = DatabaseDriver.fromJdbcUrl(url).getId();
        this.locations = Arrays.stream(locations)
                .map(location -> location.replace("{vendor}", engine))
                .toArray(String[]::new);
        this.transactions = new JdbcTransactionManager(source);
        JdbcTemplate jdbc = new JdbcTemplate(source);
        this.catalogue = new CatalogueRepository(jdbc, engine.equals("postgresql"));
        this.rows = new RowsRepository(jdbc);
    }

    /** @param locations of the migrations, with {@code {vendor}} where the database's name belongs */
    static BackupDatabaseRepository open(String url, String user, String password, String... locations) {
        HikariDataSource source = DataSourceBuilder.create()
                .type(HikariDataSource.class)
                .url(url)
                .username(user)
                .password(password)
                .build();
        source.setMaximumPoolSize(2);
        source.setMinimumIdle(0);
        return new BackupDatabaseRepository(source, url, locations, source);
    }

    /** Such as {@code h2} or {@code postgresql}. */
    String engine() {
        return engine;
    }

    CatalogueRepository catalogue() {
        return catalogue;
    }

    RowsRepository rows() {
        return rows;
    }

    /** Reads everything as it stands at one moment. */
    void atOneMoment(Runnable work) {
        TransactionTemplate moment = new TransactionTemplate(transactions);
        moment.setReadOnly(true);
        moment.setIsolationLevel(TransactionDefinition.ISOLATION_REPEATABLE_READ);
        moment.executeWithoutResult(status -> work.run());
    }

    /** All of it, or nothing. */
    void together(Runnable work) {
        new TransactionTemplate(transactions).executeWithoutResult(status -> work.run());
    }

    /** Version of the schema, if it has one. */
    Optional<String> version() {
        if (!catalogue.hasHistory()) {
            return Optional.empty();
        }
        MigrationInfo current = flyway("latest").info().current();
        return Optional.ofNullable(current).map(MigrationInfo::getVersion).map(MigrationVersion::getVersion);
    }

    /** The last one that this version of the service knows. */
    String newestVersion() {
        return Arrays.stream(flyway("latest").info().all())
                .filter(m -> m.getVersion() != null && m.getState().isResolved())
                .map(MigrationInfo::getVersion)
                .max(MigrationVersion::compareTo)
                .orElseThrow()
                .getVersion();
    }

    /** @param version or {@code latest} */
    void migrate(String version) {
        flyway(version).migrate();
    }

    static int compare(String one, String other) {
        return MigrationVersion.fromVersion(one).compareTo(MigrationVersion.fromVersion(other));
    }

    /** Takes away again what was made in a database that had no tables. */
    void leaveBare() {
        configured("latest").cleanDisabled(false).load().clean();
    }

    private Flyway flyway(String target) {
        return configured(target).load();
    }

    private FluentConfiguration configured(String target) {
        return Flyway.configure().dataSource(source).locations(locations).target(target);
    }

    @Override
    public void close() {
        try {
            closing.close();
        } catch (Exception e) {
            throw new IllegalStateException("the database cannot be left", e);
        }
    }
}
