package org.vanewright.catalogue.search;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import org.vanewright.catalogue.Facet;
import org.vanewright.catalogue.FacetValue;
import org.vanewright.catalogue.search.WordIndexRepository.Weights;

/**
 * The queries of the search. None reads a document, and each counts or reads at once whatever it is about.
 */
@Repository
class SearchRepository {
    /** A statement has so many parameters at most; a database refuses tens of thousands. */
    private static final int MOST_NAMED = 1000;

    private static final int ROWS_AT_ONCE = 2000;

    private final JdbcClient jdbc;

    SearchRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Counts up with every change of any entry, as far as it can be seen. */
    long changes() {
        return jdbc.sql("select changes from search_index where id = 1")
                .query(Long.class)
                .single();
    }

    /** Entries that were removed after that change. */
    List<Long> removedSince(long change) {
        return jdbc.sql("select entry_id from search_removed where change_number > :change")
                .param("change", change)
                .query(Long.class)
                .list();
    }

    /** Entries that were written after that change, by their signatures. */
    @Transactional(readOnly = true)
    public List<EntryRow> since(long change) {
        List<EntryRow> rows = new ArrayList<>();
        jdbc.sql("select id, signature_id, published_at, effect_ppm from search_entry where change_number > :change"
                        + " order by signature_id")
                .param("change", change)
                .withFetchSize(ROWS_AT_ONCE)
                .query(row -> {
                    Instant at =
                            row.getObject("published_at", OffsetDateTime.class).toInstant();
                    rows.add(new EntryRow(
                            Math.toIntExact(row.getLong("id")),
                            row.getLong("signature_id"),
                            ChronoUnit.MICROS.between(Instant.EPOCH, at),
                            row.getInt("effect_ppm")));
                });
        return rows;
    }

    /**
     * The facet values of each set, by its number, one set after the other; of every set there is where many are asked for,
     * read bit by bit, since those are as many as there are entries at worst.
     */
    @Transactional(readOnly = true)
    public void signatures(Set<Long> ids, BiConsumer<Long, List<FacetValue>> each) {
        boolean all = ids.size() > MOST_NAMED;
        List<FacetValue> values = new ArrayList<>();
        long[] current = {0};
        jdbc.sql("select signature_id, facet, choice, label, place from search_facet"
                        + (all ? "" : " where signature_id in (:ids)") + " order by signature_id")
                .withFetchSize(ROWS_AT_ONCE)
                .param("ids", all ? List.of() : ids)
                .query(row -> {
                    long id = row.getLong("signature_id");
                    if (id != current[0] && !values.isEmpty()) {
                        each.accept(current[0], values);
                        values.clear();
                    }
                    current[0] = id;
                    values.add(value(row));
                });
        if (!values.isEmpty()) {
            each.accept(current[0], values);
        }
    }

    /** Facet values with those choices, of whatever facet. */
    List<FacetValue> valuesOf(List<String> choices) {
        return jdbc.sql("select distinct facet, choice, label, place from search_facet where choice in (:choices)")
                .param("choices", choices)
                .query((row, n) -> value(row))
                .list();
    }

    private static FacetValue value(ResultSet row) throws SQLException {
        return new FacetValue(
                Facet.of(row.getString("facet")).orElseThrow(),
                row.getString("choice"),
                row.getString("label"),
                row.getInt("place"));
    }

    /** Those entries, weighed by when they were published or by their measured change, in no order. */
    List<SearchHit> hits(List<Integer> ids, SearchSort sort) {
        return jdbc.sql("select e.*, " + (sort == SearchSort.EFFECT ? "effect_ppm" : "0")
                        + " as ranked_by from search_entry e where e.id = any(:ids)")
                .param("ids", array(ids))
                .query(SearchRepository::hit)
                .list();
    }

    /**
     * Those of some entries that fit words best, the best first.
     *
     * @param after entry before the first; null for the first of all
     * @param most entries wanted
     */
    List<SearchHit> best(List<Integer> ids, Weights weights, @Nullable SearchCursor after, int most) {
        Map<String, Object> parameters = new HashMap<>(weights.parameters());
        parameters.put("ids", array(ids));
        parameters.put("most", most);
        // What is shown is read for the first ones only.
        String first = "select * from (select id, published_at, weight * prominence as ranked_by from ("
                + weights.sql() + ") w) f" + after(after, parameters)
                + " order by ranked_by desc, published_at desc, id desc fetch first :most rows only";
        return jdbc.sql("select e.*, f.ranked_by from (" + first + ") f join search_entry e on e.id = f.id"
                        + " order by f.ranked_by desc, e.published_at desc, e.id desc")
                .params(parameters)
                .query(SearchRepository::hit)
                .list();
    }

    private static Long[] array(List<Integer> ids) {
        return ids.stream().map(Integer::longValue).toArray(Long[]::new);
    }

    private static String after(@Nullable SearchCursor after, Map<String, Object> parameters) {
        if (after == null) {
            return "";
        }
        parameters.put("weight", after.weight());
        parameters.put("at", after.publishedAt().atOffset(ZoneOffset.UTC));
        parameters.put("id", after.id());
        return " where (ranked_by < :weight or ranked_by = :weight"
                + " and (published_at < :at or published_at = :at and id < :id))";
    }

    private static SearchHit hit(ResultSet row, int number) throws SQLException {
        return new SearchHit(
                row.getLong("id"),
                row.getString("kind"),
                row.getString("slug"),
                row.getInt("revision"),
                row.getString("name"),
                row.getString("summary"),
                row.getString("picture"),
                row.getBoolean("invented"),
                row.getString("contributor"),
                row.getObject("published_at", OffsetDateTime.class).toInstant(),
                row.getInt("effect_ppm"),
                row.getString("effect"),
                row.getLong("ranked_by"));
    }
}
