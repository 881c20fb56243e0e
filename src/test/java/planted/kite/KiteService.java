package planted.kite;

import org.springframework.jdbc.core.simple.JdbcClient;
import planted.string.Line;

/** Wrongly uses SQL; uses another feature's record, as it may, but that one uses this feature too. */
public class KiteService {
    private final JdbcClient jdbc;

    public KiteService(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    public int count(Line line) {
        return jdbc.sql("select 1").query(Integer.class).single() + line.metres();
    }
}
