package org.vanewright.catalogue.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Words in a {@code tsvector} with a GIN index, near ones by {@code pg_trgm}. Words hold letters, digits and dots only, so
 * that nothing typed is ever an operator.
 */
final class PostgresWordIndexRepository implements WordIndexRepository {
    private final JdbcClient jdbc;

    PostgresWordIndexRepository(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public List<Fitting> fitting(List<Wanted> wanted) {
        List<String> asked = new ArrayList<>();
        Map<String, Object> parameters = new HashMap<>();
        for (int i = 0; i < wanted.size(); i++) {
            parameters.put("t" + i, anyOf(wanted.get(i).term()));
            String fits = "words @@ cast(:t" + i + " as tsquery)";
            if (wanted.get(i).after() == null) {
                asked.add("select " + i
                        + " as n, cast(null as bigint[]) as looked, array_agg(id) as fits from search_entry" + " where "
                        + fits);
            } else {
                parameters.put("c" + i, wanted.get(i).after());
                asked.add("select " + i + " as n, array_agg(id) as looked, array_agg(id) filter (where " + fits
                        + ") as fits from search_entry where change_number > :c" + i);
            }
        }
        return jdbc.sql(String.join(" union all ", asked) + " order by n")
                .params(parameters)
                .query((row, n) -> Fitting.of(row))
                .list();
    }

    /** Fits are weighed by any of the words, since rank by all of them goes by distances, which entries do not keep. */
    @Override
    public Weights weights(List<Term> terms) {
        String any = terms.stream().map(PostgresWordIndexRepository::anyOf).collect(Collectors.joining(" | "));
        return new Weights(
                "select id, published_at, prominence, cast(round(1000000 * ts_rank('{0.1, 0.2, 0.4, 1}', words, cast(:ranked as tsquery))) as bigint)"
                        + " as weight from search_entry where id = any(:ids)",
                Map.of("ranked", any));
    }

    private static String anyOf(Term term) {
        List<String> ways = new ArrayList<>();
        term.stems().forEach(stem -> ways.add("'" + stem + "'"));
        if (term.beginning() != null) {
            ways.add("'" + term.beginning() + "':*");
        }
        return String.join(" | ", ways);
    }

    @Override
    public List<Near> near(List<String> typed, int most) {
        List<String> asked = new ArrayList<>();
        Map<String, Object> parameters = new HashMap<>();
        for (int i = 0; i < typed.size(); i++) {
            String word = "cast(:t" + i + " as text)";
            asked.add("(select " + word
                    + " as typed, word from search_vocabulary where word !~ '[0-9]' order by word <-> " + word
                    + " fetch first " + most + " rows only)");
            parameters.put("t" + i, typed.get(i));
        }
        return jdbc.sql(String.join(" union all ", asked))
                .params(parameters)
                .query((row, n) -> new Near(row.getString("typed"), row.getString("word")))
                .list();
    }

    @Override
    public void put(long entry, WordBag words) {
        jdbc.sql("update search_entry set words = cast(:words as tsvector) where id = :id")
                .param("words", vector(words))
                .param("id", entry)
                .update();
        String[] all = words.words().toArray(String[]::new);
        String[] stems = words.words().stream().map(Words::stem).toArray(String[]::new);
        jdbc.sql(
                        "insert into search_vocabulary (word, stem)"
                                + " select * from unnest(cast(:words as text[]), cast(:stems as text[])) on conflict do nothing")
                .param("words", all)
                .param("stems", stems)
                .update();
    }

    /** The words as a {@code tsvector} is written. */
    static String vector(WordBag words) {
        return words.marks().entrySet().stream()
                .map(mark -> "'" + mark.getKey() + "':"
                        + mark.getValue().stream()
                                .map(w -> (w.ordinal() + 1) + "" + w.letter())
                                .collect(Collectors.joining(",")))
                .collect(Collectors.joining(" "));
    }

    @Override
    public void prune() {
        jdbc.sql("delete from search_vocabulary v where not exists (select 1 from search_entry e"
                        + " where e.words @@ cast('''' || v.word || '''' as tsquery))")
                .update();
    }
}
