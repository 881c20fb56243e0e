package org.vanewright.record;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * Keeps the revisions of one kind of record in one table. A feature extends it for its own table, which nobody else
 * touches. Subclasses and their public methods must not be final, since transactions come from a proxy.
 *
 * <p>Text in {@code content} is canonical JSON and is never changed after it is inserted; only {@code state} moves.
 */
public abstract class RevisionRepository<T extends RecordContent> {
    /** Most items a page may have. */
    public static final int LARGEST_PAGE = 200;

    private final JdbcClient jdbc;
    private final CanonicalJson json;
    private final Clock clock;
    private final String table;
    private final String kind;
    private final Class<T> type;
    private final RevisionRepositoryRows<T> rows;
    private final RevisionRepositoryLists<T> lists;
    private final RevisionRepositoryMoves moves;
    private final RevisionRepositoryInserts<T> inserts;
    private final RevisionRepositoryImports<T> imports;
    private final RevisionRepositoryPublic<T> everythingPublic;

    /**
     * @param table such as {@code "airframe_revision"}; what stands before {@code _revision} names the kind of record
     * @param type the document kept in it
     */
    protected RevisionRepository(JdbcClient jdbc, CanonicalJson json, Clock clock, String table, Class<T> type) {
        if (!table.matches("[a-z]+(_[a-z]+)*_revision")) {
            throw new IllegalArgumentException("not the name of a table of revisions: " + table);
        }
        this.jdbc = jdbc;
        this.json = json;
        this.clock = clock;
        this.table = table;
        this.kind = table.substring(0, table.length() - "_revision".length()).replace('_', '-');
        this.type = type;
        this.rows = new RevisionRepositoryRows<>(table, json, type);
        this.lists = new RevisionRepositoryLists<>(jdbc, table, rows);
        this.moves = new RevisionRepositoryMoves(jdbc, table);
        this.inserts = new RevisionRepositoryInserts<>(jdbc, json, clock, table, kind, type);
        this.imports = new RevisionRepositoryImports<>(jdbc, json, table, type, rows, inserts);
        this.everythingPublic = new RevisionRepositoryPublic<>(jdbc, table, rows);
    }

    /** The kind of record, such as {@code "airframe"}. */
    public String kind() {
        return kind;
    }

    /** The document it keeps. */
    public Class<T> type() {
        return type;
    }

    /** The published revision, if there is one. */
    public Optional<Revision<T>> latest(String slug) {
        if (!Slugs.isSlug(slug)) {
            return Optional.empty();
        }
        return jdbc.sql(rows.select(
                        "where slug = :slug and state = 'PUBLISHED' order by revision desc fetch first 1 rows only"))
                .param("slug", slug)
                .query(rows::revision)
                .optional();
    }

    /** Which revision is published, if one is, without what it says. */
    public Optional<RevisionRef> latestRef(String slug) {
        if (!Slugs.isSlug(slug)) {
            return Optional.empty();
        }
        return jdbc.sql("select revision from " + table + " where slug = :slug and state = 'PUBLISHED'"
                        + " order by revision desc fetch first 1 rows only")
                .param("slug", slug)
                .query(Integer.class)
                .optional()
                .map(revision -> new RevisionRef(slug, revision));
    }

    /** One exact revision, whatever its state. */
    public Optional<Revision<T>> find(RevisionRef ref) {
        if (!Slugs.isSlug(ref.slug())) {
            return Optional.empty();
        }
        return jdbc.sql(rows.select("where slug = :slug and revision = :revision"))
                .param("slug", ref.slug())
                .param("revision", ref.revision())
                .query(rows::revision)
                .optional();
    }

    /** Exact revisions in one statement, whatever their state, in no certain order; those that do not exist are left out. */
    public List<Revision<T>> findAll(Collection<RevisionRef> refs) {
        List<RevisionRef> sought =
                refs.stream().filter(ref -> Slugs.isSlug(ref.slug())).distinct().toList();
        if (sought.isEmpty()) {
            return List.of();
        }
        // By pairs in arrays: for a list of pairs H2 would read the whole table, or compare each with each.
        return jdbc.sql(rows.select(
                        "join unnest(cast(:slugs as varchar array), cast(:revisions as integer array)) k (k_slug, k_revision)"
                                + " on slug = k_slug and revision = k_revision"))
                .param("slugs", sought.stream().map(RevisionRef::slug).toArray(String[]::new))
                .param("revisions", sought.stream().map(RevisionRef::revision).toArray(Integer[]::new))
                .query(rows::revision)
                .list();
    }

    /**
     * The published revision of each record without what it says, newest first: for lists of everything.
     *
     * @param skip how many of the newest are left out
     * @param most how many are wanted
     */
    public List<RevisionHead> heads(int skip, int most) {
        return lists.heads(skip, most);
    }

