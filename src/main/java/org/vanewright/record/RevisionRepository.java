package org.vanewright.record;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import org.vanewright.engineering.input.Checks;

/**
 * Keeps the revisions of one kind of record in one table. A feature extends it for its own table, which nobody else
 * touches. Subclasses and their public methods must not be final, since transactions come from a proxy.
 *
 * <p>Text in {@code content} is canonical JSON and is never changed after it is inserted; only {@code state} moves.
 */
public abstract class RevisionRepository<T extends RecordContent> {
    /** Most items a page may have. */
    public static final int LARGEST_PAGE = 200;

    private static final String COLUMNS = "slug, revision, state, content, sha256, contributor, created_at,"
            + " derived_from_slug, derived_from_revision";

    private final JdbcClient jdbc;
    private final CanonicalJson json;
    private final Clock clock;
    private final String table;
    private final String kind;
    private final Class<T> type;

    /**
     * @param table such as {@code "airframe_revision"}; what stands before the underscore names the kind of record
     * @param type the document kept in it
     */
    protected RevisionRepository(JdbcClient jdbc, CanonicalJson json, Clock clock, String table, Class<T> type) {
        if (!table.matches("[a-z]+_revision")) {
            throw new IllegalArgumentException("not the name of a table of revisions: " + table);
        }
        this.jdbc = jdbc;
        this.json = json;
        this.clock = clock;
        this.table = table;
        this.kind = table.substring(0, table.indexOf('_'));
        this.type = type;
    }

    /** The published revision, if there is one. */
    public Optional<Revision<T>> latest(String slug) {
        return jdbc.sql(select(
                        "where slug = :slug and state = 'PUBLISHED' order by revision desc fetch first 1 rows only"))
                .param("slug", slug)
                .query(this::revision)
                .optional();
    }

    /** One exact revision, whatever its state. */
    public Optional<Revision<T>> find(RevisionRef ref) {
        return jdbc.sql(select("where slug = :slug and revision = :revision"))
                .param("slug", ref.slug())
                .param("revision", ref.revision())
                .query(this::revision)
                .optional();
    }

    /** Every revision of a record, newest first; empty if there is no such record. */
    public List<Revision<T>> history(String slug) {
        return jdbc.sql(select("where slug = :slug order by revision desc"))
                .param("slug", slug)
                .query(this::revision)
                .list();
    }

    /**
     * The published revision of each record, newest first.
     *
     * @param cursor of an earlier page; absent asks for the first
     * @param limit most items wanted, 1 to {@value #LARGEST_PAGE}
     * @throws org.vanewright.engineering.input.InvalidInputException naming {@code cursor} or {@code limit}
     */
    public RecordPage<Revision<T>> list(@Nullable String cursor, int limit) {
        Checks checks = new Checks();
        checks.require(limit >= 1 && limit <= LARGEST_PAGE, "limit", limit, "a whole number from 1 to " + LARGEST_PAGE);
        checks.throwIfAny();
        List<Revision<T>> found =
                cursor == null ? firstPage(limit + 1) : pageAfter(ListCursor.decode(cursor), limit + 1);
        if (found.size() <= limit) {
            return new RecordPage<>(List.copyOf(found), null);
        }
        Revision<T> last = found.get(limit - 1);
        return new RecordPage<>(
                List.copyOf(found.subList(0, limit)), new ListCursor(last.createdAt(), last.slug()).encode());
    }

    private List<Revision<T>> firstPage(int rows) {
        return jdbc.sql(select("where state = 'PUBLISHED' order by created_at desc, slug fetch first :rows rows only"))
                .param("rows", rows)
                .query(this::revision)
                .list();
    }

    private List<Revision<T>> pageAfter(ListCursor last, int rows) {
        return jdbc.sql(select("where state = 'PUBLISHED'"
                        + " and (created_at < :createdAt or (created_at = :createdAt and slug > :slug))"
                        + " order by created_at desc, slug fetch first :rows rows only"))
                .param("createdAt", last.createdAt().atOffset(ZoneOffset.UTC))
                .param("slug", last.slug())
                .param("rows", rows)
                .query(this::revision)
                .list();
    }

    /**
     * Publishes the first revision of a new record, under a slug made from its name. Two at once with the same name get
     * two slugs.
     */
    @Transactional
    public Revision<T> publishNew(T content, String contributor, @Nullable RevisionRef derivedFrom) {
        Draft<T> draft = draft(content, contributor, derivedFrom);
        int attempt = 1;
        String slug = Slugs.candidate(content.name(), kind, attempt);
        while (!insert(slug, 1, draft)) {
            slug = Slugs.candidate(content.name(), kind, ++attempt);
        }
        return draft.as(slug, 1);
    }

