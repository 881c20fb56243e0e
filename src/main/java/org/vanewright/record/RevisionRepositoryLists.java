package org.vanewright.record;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.engineering.input.Checks;

/** Reads lists of what is published of one kind, newest first. */
final class RevisionRepositoryLists<T extends RecordContent> {
    private static final String PUBLISHED = "where state = 'PUBLISHED'";

    /** Of one state alone: with it in the order H2 reads the index and does not sort. */
    private static final String NEWEST = " order by state, published_at desc, slug";

    private final JdbcClient jdbc;
    private final String heads;
    private final RevisionRepositoryRows<T> rows;

    RevisionRepositoryLists(JdbcClient jdbc, String table, RevisionRepositoryRows<T> rows) {
        this.jdbc = jdbc;
        this.heads = "select slug, revision, sha256, published_at from " + table + " ";
        this.rows = rows;
    }

    List<RevisionHead> heads(int skip, int most) {
        return jdbc.sql(heads + PUBLISHED + NEWEST + " offset :skip rows fetch next :most rows only")
                .param("skip", skip)
                .param("most", most)
                .query(RevisionRepositoryRows::head)
                .list();
    }

    List<Revision<T>> newest(int most) {
        return jdbc.sql(rows.select(PUBLISHED + NEWEST + " fetch first :most rows only"))
                .param("most", most)
                .query(rows::revision)
                .list();
    }

    RecordPage<Revision<T>> list(@Nullable String cursor, int limit) {
        return page(cursor, limit, rows.select(""), rows::revision, Revision::shownAt, Revision::slug);
    }

    RecordPage<RevisionHead> listHeads(@Nullable String cursor, int limit) {
        return page(cursor, limit, heads, RevisionRepositoryRows::head, RevisionHead::publishedAt, RevisionHead::slug);
    }

    private <R> RecordPage<R> page(
            @Nullable String cursor,
            int limit,
            String select,
            RowMapper<R> mapper,
            Function<R, Instant> at,
            Function<R, String> slug) {
        Checks checks = new Checks();
        int largest = RevisionRepository.LARGEST_PAGE;
        checks.require(limit >= 1 && limit <= largest, "limit", limit, "a whole number from 1 to " + largest);
        checks.throwIfAny();
        List<R> found = found(cursor, limit + 1, select, mapper);
        if (found.size() <= limit) {
            return new RecordPage<>(List.copyOf(found), null);
        }
        R last = found.get(limit - 1);
        return new RecordPage<>(
                List.copyOf(found.subList(0, limit)), new ListCursor(at.apply(last), slug.apply(last)).encode());
    }

    private <R> List<R> found(@Nullable String cursor, int most, String select, RowMapper<R> mapper) {
        ListCursor last = cursor == null ? ListCursor.BEGINNING : ListCursor.decode(cursor);
        return jdbc.sql(select + PUBLISHED + " and published_at <= :at and (published_at < :at or slug > :slug)"
                        + NEWEST + " fetch first :most rows only")
                .param("at", last.createdAt().atOffset(ZoneOffset.UTC))
                .param("slug", last.slug())
                .param("most", most)
                .query(mapper)
                .list();
    }
}
