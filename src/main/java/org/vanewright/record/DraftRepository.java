package org.vanewright.record;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Drafts of every kind. Each saving is a row of its own, so that nothing typed is ever overwritten. */
@Repository
class DraftRepository implements OwnDrafts {
    private final JdbcClient jdbc;

    DraftRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void insert(DraftSummary draft, String content) {
        jdbc.sql("insert into draft (id, kind, name, state, version, author_id, author, created_at, changed_at,"
                        + " base_slug, base_revision, origin_slug, origin_revision)"
                        + " values (:id, :kind, :name, 'DRAFT', 1, :authorId, :author, :at, :at,"
                        + " :baseSlug, :baseRevision, :originSlug, :originRevision)")
                .param("id", draft.id())
                .param("kind", draft.kind())
                .param("name", draft.name())
                .param("authorId", draft.author().id())
                .param("author", draft.author().name())
                .param("at", draft.createdAt().atOffset(ZoneOffset.UTC))
                .param("baseSlug", slug(draft.base()))
                .param("baseRevision", number(draft.base()))
                .param("originSlug", slug(draft.origin()))
                .param("originRevision", number(draft.origin()))
                .update();
        insertVersion(draft.id(), 1, content, draft.author(), draft.createdAt());
    }

    private void insertVersion(String id, int version, String content, PersonRef person, Instant at) {
        jdbc.sql("insert into draft_version (draft_id, version, content, person_id, person, saved_at)"
                        + " values (:id, :version, :content, :personId, :person, :at)")
                .param("id", id)
                .param("version", version)
                .param("content", content)
                .param("personId", person.id())
                .param("person", person.name())
                .param("at", at.atOffset(ZoneOffset.UTC))
                .update();
    }

    /** False if another version is saved by now, or the draft is not open. */
    boolean save(String id, int startedFrom, String name, String content, PersonRef person, Instant at) {
        int changed = jdbc.sql("update draft set version = version + 1, name = :name, changed_at = :at"
                        + " where id = :id and version = :version and state in ('DRAFT', 'RETURNED')")
                .param("name", name)
                .param("at", at.atOffset(ZoneOffset.UTC))
                .param("id", id)
                .param("version", startedFrom)
                .update();
        if (changed == 1) {
            insertVersion(id, startedFrom + 1, content, person, at);
        }
        return changed == 1;
    }

    void base(String id, RevisionRef base) {
        jdbc.sql("update draft set base_slug = :slug, base_revision = :revision where id = :id")
                .param("slug", base.slug())
                .param("revision", base.revision())
                .param("id", id)
                .update();
    }

    /** False if that version is no longer the saved one, or the draft does not stand where this step begins. */
    boolean submitted(String id, int version, RevisionRef as) {
        return jdbc.sql("update draft set state = 'SUBMITTED', slug = :slug, revision = :revision"
                                + " where id = :id and version = :version and state in ('DRAFT', 'RETURNED')")
                        .param("slug", as.slug())
                        .param("revision", as.revision())
                        .param("id", id)
                        .param("version", version)
                        .update()
                == 1;
    }

    /** False if it does not stand at {@code from}. */
    boolean move(String id, DraftState from, DraftState to) {
        return jdbc.sql("update draft set state = :to where id = :id and state = :from")
                        .param("to", to.name())
                        .param("id", id)
                        .param("from", from.name())
                        .update()
                == 1;
    }

    Optional<DraftSummary> find(String id) {
        return jdbc.sql("select * from draft where id = :id")
                .param("id", id)
                .query(DraftRepository::summary)
                .optional();
    }

    Optional<String> content(String id, int version) {
        return jdbc.sql("select content from draft_version where draft_id = :id and version = :version")
                .param("id", id)
                .param("version", version)
                .query((row, n) -> row.getString("content"))
                .optional();
    }

    List<PersonRef> coauthors(String id) {
        return jdbc.sql("select person_id, person from draft_coauthor where draft_id = :id order by person, person_id")
                .param("id", id)
                .query((row, n) -> new PersonRef(row.getString("person_id"), row.getString("person")))
                .list();
    }

    void addCoauthor(String id, PersonRef person) {
        jdbc.sql("insert into draft_coauthor (draft_id, person_id, person) values (:id, :personId, :person)"
                        + " on conflict do nothing")
                .param("id", id)
                .param("personId", person.id())
                .param("person", person.name())
                .update();
    }

    void removeCoauthor(String id, String personId) {
        jdbc.sql("delete from draft_coauthor where draft_id = :id and person_id = :personId")
                .param("id", id)
                .param("personId", personId)
                .update();
    }

    @Override
    public boolean mention(String personId, String word) {
        if (!word.matches("[0-9A-Za-z]{1,100}")) {
            throw new IllegalArgumentException("letters and digits only");
        }
        return jdbc.sql(
                                "select count(*) from draft d join draft_version v on v.draft_id = d.id and v.version = d.version"
                                        + " where (d.author_id = :personId or d.id in"
                                        + " (select draft_id from draft_coauthor where person_id = :personId))"
                                        + " and v.content like :like")
                        .param("personId", personId)
                        .param("like", "%" + word + "%")
                        .query(Integer.class)
                        .single()
                > 0;
    }

    /** Author's and co-authors' drafts, given-up ones left out, last changed first. */
    List<DraftSummary> of(String personId, int most) {
        return jdbc.sql("select * from draft where state <> 'DISCARDED' and (author_id = :personId"
                        + " or id in (select draft_id from draft_coauthor where person_id = :personId))"
                        + " order by changed_at desc, id fetch first :most rows only")
                .param("personId", personId)
                .param("most", most)
                .query(DraftRepository::summary)
                .list();
    }

    /** A person's drafts that can still change. */
    int countOpen(String authorId) {
        return jdbc.sql("select count(*) from draft where author_id = :authorId and state in ('DRAFT', 'RETURNED')")
                .param("authorId", authorId)
                .query(Integer.class)
                .single();
    }

    /** The author's own draft of the next revision, if one is open or waits. */
    Optional<String> unfinished(String kind, String slug, String authorId) {
        return jdbc.sql("select id from draft where kind = :kind and author_id = :authorId"
                        + " and (base_slug = :slug or slug = :slug) and state in ('DRAFT', 'RETURNED', 'SUBMITTED')"
                        + " order by changed_at desc fetch first 1 rows only")
                .param("kind", kind)
                .param("authorId", authorId)
                .param("slug", slug)
                .query((row, n) -> row.getString("id"))
                .optional();
    }

    private static DraftSummary summary(ResultSet row, int number) throws SQLException {
        return new DraftSummary(
                row.getString("id"),
                row.getString("kind"),
                row.getString("name"),
                DraftState.valueOf(row.getString("state")),
                row.getInt("version"),
                new PersonRef(row.getString("author_id"), row.getString("author")),
                row.getObject("created_at", OffsetDateTime.class).toInstant(),
                row.getObject("changed_at", OffsetDateTime.class).toInstant(),
                ref(row, "base_slug", "base_revision"),
                ref(row, "origin_slug", "origin_revision"),
                ref(row, "slug", "revision"));
    }

    private static @Nullable RevisionRef ref(ResultSet row, String slug, String revision) throws SQLException {
        String found = row.getString(slug);
        return found == null ? null : new RevisionRef(found, row.getInt(revision));
    }

    private static @Nullable String slug(@Nullable RevisionRef ref) {
        return ref == null ? null : ref.slug();
    }

    private static @Nullable Integer number(@Nullable RevisionRef ref) {
        return ref == null ? null : (Integer) ref.revision();
    }
}
