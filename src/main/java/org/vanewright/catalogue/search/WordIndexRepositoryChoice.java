package org.vanewright.catalogue.search;

import javax.sql.DataSource;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcUtils;
import org.springframework.jdbc.support.MetaDataAccessException;

/** The index of words that fits the database. */
@Configuration(proxyBeanMethods = false)
class WordIndexRepositoryChoice {
    @Bean
    WordIndexRepository wordIndexRepository(DataSource source) throws MetaDataAccessException {
        return of(source);
    }

    static WordIndexRepository of(DataSource source) throws MetaDataAccessException {
        String product = JdbcUtils.extractDatabaseMetaData(source, metaData -> metaData.getDatabaseProductName());
        return "PostgreSQL".equals(product)
                ? new PostgresWordIndexRepository(JdbcClient.create(source))
                : new H2WordIndexRepository(new JdbcTemplate(source));
    }
}
