package org.vanewright.account;

import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Keeps what stewards chose for this instance. */
@Repository
class SettingRepository {
    private static final String SET_UP = "set-up";

    private final JdbcClient jdbc;

    SettingRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<String> find(String name) {
        return jdbc.sql("select text from instance_setting where name = :name")
                .param("name", name)
                .query(String.class)
                .optional();
    }

    @Transactional
    public void put(String name, String text) {
        jdbc.sql("insert into instance_setting (name, text) values (:name, :text) on conflict do nothing")
                .param("name", name)
                .param("text", text)
                .update();
        jdbc.sql("update instance_setting set text = :text where name = :name")
                .param("name", name)
                .param("text", text)
                .update();
    }

    boolean setUpIsOpen() {
        return find(SET_UP).filter("open"::equals).isPresent();
    }

    /** True for exactly one of those who try, over all instances. */
    boolean closeSetUp() {
        return jdbc.sql("update instance_setting set text = 'done' where name = :name and text = 'open'")
                        .param("name", SET_UP)
                        .update()
                == 1;
    }
}
