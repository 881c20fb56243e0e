package org.vanewright.review;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.vanewright.record.PersonRef;
import org.vanewright.record.RevisionRef;

/** Who looks at what, one person at a time. */
@Repository
class ClaimRepository {
    private static final String KEY = " where kind = :kind and slug = :slug and revision = :revision";

    private final JdbcClient jdbc;

    ClaimRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<Claim> find(String kind, RevisionRef ref) {
        return keyed("select person_id, person, claimed_at from review_claim" + KEY, kind, ref)
                .query((row, n) -> new Claim(
                        new PersonRef(row.getString("person_id"), row.getString("person")),
                        row.getObject("claimed_at", OffsetDateTime.class).toInstant()))
                .optional();
    }

    /** False if somebody has it already. */
    boolean insert(String kind, RevisionRef ref, PersonRef person, Instant at) {
        return keyed(
                                "insert into review_claim (kind, slug, revision, person_id, person, claimed_at)"
                                        + " values (:kind, :slug, :revision, :personId, :person, :at)"
                                        + " on conflict do nothing",
                                kind,
                                ref)
                        .param("personId", person.id())
                        .param("person", person.name())
                        .param("at", at.atOffset(ZoneOffset.UTC))
                        .update()
                == 1;
    }

    /** False if it is no longer {@code from} who has it. */
    boolean move(String kind, RevisionRef ref, String from, PersonRef to, Instant at) {
        return keyed(
                                "update review_claim set person_id = :personId, person = :person, claimed_at = :at"
                                        + KEY + " and person_id = :from",
                                kind,
                                ref)
                        .param("personId", to.id())
                        .param("person", to.name())
                        .param("at", at.atOffset(ZoneOffset.UTC))
                        .param("from", from)
                        .update()
                == 1;
    }

    /** False if that person does not have it. */
    boolean delete(String kind, RevisionRef ref, String personId) {
        return keyed("delete from review_claim" + KEY + " and person_id = :personId", kind, ref)
                        .param("personId", personId)
                        .update()
                == 1;
    }

    private JdbcClient.StatementSpec keyed(String sql, String kind, RevisionRef ref) {
        return jdbc.sql(sql).param("kind", kind).param("slug", ref.slug()).param("revision", ref.revision());
    }
}
