package org.vanewright.account;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Keeps tokens by the hashes of their secrets. */
@Repository
class AccessTokenRepository {
    private static final String SEPARATOR = ",";

    private final JdbcClient jdbc;

    AccessTokenRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** A person's tokens, newest first; no other transaction adds one before this one ends. */
    List<AccessToken> lockAll(String personId) {
        jdbc.sql("select id from person where id = :id for update")
                .param("id", personId)
                .query(String.class)
                .list();
        return all(personId);
    }

    /** A person's tokens, newest first. */
    List<AccessToken> all(String personId) {
        return jdbc.sql("select * from access_token where person_id = :personId order by created_at desc, id")
                .param("personId", personId)
                .query(AccessTokenRepository::token)
                .list();
    }

    void add(AccessToken token, String secretHash) {
        jdbc.sql("insert into access_token (id, person_id, name, secret_hash, scopes, created_at, expires_at)"
                        + " values (:id, :personId, :name, :hash, :scopes, :createdAt, :expiresAt)")
                .param("id", token.id())
                .param("personId", token.personId())
                .param("name", token.name())
                .param("hash", secretHash)
                .param("scopes", token.scopes().stream().map(TokenScope::name).collect(Collectors.joining(SEPARATOR)))
                .param("createdAt", utc(token.createdAt()))
                .param("expiresAt", utc(token.expiresAt()))
                .update();
    }

    /** A token that has not expired, of somebody whose account is open. */
    Optional<AccessToken> findUsable(String secretHash, Instant now) {
        return jdbc.sql("select t.* from access_token t join person p on p.id = t.person_id"
                        + " where t.secret_hash = :hash and t.expires_at > :now and p.state = 'ACTIVE'")
                .param("hash", secretHash)
                .param("now", utc(now))
                .query(AccessTokenRepository::token)
                .optional();
    }

    /** Notes a use, unless one was noted since {@code unlessSince}. */
    void used(String id, Instant now, Instant unlessSince) {
        jdbc.sql("update access_token set last_used_at = :now where id = :id"
                        + " and (last_used_at is null or last_used_at <= :since)")
                .param("now", utc(now))
                .param("id", id)
                .param("since", utc(unlessSince))
                .update();
    }

    /** False where the person has no such token. */
    boolean remove(String personId, String id) {
        return jdbc.sql("delete from access_token where id = :id and person_id = :personId")
                        .param("id", id)
                        .param("personId", personId)
                        .update()
                == 1;
    }

    int removeAll(String personId) {
        return jdbc.sql("delete from access_token where person_id = :personId")
                .param("personId", personId)
                .update();
    }

    private static OffsetDateTime utc(Instant at) {
        return at.atOffset(ZoneOffset.UTC);
    }

    private static AccessToken token(ResultSet row, int number) throws SQLException {
        OffsetDateTime used = row.getObject("last_used_at", OffsetDateTime.class);
        Set<TokenScope> scopes = Arrays.stream(row.getString("scopes").split(SEPARATOR, -1))
                .map(TokenScope::valueOf)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(TokenScope.class)));
        return new AccessToken(
                row.getString("id"),
                row.getString("person_id"),
                row.getString("name"),
                scopes,
                row.getObject("created_at", OffsetDateTime.class).toInstant(),
                row.getObject("expires_at", OffsetDateTime.class).toInstant(),
                used == null ? null : used.toInstant());
    }
}
