package org.vanewright.account;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.vanewright.account.ProviderIdentity.Linked;

/** Keeps which accounts at providers belong to whom. */
@Repository
class ProviderIdentityRepository {
    private final JdbcClient jdbc;

    ProviderIdentityRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** False where it belongs to somebody already, or the person has another one of that issuer. */
    boolean add(String personId, ProviderIdentity identity, Instant now) {
        return jdbc.sql("insert into provider_identity (id, person_id, issuer, subject, provider, linked_at)"
                                + " values (:id, :personId, :issuer, :subject, :provider, :now) on conflict do nothing")
                        .param("id", UUID.randomUUID().toString())
                        .param("personId", personId)
                        .param("issuer", identity.issuer())
                        .param("subject", identity.subject())
                        .param("provider", identity.provider())
                        .param("now", now.atOffset(ZoneOffset.UTC))
                        .update()
                == 1;
    }

    Optional<Linked> find(String issuer, String subject) {
        return jdbc.sql("select * from provider_identity where issuer = :issuer and subject = :subject")
                .param("issuer", issuer)
                .param("subject", subject)
                .query(ProviderIdentityRepository::linked)
                .optional();
    }

    /** Those of one person, oldest first. */
    List<Linked> of(String personId) {
        return jdbc.sql("select * from provider_identity where person_id = :personId order by linked_at, id")
                .param("personId", personId)
                .query(ProviderIdentityRepository::linked)
                .list();
    }

    void used(String id, Instant now) {
        jdbc.sql("update provider_identity set last_used_at = :now where id = :id")
                .param("now", now.atOffset(ZoneOffset.UTC))
                .param("id", id)
                .update();
    }

    /** False where the person has no such one, or no password to sign in with instead. */
    boolean remove(String personId, String id) {
        return jdbc.sql("delete from provider_identity where id = :id and person_id = :personId and exists"
                                + " (select 1 from person where person.id = :personId and password_hash is not null)")
                        .param("id", id)
                        .param("personId", personId)
                        .update()
                == 1;
    }

    private static Linked linked(ResultSet row, int number) throws SQLException {
        OffsetDateTime used = row.getObject("last_used_at", OffsetDateTime.class);
        return new Linked(
                row.getString("id"),
                row.getString("person_id"),
                new ProviderIdentity(row.getString("issuer"), row.getString("subject"), row.getString("provider")),
                row.getObject("linked_at", OffsetDateTime.class).toInstant(),
                used == null ? null : used.toInstant());
    }
}