    /**
     * Publishes the next revision of a record; the former one becomes superseded in the same transaction.
     *
     * @param base the revision the change started from
     * @throws RevisionConflictException if another one is published by now
     * @throws RecordNotFoundException if the record has no such revision, or none that is published
     */
    @Transactional
    public Revision<T> publishNext(RevisionRef base, T content, String contributor) {
        if (!TransactionSynchronizationManager.isActualTransactionActive()) {
            throw new IllegalStateException("two statements belong together here: call this through the bean");
        }
        Draft<T> draft = draft(content, contributor, base);
        // The update locks the row, so that whoever comes second waits here and then finds it superseded.
        int superseded = jdbc.sql("update " + table + " set state = 'SUPERSEDED'"
                        + " where slug = :slug and revision = :revision and state = 'PUBLISHED'")
                .param("slug", base.slug())
                .param("revision", base.revision())
                .update();
        int next = newestNumber(base.slug()) + 1;
        if (superseded == 0 || !insert(base.slug(), next, draft)) {
            throw refusal(base);
        }
        return draft.as(base.slug(), next);
    }

    private RuntimeException refusal(RevisionRef base) {
        if (find(base).isEmpty()) {
            return new RecordNotFoundException(kind, base.slug(), base.revision());
        }
        Optional<Revision<T>> current = latest(base.slug());
        return current.isPresent()
                ? new RevisionConflictException(base, current.get())
                : new RecordNotFoundException(kind, base.slug(), null);
    }

    private int newestNumber(String slug) {
        return jdbc.sql("select coalesce(max(revision), 0) from " + table + " where slug = :slug")
                .param("slug", slug)
                .query(Integer.class)
                .single();
    }

    /** The document exactly as stored and hashed, if there is such a revision. */
    public Optional<String> canonicalJson(RevisionRef ref) {
        return jdbc.sql("select content from " + table + " where slug = :slug and revision = :revision")
                .param("slug", ref.slug())
                .param("revision", ref.revision())
                .query((row, number) -> row.getString("content"))
                .optional();
    }

    /** Whether the stored document still has the hash it was published with, computed again from its text. */
    public boolean verify(Revision<T> revision) {
        return canonicalJson(revision.ref())
                .filter(stored -> json.sha256(json.canonicalize(stored)).equals(revision.sha256()))
                .isPresent();
    }

    private Draft<T> draft(T content, String contributor, @Nullable RevisionRef derivedFrom) {
        String canonical = json.write(content);
        // Read back, so that what is returned is what will be found, and nothing unreadable is ever stored.
        T stored = json.read(canonical, type);
        Instant now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        return new Draft<>(stored, canonical, json.sha256(canonical), contributor, now, derivedFrom);
    }

    /** False if that revision exists already. */
    private boolean insert(String slug, int number, Draft<T> draft) {
        RevisionRef origin = draft.derivedFrom();
        return jdbc.sql("insert into " + table + " (" + COLUMNS + ", name) values (:slug, :revision, 'PUBLISHED',"
                                + " :content, :sha256, :contributor, :createdAt, :originSlug, :originRevision, :name)"
                                + " on conflict do nothing")
                        .param("slug", slug)
                        .param("revision", number)
                        .param("content", draft.canonical())
                        .param("sha256", draft.sha256())
                        .param("contributor", draft.contributor())
                        .param("createdAt", draft.createdAt().atOffset(ZoneOffset.UTC))
                        .param("originSlug", origin == null ? null : origin.slug())
                        .param("originRevision", origin == null ? null : origin.revision())
                        .param("name", draft.content().name())
                        .update()
                == 1;
    }

    private String select(String rest) {
        return "select " + COLUMNS + " from " + table + " " + rest;
    }

    private Revision<T> revision(ResultSet row, int rowNumber) throws SQLException {
        String originSlug = row.getString("derived_from_slug");
        return new Revision<>(
                row.getString("slug"),
                row.getInt("revision"),
                RecordState.valueOf(row.getString("state")),
                json.read(row.getString("content"), type),
                row.getString("sha256"),
                row.getString("contributor"),
                row.getObject("created_at", OffsetDateTime.class).toInstant(),
                originSlug == null ? null : new RevisionRef(originSlug, row.getInt("derived_from_revision")));
    }

    /** A revision before it has its place. */
    private record Draft<T extends RecordContent>(
            T content,
            String canonical,
            String sha256,
            String contributor,
            Instant createdAt,
            @Nullable RevisionRef derivedFrom) {
        Revision<T> as(String slug, int number) {
            return new Revision<>(
                    slug, number, RecordState.PUBLISHED, content, sha256, contributor, createdAt, derivedFrom);
        }
    }
}