    /** As {@link #heads} for revisions that a table of links names, as in {@link #publishedLinked}. */
    protected List<RevisionHead> headsLinked(String links, String column, String sought, int most) {
        requireNames(links, column);
        return jdbc.sql("select slug, revision, sha256, published_at from " + table
                        + " where state = 'PUBLISHED' and exists (select 1 from " + links + " l where l.slug = " + table
                        + ".slug and l.revision = " + table + ".revision and l." + column + " = :sought)"
                        + " order by published_at desc, slug fetch first :most rows only")
                .param("sought", sought)
                .param("most", most)
                .query(RevisionRepositoryRows::head)
                .list();
    }

    /**
     * Published revisions that a table of links names, by what is looked for, newest first, without what they say.
     *
     * @param links name of the table
     * @param column of it that holds what is looked for
     */
    protected Map<String, List<RevisionRef>> refsLinked(String links, String column, Collection<String> sought) {
        requireNames(links, column);
        List<String> slugs = sought.stream().filter(Slugs::isSlug).distinct().toList();
        Map<String, List<RevisionRef>> found = new HashMap<>();
        if (!slugs.isEmpty()) {
            jdbc.sql("select l." + column + " as sought, r.slug, r.revision from " + links + " l join " + table
                            + " r on r.slug = l.slug and r.revision = l.revision where l." + column
                            + " in (:sought) and r.state = 'PUBLISHED' order by r.published_at desc, r.slug")
                    .param("sought", slugs)
                    .query(row -> {
                        found.computeIfAbsent(row.getString("sought"), k -> new ArrayList<>())
                                .add(new RevisionRef(row.getString("slug"), row.getInt("revision")));
                    });
        }
        return found;
    }

    private static void requireNames(String links, String column) {
        if (!(links + column).matches("[a-z_]+")) {
            throw new IllegalArgumentException("not names of a table and a column: " + links + ", " + column);
        }
    }

    /** What is public, read as a whole and counted. */
    public RevisionRepositoryPublic<T> everythingPublic() {
        return everythingPublic;
    }

    /** How many records have a published revision. */
    public int countPublished() {
        return jdbc.sql("select count(*) from " + table + " where state = 'PUBLISHED'")
                .query(Integer.class)
                .single();
    }

    /** As {@link #history}, without what the revisions say. */
    public List<ListedRevision> listedHistory(String slug) {
        if (!Slugs.isSlug(slug)) {
            return List.of();
        }
        return jdbc.sql(rows.selectListed("where slug = :slug order by revision desc"))
                .param("slug", slug)
                .query(rows::listed)
                .list();
    }

    /** Every revision of a record, newest first; empty if there is no such record. */
    public List<Revision<T>> history(String slug) {
        if (!Slugs.isSlug(slug)) {
            return List.of();
        }
        return jdbc.sql(rows.select("where slug = :slug order by revision desc"))
                .param("slug", slug)
                .query(rows::revision)
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
        return lists.list(cursor, limit);
    }

    /** As {@link #list}, without what the records say. */
    public RecordPage<RevisionHead> listHeads(@Nullable String cursor, int limit) {
        return lists.listHeads(cursor, limit);
    }

    /**
     * Publishes the first revision of a new record at once, under a slug made from its name: only for what comes with
     * the service. Two at once with the same name get two slugs.
     */
    @Transactional
    public Revision<T> publishNew(T content, String contributor, @Nullable RevisionRef derivedFrom) {
        return noted(inserts.insertFirst(shipped(content, contributor, derivedFrom)));
    }

    /**
     * Publishes the next revision of a record at once: only for what comes with the service. The former one becomes
     * superseded in the same transaction.
     *
     * @param base the revision the change started from
     * @throws RevisionConflictException if another one is published by now
     * @throws RecordNotFoundException if the record has no such revision, or none that is published
     */
    @Transactional
    public Revision<T> publishNext(RevisionRef base, T content, String contributor) {
        requireTransaction();
        RevisionRepositoryInserts.Frozen<T> frozen = shipped(content, contributor, base);
        moves.lock(base.slug());
        if (!moves.supersede(base)) {
            throw refusal(base);
        }
        return noted(inserts.insertNext(base.slug(), frozen));
    }

    /**
     * Freezes what was submitted. Its text and hash never change from here on.
     *
     * @param slug of the record; null for the first submission of a new one
     */
    @Transactional
    public Revision<T> submit(
            @Nullable String slug,
            T content,
            PersonRef contributor,
            @Nullable RevisionRef derivedFrom,
            Licence licence,
            @Nullable String summary,
            String draftId) {
        requireTransaction();
        RevisionRepositoryInserts.Frozen<T> frozen = inserts.frozen(
                content,
                contributor.name(),
                derivedFrom,
                RecordState.SUBMITTED,
                at -> Standing.submitted(contributor.id(), licence, summary, draftId));
        if (slug == null) {
            return noted(inserts.insertFirst(frozen));
        }
        moves.lock(slug);
        return noted(inserts.insertNext(slug, frozen));
    }

    /**
     * Keeps what was published elsewhere, under its slug and number there, or under the first slug with a number behind it
     * where no other record stands. Nothing here is changed by it.
     *
     */
    @Transactional
    public Revision<T> keepImported(ImportedDocument document, ImportOrigin origin) {
        requireTransaction();
        return noted(imports.insert(document, origin));
    }

