package org.vanewright.catalogue.search;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.annotation.Transactional;
import org.vanewright.catalogue.Facet;
import org.vanewright.catalogue.FacetValue;
import org.vanewright.catalogue.search.WordIndexRepository.Match;

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

    /** How many entries have exactly these facet values. */
    record Group(long signature, int entries) {}

    /** Counts up with every change of any entry, as far as it can be seen. */
    long changes() {
        return jdbc.sql("select changes from search_index where id = 1")
                .query(Long.class)
                .single();
    }

    /** How many entries there are of each set of facet values. */
    List<Group> groups(Match match) {
        return jdbc.sql("select e.signature_id, count(*) as entries from search_entry e" + match.from() + " where "
                        + match.condition() + " group by e.signature_id")
                .params(match.parameters())
                .query((row, n) -> new Group(row.getLong("signature_id"), row.getInt("entries")))
                .list();
    }

    /**
     * The facet values of each set, one set after the other; of every set there is where many are asked for, read bit by bit,
     * since those are as many as there are entries at worst.
     */
    @Transactional(readOnly = true)
    void signatures(List<Long> ids, BiConsumer<Long, List<FacetValue>> each) {
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

    /**
     * One page.
     *
     * @param among newest entries whose words are weighed
     * @param most entries wanted
     */
    List<SearchHit> page(Match match, SearchQuery query, SearchSort sort, int among, int most) {
        Map<String, Object> parameters = new HashMap<>(match.parameters());
        String weight = sort == SearchSort.RELEVANCE
                ? match.weight() + " * e.prominence"
                : sort == SearchSort.EFFECT ? "effect_ppm" : "0";
        String found = "select e.*, " + weight + " as weight from search_entry e" + match.from() + " where "
                + match.condition() + facets(query.choices(), parameters);
        if (sort == SearchSort.RELEVANCE) {
            found += " order by published_at desc, id desc fetch first " + among + " rows only";
        }
        String by = sort == SearchSort.EFFECT ? "effect_ppm" : "weight";
        String order =
                sort == SearchSort.DATE ? "published_at desc, id desc" : by + " desc, published_at desc, id desc";
        return jdbc.sql("select * from (" + found + ") f" + after(query.after(), sort, by, parameters) + " order by "
                        + order + " fetch first :most rows only")
                .params(parameters)
                .param("most", most)
                .query(SearchRepository::hit)
                .list();
    }

    private static String facets(Map<Facet, Set<String>> choices, Map<String, Object> parameters) {
        StringBuilder sql = new StringBuilder();
        choices.forEach((facet, values) -> {
            sql.append(" and e.signature_id in (select signature_id from search_facet where facet = '")
                    .append(facet.key())
                    .append("' and choice in (:")
                    .append(facet.key())
                    .append("))");
            parameters.put(facet.key(), new TreeSet<>(values));
        });
        return sql.toString();
    }

    private static String after(
            @Nullable SearchCursor after, SearchSort sort, String by, Map<String, Object> parameters) {
        if (after == null) {
            return "";
        }
        parameters.put("at", after.publishedAt().atOffset(ZoneOffset.UTC));
        parameters.put("id", after.id());
        String older = "(published_at < :at or published_at = :at and id < :id)";
        if (sort == SearchSort.DATE) {
            return " where " + older;
        }
        parameters.put("weight", after.weight());
        return " where (" + by + " < :weight or " + by + " = :weight and " + older + ")";
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
                row.getLong("weight"));
    }

    /** Which of the words are in the index, as a stem or as the beginning of a word. */
    Set<String> known(List<String> words) {
        List<String> asked = new ArrayList<>();
        Map<String, Object> parameters = new LinkedHashMap<>();
        for (int i = 0; i < words.size(); i++) {
            asked.add("select " + i + " as n where exists (select 1 from search_vocabulary where word >= :w" + i
                    + " and word < :u" + i + " or stem = :s" + i + ")");
            parameters.put("w" + i, words.get(i));
            parameters.put("u" + i, WordIndexRepository.beyond(words.get(i)));
            parameters.put("s" + i, Words.stem(words.get(i)));
        }
        Set<String> known = new TreeSet<>();
        jdbc.sql(String.join(" union all ", asked)).params(parameters).query(row -> {
            known.add(words.get(row.getInt("n")));
        });
        return known;
    }
}
