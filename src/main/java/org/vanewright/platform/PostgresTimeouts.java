package org.vanewright.platform;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Duration;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.core.env.Environment;
import org.springframework.stereotype.Component;

/**
 * Gives up on a PostgreSQL that has stopped answering in the middle of a statement, as when its machine is gone. H2
 * would refuse these settings. Those in the address of the database come first.
 */
@Component
class PostgresTimeouts implements BeanPostProcessor {
    private final Environment environment;

    PostgresTimeouts(Environment environment) {
        this.environment = environment;
    }

    @Override
    public Object postProcessBeforeInitialization(Object bean, String name) {
        if (bean instanceof HikariDataSource source
                && String.valueOf(source.getJdbcUrl()).startsWith("jdbc:postgresql:")) {
            Duration longest = environment.getProperty(
                    "vanewright.database.longest-statement", Duration.class, Duration.ofMinutes(5));
            source.addDataSourceProperty("socketTimeout", Long.toString(longest.toSeconds()));
            source.addDataSourceProperty("connectTimeout", "5");
            source.addDataSourceProperty("tcpKeepAlive", "true");
        }
        return bean;
    }
}
