package org.vanewright.record;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Reads and counts what is public of one kind. */
public final class RevisionRepositoryPublic<T extends RecordContent> {
    private final JdbcClient jdbc;
    private final String table;
    private final RevisionRepositoryRows<T> rows;

    RevisionRepositoryPublic(JdbcClient jdbc, String table, RevisionRepositoryRows<T> rows) {
        this.jdbc = jdbc;
        this.table = table;
        this.rows = rows;
    }

    /** Every record with a public revision, in the order of characters, which a database's own order need not be. */
    List<String> slugs() {
        return jdbc
                .sql("select distinct slug from " + table + " where state in ('PUBLISHED', 'SUPERSEDED', 'WITHDRAWN')")
                .query(String.class)
                .stream()
                .sorted()
                .toList();
    }

    /** Every public revision of those records, in one statement; by slug and number. */
    List<PublicDocument<T>> documents(Collection<String> slugs) {
        if (slugs.isEmpty()) {
            return List.of();
        }
        return jdbc
                .sql(rows.select("where slug in (:slugs) and state in ('PUBLISHED', 'SUPERSEDED', 'WITHDRAWN')"))
                .param("slugs", slugs)
                .query((row, n) -> new PublicDocument<>(rows.revision(row, n), row.getString("content")))
                .stream()
                .sorted(Comparator.comparing(
                                (PublicDocument<T> d) -> d.revision().slug())
                        .thenComparing(d -> d.revision().number()))
                .toList();
    }

    /** How many revisions are public, and how many of them were withdrawn. Whatever becomes public makes one of them more. */
    PublicCount count() {
        return jdbc.sql(
                        "select count(*) as revisions, count(case when state = 'WITHDRAWN' then 1 end) as withdrawn from "
                                + table + " where state in ('PUBLISHED', 'SUPERSEDED', 'WITHDRAWN')")
                .query((row, n) -> new PublicCount(row.getLong("revisions"), row.getLong("withdrawn")))
                .single();
    }

    /** Another text whenever other revisions are published than before. */
    String publishedState() {
        return jdbc.sql("select count(*) as published, max(published_at) as newest from " + table
                        + " where state = 'PUBLISHED'")
                .query((row, n) -> row.getLong("published") + " " + row.getString("newest"))
                .single();
    }

    /** How many public revisions each of those people has submitted, by the person's id; those with none are left out. */
    Map<String, Integer> contributions(Collection<String> personIds) {
        Map<String, Integer> counts = new HashMap<>();
        if (!personIds.isEmpty()) {
            jdbc.sql("select contributor_id, count(*) as revisions from " + table + " where contributor_id in (:people)"
                            + " and state in ('PUBLISHED', 'SUPERSEDED', 'WITHDRAWN') group by contributor_id")
                    .param("people", personIds)
                    .query(row -> {
                        counts.put(row.getString("contributor_id"), row.getInt("revisions"));
                    });
        }
        return counts;
    }

    /** Public revisions that one person has submitted, newest first. */
    List<Revision<T>> contributedBy(String personId, int most) {
        return jdbc.sql(rows.select("where contributor_id = :person"
                        + " and state in ('PUBLISHED', 'SUPERSEDED', 'WITHDRAWN')"
                        + " order by published_at desc, slug, revision desc fetch first :most rows only"))
                .param("person", personId)
                .param("most", most)
                .query(rows::revision)
                .list();
    }
}
