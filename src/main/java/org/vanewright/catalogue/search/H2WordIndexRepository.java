package org.vanewright.catalogue.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Words in tables of our own with indexes. Those that come with H2 are not changed in the transaction that changes the
 * record, or live in files beside the database.
 */
final class H2WordIndexRepository implements WordIndexRepository {
    /** A stem counts so much more than a mere beginning. */
    private static final int STEM_FACTOR = 3;

    private static final int ROWS_AT_ONCE = 2000;

    private final JdbcClient jdbc;
    private final JdbcTemplate batches;

    H2WordIndexRepository(JdbcTemplate template) {
        this.jdbc = JdbcClient.create(template);
        this.batches = template;
    }

    /** Row by row: an array of H2 holds 65,536 and no more. */
    @Override
    public List<Fitting> fitting(List<Wanted> wanted) {
        List<String> asked = new ArrayList<>();
        Map<String, Object> parameters = new HashMap<>();
        for (int i = 0; i < wanted.size(); i++) {
            Long after = wanted.get(i).after();
            String among = "";
            if (after != null) {
                parameters.put("c" + i, after);
                String changed = "select id from search_entry where change_number > :c" + i;
                asked.add("select " + i + " as n, false as fits, id from (" + changed + ") l" + i);
                among = " and entry_id in (" + changed + ")";
            }
            asked.add("select " + i + " as n, true as fits, entry_id as id from ("
                    + fits(i, wanted.get(i).term(), among, parameters) + ") f" + i);
        }
        List<LongStream.Builder> looked = builders(wanted.size());
        List<LongStream.Builder> fits = builders(wanted.size());
        jdbc.sql(String.join(" union all ", asked))
                .params(parameters)
                .withFetchSize(ROWS_AT_ONCE)
                .query(row -> {
                    (row.getBoolean("fits") ? fits : looked)
                            .get(row.getInt("n"))
                            .add(row.getLong("id"));
                });
        return IntStream.range(0, wanted.size())
                .mapToObj(i -> new Fitting(
                        looked.get(i).build().toArray(), fits.get(i).build().toArray()))
                .toList();
    }

    private static List<LongStream.Builder> builders(int count) {
        return Stream.generate(LongStream::builder).limit(count).toList();
    }

    /** One way after the other: for several in one condition H2 would read the whole table. */
    private static String fits(int i, Term term, String among, Map<String, Object> parameters) {
        parameters.put("s" + i, term.stems());
        String stems = "select entry_id from search_word where word in (:s" + i + ")" + among;
        String beginning = term.beginning();
        if (beginning == null) {
            return "select distinct entry_id from (" + stems + ") s" + i;
        }
        parameters.put("p" + i, beginning);
        parameters.put("u" + i, WordIndexRepository.beyond(beginning));
        return stems + " union select entry_id from search_word where word >= :p" + i + " and word < :u" + i + among;
    }

    @Override
    public Weights weights(List<Term> terms) {
        List<String> each = new ArrayList<>();
        Map<String, Object> parameters = new HashMap<>();
        for (int i = 0; i < terms.size(); i++) {
            each.add(points(i, terms.get(i), parameters));
        }
        return new Weights(
                "select s.id, e.published_at, e.prominence, s.weight from (select entry_id as id, sum(points) as weight"
                        + " from (" + String.join(" union all ", each) + ") t group by entry_id) s"
                        + " join search_entry e on e.id = s.id",
                parameters);
    }

    /** Entries with one of the terms, each once, with the best of what fits. */
    private static String points(int i, Term term, Map<String, Object> parameters) {
        String entries = " from unnest(cast(:ids as bigint array)) i(id) join search_word w on w.entry_id = i.id";
        parameters.put("s" + i, term.stems());
        String found = "select w.entry_id, " + STEM_FACTOR + " * w.weight as points" + entries + " and w.word in (:s"
                + i + ")";
        String beginning = term.beginning();
        if (beginning != null) {
            parameters.put("p" + i, beginning);
            parameters.put("u" + i, WordIndexRepository.beyond(beginning));
            found += " union all select w.entry_id, w.weight as points" + entries + " and w.word >= :p" + i
                    + " and w.word < :u" + i;
        }
        return "select entry_id, max(points) as points from (" + found + ") t" + i + " group by entry_id";
    }

    @Override
    public List<Near> near(List<String> typed, int most) {
        List<String> asked = new ArrayList<>();
        Map<String, Object> parameters = new HashMap<>();
        for (int i = 0; i < typed.size(); i++) {
            String word = typed.get(i);
            asked.add("(select cast(:t" + i + " as varchar) as typed, word from search_trigram where trigram in (:g" + i
                    + ") group by word order by count(*) desc, abs(char_length(word) - " + word.length()
                    + ") fetch first " + most + " rows only)");
            parameters.put("t" + i, word);
            parameters.put("g" + i, trigrams(word));
        }
        return jdbc.sql(String.join(" union all ", asked))
                .params(parameters)
                .query((row, n) -> new Near(row.getString("typed"), row.getString("word")))
                .list();
    }

    static Set<String> trigrams(String word) {
        String padded = "  " + word + " ";
        Set<String> trigrams = new LinkedHashSet<>();
        for (int i = 0; i + 3 <= padded.length(); i++) {
            trigrams.add(padded.substring(i, i + 3));
        }
        return trigrams;
    }

    @Override
    public void put(long entry, WordBag words) {
        batches.update("delete from search_word where entry_id = ?", entry);
        List<Object[]> marks = new ArrayList<>();
        words.marks().forEach((mark, weights) -> marks.add(new Object[] {mark, entry, points(weights)}));
        batches.batchUpdate("insert into search_word (word, entry_id, weight) values (?, ?, ?)", marks);
        List<String> fresh = fresh(words);
        batches.batchUpdate(
                "insert into search_vocabulary (word, stem) values (?, ?)",
                fresh.stream().map(w -> new Object[] {w, Words.stem(w)}).toList());
        batches.batchUpdate(
                "insert into search_trigram (trigram, word) values (?, ?)",
                fresh.stream()
                        .filter(w -> !Words.hasDigit(w))
                        .flatMap(w -> trigrams(w).stream().map(t -> new Object[] {t, w}))
                        .toList());
    }

    /** Of the best place where a word stands. */
    static int points(Set<Weight> weights) {
        return weights.stream().mapToInt(Weight::points).max().orElse(0);
    }

    private List<String> fresh(WordBag words) {
        if (words.words().isEmpty()) {
            return List.of();
        }
        Set<String> known = Set.copyOf(jdbc.sql("select word from search_vocabulary where word in (:words)")
                .param("words", words.words())
                .query(String.class)
                .list());
        return words.words().stream().filter(w -> !known.contains(w)).toList();
    }

    @Override
    public void prune() {
        batches.update("delete from search_vocabulary v where not exists"
                + " (select 1 from search_word w where w.word = v.word)");
    }
}
