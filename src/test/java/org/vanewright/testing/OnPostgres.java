package org.vanewright.testing;

import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.springframework.boot.test.util.TestPropertyValues;
import org.springframework.context.ApplicationContextInitializer;
import org.springframework.context.ConfigurableApplicationContext;
import org.springframework.test.context.ContextConfiguration;

/** The whole service on a fresh PostgreSQL database, already migrated; all test classes so marked share one, as those on H2 do. */
@Inherited
@Target(ElementType.TYPE)
@Retention(RetentionPolicy.RUNTIME)
@ContextConfiguration(initializers = OnPostgres.Database.class)
public @interface OnPostgres {
    /** Makes the database when the service starts. */
    final class Database implements ApplicationContextInitializer<ConfigurableApplicationContext> {
        @Override
        public void initialize(ConfigurableApplicationContext context) {
            PostgresServer server = PostgresServer.running();
            TestPropertyValues.of(
                            "spring.datasource.url=" + server.createMigrated(),
                            "spring.datasource.username=" + server.user(),
                            "spring.datasource.password=" + server.password())
                    .applyTo(context);
        }
    }
}
