package org.vanewright.catalogue.search;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.vanewright.catalogue.FacetValue;
import org.vanewright.catalogue.MeasuredEffects.Concerned;
import org.vanewright.platform.Downloads;

/**
 * Writes the index of the search. Whoever writes takes the one row of {@code search_index} first and holds it to the end of
 * the transaction, so that what one instance works out from others' records is never older than what another has written.
 */
@Repository
class SearchIndexRepository {
    /** Of whoever holds the row. */
    private static final String CHANGE = "(select changes from search_index where id = 1)";

    private final JdbcClient jdbc;
    private final WordIndexRepository words;

    SearchIndexRepository(JdbcClient jdbc, WordIndexRepository words) {
        this.jdbc = jdbc;
        this.words = words;
    }

    /** Waits for whoever writes; until the transaction ends, nobody else does. */
    void hold() {
        jdbc.sql("update search_index set changes = changes + 1 where id = 1").update();
    }

    /** Puts an entry in the place of the record's former one. */
    void put(SearchEntry entry, int version) {
        long signature = signature(entry.facets());
        Map<String, @Nullable Object> columns = columns(entry, signature, version);
        int changed = statement(
                        "update search_entry set revision = :revision, name = :name, summary = :summary,"
                                + " picture = :picture, invented = :invented, contributor = :contributor,"
                                + " published_at = :publishedAt, effect_ppm = :effectPpm, effect = :effect,"
                                + " prominence = :prominence, signature_id = :signature, version = :version,"
                                + " change_number = " + CHANGE + " where kind = :kind and slug = :slug",
                        columns)
                .update();
        if (changed == 0) {
            statement(
                            "insert into search_entry (kind, slug, revision, name, summary, picture, invented,"
                                    + " contributor, published_at, effect_ppm, effect, prominence, signature_id,"
                                    + " version, change_number) values"
                                    + " (:kind, :slug, :revision, :name, :summary, :picture, :invented, :contributor,"
                                    + " :publishedAt, :effectPpm, :effect, :prominence, :signature, :version, " + CHANGE
                                    + ")",
                            columns)
                    .update();
        }
        words.put(id(entry.kind(), entry.slug()).orElseThrow(), entry.words());
    }

    private static Map<String, @Nullable Object> columns(SearchEntry entry, long signature, int version) {
        Map<String, @Nullable Object> columns = new HashMap<>();
        columns.put("kind", entry.kind());
        columns.put("slug", entry.slug());
        columns.put("revision", entry.revision());
        columns.put("name", entry.name());
        columns.put("summary", entry.summary());
        columns.put("picture", entry.picture());
        columns.put("invented", entry.invented());
        columns.put("contributor", entry.contributor());
        columns.put("publishedAt", entry.publishedAt().atOffset(ZoneOffset.UTC));
        columns.put("effectPpm", entry.effectPpm());
        columns.put("effect", entry.effect());
        columns.put("prominence", entry.prominence());
        columns.put("signature", signature);
        columns.put("version", version);
        return columns;
    }

    private JdbcClient.StatementSpec statement(String sql, Map<String, @Nullable Object> parameters) {
        JdbcClient.StatementSpec statement = jdbc.sql(sql);
        parameters.forEach(statement::param);
        return statement;
    }

    private Optional<Long> id(String kind, String slug) {
        return jdbc.sql("select id from search_entry where kind = :kind and slug = :slug")
                .param("kind", kind)
                .param("slug", slug)
                .query(Long.class)
                .optional();
    }

    /** The set of these facet values, made where there is none. */
    private long signature(List<FacetValue> facets) {
        String sha256 = sha256(facets);
        Optional<Long> known = signature(sha256);
        if (known.isPresent()) {
            return known.get();
        }
        jdbc.sql("insert into search_signature (sha256) values (:sha256)")
                .param("sha256", sha256)
                .update();
        long id = signature(sha256).orElseThrow();
        for (FacetValue facet : facets) {
            jdbc.sql("insert into search_facet (signature_id, facet, choice, label, place)"
                            + " values (:id, :facet, :choice, :label, :place)")
                    .param("id", id)
                    .param("facet", facet.facet().key())
                    .param("choice", facet.choice())
                    .param("label", facet.label())
                    .param("place", facet.place())
                    .update();
        }
        return id;
    }

    /** By which a set of facet values, sorted, is known. */
    static String sha256(List<FacetValue> facets) {
        return Downloads.sha256(facets.stream()
                .map(f -> f.key() + " " + f.place() + " " + f.label())
                .collect(Collectors.joining("\n"))
                .getBytes(StandardCharsets.UTF_8));
    }

    private Optional<Long> signature(String sha256) {
        return jdbc.sql("select id from search_signature where sha256 = :sha256")
                .param("sha256", sha256)
                .query(Long.class)
                .optional();
    }

    /** Takes a record out of the index. */
    void remove(String kind, String slug) {
        jdbc.sql("insert into search_removed (entry_id, change_number) select id, " + CHANGE
                        + " from search_entry where kind = :kind and slug = :slug")
                .param("kind", kind)
                .param("slug", slug)
                .update();
        jdbc.sql("delete from search_entry where kind = :kind and slug = :slug")
                .param("kind", kind)
                .param("slug", slug)
                .update();
    }

    /** The revisions that entries of this version hold, by slug. */
    Map<String, Integer> current(String kind, List<String> slugs, int version) {
        Map<String, Integer> current = new HashMap<>();
        if (!slugs.isEmpty()) {
            // By an array: for a list H2 would read all entries of the kind.
            jdbc.sql("select e.slug, e.revision from unnest(cast(:slugs as varchar array)) k (slug)"
                            + " join search_entry e on e.kind = :kind and e.slug = k.slug where e.version = :version")
                    .param("kind", kind)
                    .param("version", version)
                    .param("slugs", slugs.toArray(String[]::new))
                    .query(row -> {
                        current.put(row.getString("slug"), row.getInt("revision"));
                    });
        }
        return current;
    }

    /** Whether the index, or an entry in it, was made by rules older than that version. */
    boolean isOlderThan(int version) {
        return jdbc.sql("select 1 where exists (select 1 from search_index where version < :version)"
                        + " or exists (select 1 from search_entry where version < :version)")
                .param("version", version)
                .query(Integer.class)
                .optional()
                .isPresent();
    }

    /** Makes every entry count as old. */
    void outdate() {
        jdbc.sql("update search_entry set version = 0").update();
        jdbc.sql("update search_index set version = 0 where id = 1").update();
    }

    /**
     * Takes the work of making the index anew, or goes on with it.
     *
     * @param mine whether the caller has it already
     * @return false if another instance is at it
     */
    boolean claim(boolean mine, Instant now, Instant until) {
        return jdbc.sql("update search_index set claimed_until = :until where id = 1"
                                + (mine ? "" : " and (claimed_until is null or claimed_until < :now)"))
                        .param("until", until.atOffset(ZoneOffset.UTC))
                        .param("now", now.atOffset(ZoneOffset.UTC))
                        .update()
                == 1;
    }

    /** Entries that were made by rules older than that version. */
    List<Concerned> outdated(int version, int most) {
        return jdbc.sql("select kind, slug from search_entry where version < :version order by id"
                        + " fetch first :most rows only")
                .param("version", version)
                .param("most", most)
                .query((row, n) -> new Concerned(row.getString("kind"), row.getString("slug")))
                .list();
    }

    /** The whole index is of that version now. */
    void finish(int version) {
        words.prune();
        jdbc.sql("update search_index set version = :version, claimed_until = null where id = 1")
                .param("version", version)
                .update();
    }
}
