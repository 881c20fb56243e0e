package org.vanewright.kit;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.vanewright.record.PersonRef;
import org.vanewright.record.RevisionRef;

/** Keeps kits that were sent, until somebody decides on them, and what came of them. */
@Repository
class KitRepository {
    private final JdbcClient jdbc;

    KitRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * A kit that was sent.
     *
     * @param contents as JSON
     * @param outcome as JSON; absent until it is kept
     */
    record Row(
            String id,
            PersonRef person,
            String sha256,
            Instant sentAt,
            @Nullable Instant keptAt,
            String contents,
            @Nullable String outcome) {}

    void insert(String id, PersonRef person, String sha256, Instant at, String contents) {
        jdbc.sql("insert into kit_import (id, person_id, person, sha256, sent_at, contents)"
                        + " values (:id, :personId, :person, :sha256, :at, :contents)")
                .param("id", id)
                .param("personId", person.id())
                .param("person", person.name())
                .param("sha256", sha256)
                .param("at", at.atOffset(ZoneOffset.UTC))
                .param("contents", contents)
                .update();
    }

    void insertPhotograph(String id, String sha256, byte[] jpeg) {
        jdbc.sql("insert into kit_photograph (import_id, sha256, jpeg) values (:id, :sha256, :jpeg)")
                .param("id", id)
                .param("sha256", sha256)
                .param("jpeg", jpeg)
                .update();
    }

    Optional<Row> find(String id, String personId) {
        return jdbc.sql("select * from kit_import where id = :id and person_id = :person")
                .param("id", id)
                .param("person", personId)
                .query((row, number) -> {
                    OffsetDateTime kept = row.getObject("kept_at", OffsetDateTime.class);
                    return new Row(
                            row.getString("id"),
                            new PersonRef(row.getString("person_id"), row.getString("person")),
                            row.getString("sha256").strip(),
                            row.getObject("sent_at", OffsetDateTime.class).toInstant(),
                            kept == null ? null : kept.toInstant(),
                            row.getString("contents"),
                            row.getString("outcome"));
                })
                .optional();
    }

    /** Photographs of a kit by their hash. */
    List<Map.Entry<String, byte[]>> photographs(String id) {
        return jdbc.sql("select sha256, jpeg from kit_photograph where import_id = :id order by sha256")
                .param("id", id)
                .query((row, number) -> Map.entry(row.getString("sha256").strip(), row.getBytes("jpeg")))
                .list();
    }

    /** False if it is kept already, or somebody keeps it at this moment. */
    boolean markKept(String id, Instant at, String outcome) {
        return jdbc.sql("update kit_import set kept_at = :at, outcome = :outcome where id = :id and kept_at is null")
                        .param("id", id)
                        .param("at", at.atOffset(ZoneOffset.UTC))
                        .param("outcome", outcome)
                        .update()
                == 1;
    }

    void deletePhotographs(String id) {
        jdbc.sql("delete from kit_photograph where import_id = :id")
                .param("id", id)
                .update();
    }

    /** False if there is none of that person's that could still be given up. */
    boolean discard(String id, String personId) {
        return jdbc.sql("delete from kit_import where id = :id and person_id = :person and kept_at is null")
                        .param("id", id)
                        .param("person", personId)
                        .update()
                == 1;
    }

    /** Gives up what a person sent before and did not keep, and what anybody left lying. */
    void sweep(String personId, Instant before) {
        jdbc.sql("delete from kit_import where kept_at is null and (person_id = :person or sent_at < :before)")
                .param("person", personId)
                .param("before", before.atOffset(ZoneOffset.UTC))
                .update();
    }

    /** What the origin said of how an imported revision came to be. */
    Optional<String> provenance(String plural, RevisionRef ref) {
        return jdbc.sql("select prov from kit_provenance"
                        + " where plural = :plural and slug = :slug and revision = :revision")
                .param("plural", plural)
                .param("slug", ref.slug())
                .param("revision", ref.revision())
                .query((row, number) -> row.getString("prov"))
                .optional();
    }

    void insertProvenance(String plural, RevisionRef ref, String prov) {
        jdbc.sql("insert into kit_provenance (plural, slug, revision, prov)"
                        + " values (:plural, :slug, :revision, :prov)")
                .param("plural", plural)
                .param("slug", ref.slug())
                .param("revision", ref.revision())
                .param("prov", prov)
                .update();
    }
}
