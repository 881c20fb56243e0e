package org.vanewright.record;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Places what comes from other instances beside what is here. */
final class RevisionRepositoryImports<T extends RecordContent> {
    private static final int LONGEST_SLUG = 76;

    private final JdbcClient jdbc;
    private final CanonicalJson json;
    private final String table;
    private final Class<T> type;
    private final RevisionRepositoryRows<T> rows;
    private final RevisionRepositoryInserts<T> inserts;

    RevisionRepositoryImports(
            JdbcClient jdbc,
            CanonicalJson json,
            String table,
            Class<T> type,
            RevisionRepositoryRows<T> rows,
            RevisionRepositoryInserts<T> inserts) {
        this.jdbc = jdbc;
        this.json = json;
        this.table = table;
        this.type = type;
        this.rows = rows;
        this.inserts = inserts;
    }

    Revision<T> insert(ImportedDocument document, ImportOrigin origin) {
        RevisionRepositoryInserts.Frozen<T> frozen = frozen(document, origin);
        int attempt = 1;
        while (true) {
            String slug = candidate(origin.slug(), attempt++);
            if (mayStandAt(slug, origin) && inserts.insert(slug, origin.revision(), frozen)) {
                return frozen.as(slug, origin.revision());
            }
        }
    }

    private RevisionRepositoryInserts.Frozen<T> frozen(ImportedDocument document, ImportOrigin origin) {
        String read = document.localised() == null ? document.canonical() : document.localised();
        return new RevisionRepositoryInserts.Frozen<>(
                json.read(read, type),
                document.canonical(),
                json.sha256(document.canonical()),
                document.localised(),
                document.contributor(),
                document.createdAt(),
                null,
                RecordState.IMPORTED,
                Standing.imported(document.licence(), origin));
    }

    private static String candidate(String slug, int attempt) {
        String stem = slug.length() > LONGEST_SLUG ? slug.substring(0, LONGEST_SLUG) : slug;
        int number = Slugs.isTaken(slug) ? attempt + 1 : attempt;
        return number == 1 ? slug : stem + "-" + number;
    }

    /** Where nothing stands, or only other revisions of the same record of the same instance. */
    private boolean mayStandAt(String slug, ImportOrigin origin) {
        return jdbc
                .sql("select import_origin from " + table + " where slug = :slug order by revision for update")
                .param("slug", slug)
                .query((row, number) -> sameRecord(row.getString("import_origin"), origin))
                .list()
                .stream()
                .allMatch(same -> same);
    }

    private boolean sameRecord(@Nullable String stored, ImportOrigin origin) {
        return stored != null && json.read(stored, ImportOrigin.class).sameRecord(origin.url(), origin.slug());
    }

    List<Revision<T>> withHash(String sha256) {
        return jdbc.sql(rows.select("where sha256 = :sha256 and (state <> 'RETURNED' or import_origin is not null)"
                        + " and state not in ('DRAFT', 'SUBMITTED') order by created_at, slug, revision"))
                .param("sha256", sha256)
                .query(rows::revision)
                .list();
    }

    void accept(Revision<T> imported, RecordState state, String by, Instant at) {
        int moved = jdbc.sql("update " + table + " set state = :to, published_at = :at, published_by = :by"
                        + " where slug = :slug and revision = :revision and state = 'IMPORTED'")
                .param("to", state.name())
                .param("at", at.atOffset(ZoneOffset.UTC))
                .param("by", by)
                .param("slug", imported.slug())
                .param("revision", imported.number())
                .update();
        if (moved == 0) {
            throw new DraftClosedException("Revision " + imported.number() + " no longer waits for a review.");
        }
    }
}
