package org.vanewright.benchmark.load;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.util.FileSystemUtils;

/** A database that is kept between runs. PostgreSQL runs from embedded binaries, with every commit on disk. */
final class LoadDatabase implements AutoCloseable {
    private static final String H2_SETTINGS =
            ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;LOCK_TIMEOUT=10000;DB_CLOSE_ON_EXIT=FALSE";

    private final Path directory;
    private final String url;
    private final String user;
    private final @Nullable EmbeddedPostgres postgres;

    private LoadDatabase(Path directory, String url, String user, @Nullable EmbeddedPostgres postgres) {
        this.directory = directory;
        this.url = url;
        this.user = user;
        this.postgres = postgres;
    }

    /** @param engine {@code postgresql} or {@code h2} */
    static LoadDatabase open(String engine, Path directory) {
        try {
            if (!Files.exists(directory.resolve(LoadCatalogue.RECORDS))) {
                // Whatever was begun there was not ended.
                FileSystemUtils.deleteRecursively(directory);
            }
            Files.createDirectories(directory);
            if (engine.equals("h2")) {
                return new LoadDatabase(
                        directory, "jdbc:h2:file:" + directory.resolve("vanewright") + H2_SETTINGS, "sa", null);
            }
            EmbeddedPostgres postgres = EmbeddedPostgres.builder()
                    .setDataDirectory(directory.resolve("data"))
                    .setCleanDataDirectory(false)
                    .setServerConfig("fsync", "on")
                    .setServerConfig("shared_buffers", "256MB")
                    .setServerConfig("max_wal_size", "2GB")
                    .setPGStartupWait(Duration.ofMinutes(2))
                    .start();
            return new LoadDatabase(
                    directory, "jdbc:postgresql://127.0.0.1:" + postgres.getPort() + "/postgres", "postgres", postgres);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Path directory() {
        return directory;
    }

    String url() {
        return url;
    }

    String user() {
        return user;
    }

    String password() {
        return postgres == null ? "" : "postgres";
    }

    boolean isPostgres() {
        return postgres != null;
    }

    /** One figure or word; nobody else may have the file of an H2 open. */
    String ask(String sql) {
        try (Connection connection = DriverManager.getConnection(url, user, password());
                Statement statement = connection.createStatement();
                ResultSet row = statement.executeQuery(sql)) {
            row.next();
            return String.valueOf(row.getString(1));
        } catch (SQLException e) {
            throw new IllegalStateException(sql, e);
        }
    }

    void execute(String sql) {
        try (Connection connection = DriverManager.getConnection(url, user, password());
                Statement statement = connection.createStatement()) {
            statement.execute(sql);
        } catch (SQLException e) {
            throw new IllegalStateException(sql, e);
        }
    }

    /** Such as {@code PostgreSQL 17.11}. */
    String version() {
        return postgres == null
                ? "H2 " + ask("select h2version()") + ", file"
                : String.format(Locale.ROOT, "PostgreSQL %s, 256 MB shared buffers", ask("show server_version"));
    }

    @Override
    public void close() {
        try {
            if (postgres != null) {
                postgres.close();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
