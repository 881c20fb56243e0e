package org.vanewright.account;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;

/** Counts attempts to sign in, for all instances together. */
@Repository
class AttemptRepository {
    private final JdbcClient jdbc;

    AttemptRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What is known of one counter. */
    public record Count(int attempts, Instant lastAt, Instant blockedUntil) {
        static final Count NONE = new Count(0, Instant.EPOCH, Instant.EPOCH);
    }

    /** Changes a counter while nobody else can; gives what stood there before. */
    @Transactional
    public Count change(String counted, UnaryOperator<Count> change) {
        jdbc.sql("insert into sign_in_attempt (counted, attempts, last_at, blocked_until)"
                        + " values (:counted, 0, :never, :never) on conflict do nothing")
                .param("counted", counted)
                .param("never", utc(Instant.EPOCH))
                .update();
        Count before = jdbc.sql("select * from sign_in_attempt where counted = :counted for update")
                .param("counted", counted)
                .query(AttemptRepository::count)
                .optional()
                .orElse(Count.NONE);
        Count after = change.apply(before);
        jdbc.sql("update sign_in_attempt set attempts = :attempts, last_at = :lastAt, blocked_until = :blockedUntil"
                        + " where counted = :counted")
                .param("attempts", after.attempts())
                .param("lastAt", utc(after.lastAt()))
                .param("blockedUntil", utc(after.blockedUntil()))
                .param("counted", counted)
                .update();
        return before;
    }

    Optional<Count> find(String counted) {
        return jdbc.sql("select * from sign_in_attempt where counted = :counted")
                .param("counted", counted)
                .query(AttemptRepository::count)
                .optional();
    }

    /** Forgets counters that have not changed for that long. */
    void forgetBefore(Instant now, Duration age) {
        jdbc.sql("delete from sign_in_attempt where last_at < :before")
                .param("before", utc(now.minus(age)))
                .update();
    }

    private static OffsetDateTime utc(Instant at) {
        return at.atOffset(ZoneOffset.UTC);
    }

    private static Count count(ResultSet row, int number) throws SQLException {
        return new Count(
                row.getInt("attempts"),
                row.getObject("last_at", OffsetDateTime.class).toInstant(),
                row.getObject("blocked_until", OffsetDateTime.class).toInstant());
    }
}
