package org.vanewright.testing;

import com.zaxxer.hikari.HikariDataSource;
import java.util.Locale;
import java.util.UUID;
import java.util.function.Function;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.springframework.aop.framework.ProxyFactory;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.TransactionManager;
import org.springframework.transaction.annotation.AnnotationTransactionAttributeSource;
import org.springframework.transaction.interceptor.TransactionInterceptor;

/** Empty databases of both kinds that the service runs on. Whoever asks for one closes it. */
public final class Databases {
    /** H2's settings as in the service's own configuration. */
    private static final String H2_SETTINGS =
            ";MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;LOCK_TIMEOUT=10000;DB_CLOSE_DELAY=-1";

    private Databases() {}

    /** Which database. */
    public enum Engine {
        H2,
        POSTGRESQL
    }

    /** A fresh database without tables. */
    public static HikariDataSource empty(Engine engine) {
        return engine == Engine.H2
                ? h2()
                : postgres(PostgresServer.running(), PostgresServer.running().createDatabase());
    }

    private static HikariDataSource h2() {
        return source("jdbc:h2:mem:" + UUID.randomUUID() + H2_SETTINGS, "sa", "");
    }

    private static HikariDataSource postgres(PostgresServer server, String address) {
        return source(address, server.user(), server.password());
    }

    private static HikariDataSource source(String address, String user, String password) {
        HikariDataSource source = new HikariDataSource();
        source.setMaximumPoolSize(12);
        source.setMinimumIdle(1);
        source.setJdbcUrl(address);
        source.setUsername(user);
        source.setPassword(password);
        return source;
    }

    /** Where the migrations of that database are, as in the service's own configuration. */
    public static String[] migrations(Engine engine) {
        return new String[] {
            "classpath:db/migration", "classpath:db/vendor/" + engine.name().toLowerCase(Locale.ROOT)
        };
    }

    /** A fresh database after all migrations; on PostgreSQL a copy of one, which takes less time. */
    public static HikariDataSource migrated(Engine engine) {
        if (engine == Engine.POSTGRESQL) {
            return postgres(PostgresServer.running(), PostgresServer.running().createMigrated());
        }
        HikariDataSource source = h2();
        migrate(Flyway.configure().dataSource(source), engine);
        return source;
    }

    static void migrate(Engine engine, String address, String user, String password) {
        migrate(Flyway.configure().dataSource(address, user, password), engine);
    }

    private static void migrate(FluentConfiguration flyway, Engine engine) {
        flyway.locations(migrations(engine)).load().migrate();
    }

    /** A repository with the transactions it has as a bean. */
    public static <R> R transactional(HikariDataSource source, Function<JdbcClient, R> repository) {
        R target = repository.apply(JdbcClient.create(source));
        ProxyFactory factory = new ProxyFactory(target);
        factory.setProxyTargetClass(true);
        TransactionManager transactions = new JdbcTransactionManager(source);
        factory.addAdvice(new TransactionInterceptor(transactions, new AnnotationTransactionAttributeSource()));
        @SuppressWarnings("unchecked") // the proxy is a subclass of the target's class
        R proxy = (R) factory.getProxy(target.getClass().getClassLoader());
        return proxy;
    }
}