    /** Revisions of the document with that hash, whatever it names, but drafts of somebody. */
    public List<Revision<T>> withHash(String sha256) {
        return imports.withHash(sha256);
    }

    /**
     * Makes an imported revision public. It becomes the current one unless a later one is.
     *
     * @throws DraftClosedException if it is not waiting
     */
    @Transactional
    public void accept(Revision<T> imported, String by) {
        requireTransaction();
        moves.lock(imported.slug());
        Optional<Revision<T>> current = latest(imported.slug());
        boolean overtaken = current.isPresent() && current.get().number() > imported.number();
        if (!overtaken) {
            current.ifPresent(r -> moves.supersede(r.ref()));
        }
        imports.accept(imported, overtaken ? RecordState.SUPERSEDED : RecordState.PUBLISHED, by, now());
    }

    private Revision<T> noted(Revision<T> revision) {
        inserted(revision);
        return revision;
    }

    /**
     * Makes a submitted revision the published one; the one it changes becomes superseded in the same transaction.
     *
     * @param by display name of who publishes it
     * @throws RevisionConflictException if another revision was published since the one it changes
     * @throws DraftClosedException if it is not waiting
     */
    @Transactional
    public void publish(Revision<T> waiting, String by) {
        requireTransaction();
        moves.lock(waiting.slug());
        Optional<Revision<T>> current = latest(waiting.slug());
        RevisionRef base = waiting.base();
        if (current.isPresent() && (base == null || !current.get().ref().equals(base))) {
            throw new RevisionConflictException(base == null ? waiting.ref() : base, current.get());
        }
        current.ifPresent(r -> moves.supersede(r.ref()));
        if (!moves.publish(waiting.ref(), by, now())) {
            throw new DraftClosedException("Revision " + waiting.number() + " no longer waits for a review.");
        }
    }

    /**
     * Returns a submitted revision, or withdraws a public one.
     *
     * @return false if it does not stand at {@code from}
     */
    @Transactional
    public boolean close(RevisionRef ref, RecordState from, RecordState to, String by, String reason) {
        if (!from.mayBecome(to)) {
            throw new IllegalArgumentException(from + " does not become " + to);
        }
        return moves.close(ref, from, to, by, reason, now());
    }

    /** Revisions that wait for a review, oldest first. */
    public List<Revision<T>> waiting(int most) {
        return jdbc.sql(
                        rows.select(
                                "where state in ('SUBMITTED', 'IMPORTED') order by created_at, slug, revision fetch first :most rows only"))
                .param("most", most)
                .query(rows::revision)
                .list();
    }

    /** How much waits for a review. */
    public Backlog backlog() {
        return jdbc.sql("select count(*) as waiting, min(created_at) as oldest from " + table
                        + " where state in ('SUBMITTED', 'IMPORTED')")
                .query((row, n) -> new Backlog(row.getLong("waiting"), RevisionRepositoryRows.instant(row, "oldest")))
                .single();
    }

    /**
     * Keeps beside a new revision what is asked for besides its text, in the transaction that inserts it. Nothing unless a
     * feature says so.
     */
    protected void inserted(Revision<T> revision) {}

    /** Published revisions, newest first. */
    protected List<Revision<T>> newestPublished(int most) {
        return lists.newest(most);
    }

    /**
     * Published revisions that a table of links names, newest first. The table has {@code slug} and {@code revision} of
     * theirs.
     *
     * @param links name of the table
     * @param column of it that holds what is looked for
     */
    protected List<Revision<T>> publishedLinked(String links, String column, String sought, int most) {
        requireNames(links, column);
        return jdbc.sql(rows.select("where state = 'PUBLISHED' and exists (select 1 from " + links
                        + " l where l.slug = "
                        + table + ".slug and l.revision = " + table + ".revision and l." + column + " = :sought)"
                        + " order by published_at desc, slug fetch first :most rows only"))
                .param("sought", sought)
                .param("most", most)
                .query(rows::revision)
                .list();
    }

    /** Public revisions that were made from one, other records' among them, oldest first. */
    public List<Revision<T>> children(RevisionRef parent, int most) {
        return jdbc.sql(rows.select("where derived_from_slug = :slug and derived_from_revision = :revision"
                        + " and state in ('PUBLISHED', 'SUPERSEDED', 'WITHDRAWN')"
                        + " order by created_at, slug, revision fetch first :most rows only"))
                .param("slug", parent.slug())
                .param("revision", parent.revision())
                .param("most", most)
                .query(rows::revision)
                .list();
    }

    private static void requireTransaction() {
        if (!TransactionSynchronizationManager.isActualTransactionActive()) {
            throw new IllegalStateException("several statements belong together here: call this through the bean");
        }
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
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

    /** A document from its stored text. */
    public T read(String stored) {
        return json.read(stored, type);
    }

    private RevisionRepositoryInserts.Frozen<T> shipped(
            T content, String contributor, @Nullable RevisionRef derivedFrom) {
        return inserts.frozen(
                content, contributor, derivedFrom, RecordState.PUBLISHED, at -> Standing.shipped(contributor, at));
    }
}
