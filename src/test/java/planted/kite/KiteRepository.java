package planted.kite;

import org.springframework.jdbc.core.simple.JdbcClient;

/** Rightly uses SQL. */
public class KiteRepository {
    private final JdbcClient jdbc;

    public KiteRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    public int count() {
        return jdbc.sql("select 1").query(Integer.class).single();
    }
}
