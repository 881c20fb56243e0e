package org.vanewright.testing;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import org.testcontainers.postgresql.PostgreSQLContainer;
import org.testcontainers.utility.DockerImageName;

/**
 * One real PostgreSQL for all tests of this JVM: in a container where an engine answers and has or gets the image, else
 * from embedded binaries. Where neither starts, the tests that need it fail.
 *
 * @param address host and port
 */
record PostgresServer(String address, String user, String password, AtomicInteger databases) {
    /** Names the image; must speak the environment variables of the well-known one. */
    static final String IMAGE_VARIABLE = "VANEWRIGHT_TEST_POSTGRES_IMAGE";

    private static final String DEFAULT_IMAGE = "postgres:17";
    private static final long CONTAINER_SECONDS = 180;

    static PostgresServer running() {
        return Holder.SERVER;
    }

    /** JDBC address of a new, empty database. */
    String createDatabase() {
        return createDatabase("template1");
    }

    /** JDBC address of a new database after all migrations, copied from one that was migrated before. */
    String createMigrated() {
        return createDatabase(Migrated.TEMPLATE);
    }

    private String createDatabase(String template) {
        String name = "t" + databases.incrementAndGet();
        try (Connection connection = DriverManager.getConnection(url("postgres"), user, password);
                Statement statement = connection.createStatement()) {
            statement.execute("create database " + name + " template " + template);
        } catch (SQLException e) {
            throw new IllegalStateException("no new database on " + address, e);
        }
        return url(name);
    }

    private static final class Migrated {
        static final String TEMPLATE = migrate(running());

        /** Nobody is connected to it afterwards, or it could not be copied. */
        private static String migrate(PostgresServer server) {
            String address = server.createDatabase();
            Databases.migrate(Databases.Engine.POSTGRESQL, address, server.user(), server.password());
            return address.substring(address.lastIndexOf('/') + 1);
        }
    }

    private String url(String database) {
        return "jdbc:postgresql://" + address + "/" + database;
    }

    private static final class Holder {
        static final PostgresServer SERVER = start();
    }

    private static PostgresServer start() {
        if (!ContainerEngine.answers()) {
            report("no container engine answers; using embedded binaries");
            return embedded();
        }
        CompletableFuture<PostgresServer> container = CompletableFuture.supplyAsync(PostgresServer::container);
        try {
            return container.get(CONTAINER_SECONDS, TimeUnit.SECONDS);
        } catch (ExecutionException | TimeoutException e) {
            container.cancel(true);
            report("NO CONTAINER (" + e + "); using embedded binaries");
            return embedded();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private static PostgresServer container() {
        String image = System.getenv().getOrDefault(IMAGE_VARIABLE, DEFAULT_IMAGE);
        // Stopped by Testcontainers when the JVM ends.
        PostgreSQLContainer container =
                new PostgreSQLContainer(DockerImageName.parse(image).asCompatibleSubstituteFor("postgres"));
        container.start();
        report("container of " + image);
        String address = container.getHost() + ":" + container.getMappedPort(PostgreSQLContainer.POSTGRESQL_PORT);
        return new PostgresServer(address, container.getUsername(), container.getPassword(), new AtomicInteger());
    }

    private static PostgresServer embedded() {
        try {
            // Stopped by its own shutdown hook when the JVM ends.
            EmbeddedPostgres embedded = EmbeddedPostgres.start();
            return new PostgresServer("127.0.0.1:" + embedded.getPort(), "postgres", "postgres", new AtomicInteger());
        } catch (IOException e) {
            throw new UncheckedIOException("no PostgreSQL can be started for the tests", e);
        }
    }

    private static void report(String what) {
        System.out.println("PostgreSQL for tests: " + what);
    }
}
