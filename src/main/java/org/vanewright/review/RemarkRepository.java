package org.vanewright.review;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.vanewright.record.PersonRef;
import org.vanewright.record.RevisionRef;

/** What reviewers said; only ever added to. */
@Repository
class RemarkRepository {
    private final JdbcClient jdbc;

    RemarkRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void insert(String kind, RevisionRef ref, Remark remark) {
        jdbc.sql("insert into review_remark (kind, slug, revision, field, words, person_id, person, written_at)"
                        + " values (:kind, :slug, :revision, :field, :words, :personId, :person, :at)")
                .param("kind", kind)
                .param("slug", ref.slug())
                .param("revision", ref.revision())
                .param("field", remark.field())
                .param("words", remark.text())
                .param("personId", remark.person().id())
                .param("person", remark.person().name())
                .param("at", remark.at().atOffset(ZoneOffset.UTC))
                .update();
    }

    /** Oldest first. */
    List<Remark> of(String kind, RevisionRef ref) {
        return jdbc.sql("select field, words, person_id, person, written_at from review_remark"
                        + " where kind = :kind and slug = :slug and revision = :revision order by id")
                .param("kind", kind)
                .param("slug", ref.slug())
                .param("revision", ref.revision())
                .query((row, n) -> new Remark(
                        row.getString("field"),
                        row.getString("words"),
                        new PersonRef(row.getString("person_id"), row.getString("person")),
                        row.getObject("written_at", OffsetDateTime.class).toInstant()))
                .list();
    }
}
