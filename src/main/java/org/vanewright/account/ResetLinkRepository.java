package org.vanewright.account;

import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Ends links to choose a new password. */
@Repository
class ResetLinkRepository {
    private final JdbcClient jdbc;

    ResetLinkRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Ends a person's links that were not used; no other transaction does before this one ends. */
    void endAll(String personId) {
        jdbc.sql("select id from person where id = :id for update")
                .param("id", personId)
                .query(String.class)
                .list();
        jdbc.sql("delete from one_time_link where purpose = 'RESET' and person_id = :id and used_at is null")
                .param("id", personId)
                .update();
    }
}
