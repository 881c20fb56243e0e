package org.vanewright.account;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.vanewright.account.OneTimeLink.Purpose;

/** Keeps one-time links by the hashes of their secrets. */
@Repository
class LinkRepository {
    private static final String OPEN =
            "select * from one_time_link where purpose = :purpose and used_at is null" + " and expires_at > :now ";

    private final JdbcClient jdbc;

    LinkRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void add(OneTimeLink link, String secret) {
        jdbc.sql("insert into one_time_link (id, secret_hash, purpose, role, person_id, note, created_by, created_at,"
                        + " expires_at) values (:id, :hash, :purpose, :role, :personId, :note, :createdBy, :createdAt,"
                        + " :expiresAt)")
                .param("id", link.id())
                .param("hash", Secrets.hash(secret))
                .param("purpose", link.purpose().name())
                .param("role", link.role() == null ? null : link.role().name())
                .param("personId", link.personId())
                .param("note", link.note())
                .param("createdBy", link.createdBy())
                .param("createdAt", utc(link.createdAt()))
                .param("expiresAt", utc(link.expiresAt()))
                .update();
    }

    /** A link that still works. */
    Optional<OneTimeLink> open(Purpose purpose, String secret, Instant now) {
        return jdbc.sql(OPEN + "and secret_hash = :hash")
                .param("purpose", purpose.name())
                .param("now", utc(now))
                .param("hash", Secrets.hash(secret))
                .query(LinkRepository::link)
                .optional();
    }

    /** Links that still work, newest first. */
    List<OneTimeLink> open(Purpose purpose, Instant now) {
        return jdbc.sql(OPEN + "order by created_at desc, id")
                .param("purpose", purpose.name())
                .param("now", utc(now))
                .query(LinkRepository::link)
                .list();
    }

    /** Uses a link up; true for exactly one of those who try. */
    boolean use(String id, Instant now) {
        return jdbc.sql("update one_time_link set used_at = :now where id = :id and used_at is null"
                                + " and expires_at > :now")
                        .param("now", utc(now))
                        .param("id", id)
                        .update()
                == 1;
    }

    /** Ends all links for that purpose that were not used. */
    void endAll(Purpose purpose) {
        jdbc.sql("delete from one_time_link where purpose = :purpose and used_at is null")
                .param("purpose", purpose.name())
                .update();
    }

    private static OffsetDateTime utc(Instant at) {
        return at.atOffset(ZoneOffset.UTC);
    }

    private static OneTimeLink link(ResultSet row, int number) throws SQLException {
        String role = row.getString("role");
        return new OneTimeLink(
                row.getString("id"),
                Purpose.valueOf(row.getString("purpose")),
                role == null ? null : Role.valueOf(role),
                row.getString("person_id"),
                row.getString("note"),
                row.getString("created_by"),
                row.getObject("created_at", OffsetDateTime.class).toInstant(),
                row.getObject("expires_at", OffsetDateTime.class).toInstant());
    }
}
