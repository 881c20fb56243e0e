package org.vanewright.catalogue.search;

import static org.assertj.core.api.Assertions.assertThat;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.jdbc.support.MetaDataAccessException;
import org.springframework.transaction.support.TransactionTemplate;
import org.vanewright.catalogue.Bands;
import org.vanewright.catalogue.Facet;
import org.vanewright.catalogue.FacetValue;
import org.vanewright.catalogue.MeasuredEffects;
import org.vanewright.engineering.input.Checks;
import org.vanewright.testing.Databases;
import org.vanewright.testing.StatementCounter;

/** What the search finds, the same on every database. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class SearchContract {
    private static final Instant START = Instant.parse("2026-03-01T09:00:00.123456Z");

    private final HikariDataSource database;
    private final StatementCounter counter;
    private final WordIndexRepository words;
    private final SearchIndexRepository index;
    private final SearchService search;
    private final TransactionTemplate together;
    private int published;

    SearchContract(Databases.Engine engine) {
        database = Databases.migrated(engine);
        counter = new StatementCounter(database);
        try {
            words = WordIndexRepositoryChoice.of(counter);
        } catch (MetaDataAccessException e) {
            throw new IllegalStateException(e);
        }
        index = new SearchIndexRepository(JdbcClient.create(counter), words);
        together = new TransactionTemplate(new JdbcTransactionManager(counter));
        search = service();
    }

    private SearchService service() {
        return new SearchService(new SearchRepository(JdbcClient.create(counter)), words);
    }

    @BeforeEach
    void clear() {
        together.executeWithoutResult(status -> {
            index.hold();
            JdbcClient.create(counter)
                    .sql("select kind, slug from search_entry")
                    .query(row -> {
                        index.remove(row.getString("kind"), row.getString("slug"));
                    });
            words.prune();
        });
    }

    @AfterAll
    void close() {
        database.close();
    }

    private void publish(String kind, String slug, String name, String notes, FacetValue... facets) {
        publish(kind, slug, name, notes, SearchEntry.NO_EFFECT, facets);
    }

    private void publish(String kind, String slug, String name, String notes, int ppm, FacetValue... facets) {
        Instant at = START.plus(Duration.ofMinutes(published++));
        List<FacetValue> values = new ArrayList<>(Arrays.asList(facets));
        values.add(FacetValue.named(Facet.KIND, kind));
        WordBag bag = new WordBag().add(Weight.NAME, name).add(Weight.NOTE, notes);
        put(new SearchEntry(
                kind,
                slug,
                1,
                name,
                "",
                null,
                false,
                "Club",
                at,
                ppm,
                null,
                100,
                values.stream().sorted().toList(),
                bag));
    }

    private void put(SearchEntry entry) {
        together.executeWithoutResult(status -> {
            index.hold();
            index.put(entry, SearchIndexer.VERSION);
        });
    }

    private static SearchQuery query(@Nullable String q, String... facets) {
        Checks checks = new Checks();
        SearchQuery query = SearchQuery.read(q, List.of(facets), null, null, checks);
        assertThat(checks.problems()).isEmpty();
        return query;
    }

    private SearchResult found(@Nullable String q, String... facets) {
        return search.search(query(q, facets), SearchService.PER_PAGE);
    }

    private static List<String> slugs(SearchResult result) {
        return result.hits().stream().map(SearchHit::slug).toList();
    }

    private static int count(SearchResult result, String key) {
        return result.facets().stream()
                .flatMap(g -> g.values().stream())
                .filter(v -> v.value().key().equals(key))
                .mapToInt(SearchResult.ValueCount::count)
                .findFirst()
                .orElse(0);
    }

    @ParameterizedTest
    @CsvSource({
        "vanes, one",
        "VANE, one",
        "rotate, one",
        "rotating vanes, one",
        "Quill, one",
        "quillmere's, one",
        "triang, two",
        "naca 4412, two",
        "44, two",
        "cafe, two",
        "the vane, one",
        "wing outer, one"
    })
    void wordsAreFoundInAnyFormAndByTheirFirstLetters(String q, String slug) {
        publish("layout", "one", "Counter-rotating vane", "Of the Quillmere club, for the outer wing");
        publish("device", "two", "Triangular piece", "Made at the Café for NACA 4412");
        publish("adhesive", "three", "Foam", "Nothing of the kind");
        SearchResult result = found(q);
        assertThat(slugs(result)).containsExactly(slug);
        assertThat(result.total()).isEqualTo(1);
        assertThat(result.corrections()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"vaen, vane", "trianglar, triangular", "triangualr, triangular", "quilmere, quillmere", "fomm, foam"})
    void aSlipIsForgivenAndSaid(String typed, String word) {
        publish("layout", "one", "Triangular vane", "Quillmere, foam");
        publish("layout", "two", "Something else", "without any of it");
        SearchResult result = found(typed);
        assertThat(slugs(result)).containsExactly("one");
        assertThat(result.corrections()).containsExactly(new SearchResult.Correction(typed, List.of(word)));
    }

    @Test
    void aFigureIsNeverTakenForASlipOfAnother() {
        publish("layout", "one", "Vane behind NACA 4412", "9.5 mm high");
        for (String q : List.of("4421", "naca 4421", "9.6", "vaen 4421")) {
            assertThat(found(q).total()).as(q).isZero();
            assertThat(found(q).corrections()).as(q).isEmpty();
        }
        assertThat(slugs(found("vaen 4412"))).containsExactly("one");
    }

    @Test
    void aWordThatIsNearNothingFindsNothing() {
        publish("layout", "one", "Triangular vane", "");
        for (String q : List.of("propeller", "xq", "vane propeller")) {
            SearchResult result = found(q);
            assertThat(result.total()).isZero();
            assertThat(result.hits()).isEmpty();
            assertThat(result.corrections()).isEmpty();
        }
    }

    @Test
    void aNameCountsMoreThanANoteAndAWholeWordMoreThanItsBeginning() {
        publish("layout", "name", "Pair on the taper", "Something");
        publish("layout", "beginning", "Something", "Pairing them is hard work, pairwise");
        publish("layout", "note", "Something", "A pair of them");
        assertThat(slugs(found("pair"))).first().isEqualTo("name");
        publish("layout", "whole", "Vane", "");
        publish("layout", "longer", "Vanewright", "");
        assertThat(slugs(found("vane"))).containsExactly("whole", "longer");
    }

    @Test
    void facetsNarrowAndCountWhatEachChoiceWouldGive() {
        FacetValue small = Bands.HEIGHT.of(7);
        FacetValue large = Bands.HEIGHT.of(12);
        FacetValue near = Bands.POSITION.of(8);
        FacetValue far = Bands.POSITION.of(30);
        publish("layout", "a", "Vane a", "", small, near);
        publish("layout", "b", "Vane b", "", small, far);
        publish("layout", "c", "Vane c", "", large, near, far);
        publish("device", "d", "Vane d", "", large);
        SearchResult result = found("vane", "height:6-8");
        assertThat(result.total()).isEqualTo(2);
        assertThat(count(result, "height:6-8")).isEqualTo(2);
        assertThat(count(result, "height:10-15")).as("if chosen, too").isEqualTo(2);
        assertThat(count(result, "kind:layout")).isEqualTo(2);
        assertThat(count(result, "position:8-12")).isEqualTo(1);
        assertThat(slugs(found(null, "height:6-8", "height:10-15", "kind:layout")))
                .containsExactly("c", "b", "a");
        assertThat(slugs(found(null, "position:8-12", "height:10-15"))).containsExactly("c");
        assertThat(slugs(found("vane", "position:20-40", "height:6-8", "kind:layout")))
                .containsExactly("b");
    }

    @Test
    void whereNothingIsAllOfItOneFacetLessIsOffered() {
        publish("layout", "a", "Vane a", "", Bands.HEIGHT.of(7));
        publish("device", "b", "Vane b", "", Bands.HEIGHT.of(12));
        SearchResult result = found("vane", "height:6-8", "kind:device");
        assertThat(result.total()).isZero();
        assertThat(result.loosened())
                .containsExactlyInAnyOrder(
                        new SearchResult.Loosened(Facet.KIND, 1), new SearchResult.Loosened(Facet.HEIGHT, 1));
        assertThat(result.withoutFacets()).isEqualTo(2);
        SearchResult unknown = found(null, "section:naca-9999");
        assertThat(unknown.total()).isZero();
        assertThat(unknown.loosened()).containsExactly(new SearchResult.Loosened(Facet.SECTION, 2));
    }

    @ParameterizedTest
    @EnumSource(SearchSort.class)
    void pagesTogetherAreEverythingOnceInOrder(SearchSort sort) {
        Random random = new Random(7);
        Map<String, Integer> effects = new HashMap<>();
        for (int i = 0; i < 40; i++) {
            int ppm = random.nextInt(3) == 0 ? SearchEntry.NO_EFFECT : random.nextInt(5) * 10_000;
            effects.put("s" + i, ppm);
            publish("layout", "s" + i, random.nextInt(2) == 0 ? "Vane" : "Other", "vane " + i, ppm);
        }
        List<SearchHit> collected = new ArrayList<>();
        String next = null;
        do {
            Checks checks = new Checks();
            SearchQuery query = SearchQuery.read("vane", null, sort.key(), next, checks);
            assertThat(checks.problems()).isEmpty();
            SearchResult page = search.search(query, 1 + random.nextInt(9));
            assertThat(page.total()).isEqualTo(40);
            collected.addAll(page.hits());
            next = page.next();
        } while (next != null);
        assertThat(collected).extracting(SearchHit::slug).hasSize(40).doesNotHaveDuplicates();
        assertThat(collected)
                .isSortedAccordingTo((a, b) -> a.weight() != b.weight()
                        ? Long.compare(b.weight(), a.weight())
                        : b.publishedAt().compareTo(a.publishedAt()));
        if (sort == SearchSort.EFFECT) {
            assertThat(collected.get(0).effectPpm())
                    .isEqualTo(effects.values().stream().mapToInt(e -> e).max().orElseThrow());
            assertThat(collected.get(39).effectPpm()).isEqualTo(SearchEntry.NO_EFFECT);
        }
    }

    @Test
    void theNextRevisionTakesThePlaceOfTheFormer() {
        publish("layout", "kite", "Kite", "old words");
        publish("layout", "kite", "Dragon", "fresh words");
        assertThat(found("old").total()).isZero();
        assertThat(found("kite").total()).isZero();
        assertThat(slugs(found("fresh dragon"))).containsExactly("kite");
        together.executeWithoutResult(status -> {
            index.hold();
            index.remove("layout", "kite");
        });
        assertThat(found("dragon").total()).isZero();
        assertThat(found(null).total()).isZero();
    }

    @Test
    void anotherInstanceSeesEveryChangeAtOnce() {
        SearchService other = service();
        publish("layout", "a", "Vane", "");
        assertThat(other.search(query("vane"), 5).total()).isEqualTo(1);
        publish("layout", "b", "Vane", "");
        SearchResult both = other.search(query("vane"), 5);
        assertThat(both.total()).isEqualTo(2);
        assertThat(count(both, "kind:layout")).isEqualTo(2);
    }

    /** What is kept in memory and brought up to date is what one that has just started reads. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void whatIsKeptIsWhatIsThereAfterAnyChanges(long seed) {
        Random random = new Random(seed);
        List<String> all = List.of("taper", "tapered", "pair", "ogival", "quillmere");
        for (int round = 0; round < 12; round++) {
            for (int i = random.nextInt(6); i >= 0; i--) {
                String slug = "s" + random.nextInt(15);
                if (random.nextInt(4) == 0) {
                    together.executeWithoutResult(status -> {
                        index.hold();
                        index.remove("layout", slug);
                    });
                } else {
                    publish(
                            "layout",
                            slug,
                            "Vane " + all.get(random.nextInt(all.size())),
                            all.get(random.nextInt(all.size())),
                            random.nextInt(3) * 1000,
                            Bands.HEIGHT.of(5 + random.nextInt(8)));
                }
            }
            SearchService fresh = service();
            for (String q : List.of("", "taper", "pair vane", "quil", "ogivla", "tap pair")) {
                String facet = random.nextBoolean() ? "height:6-8" : "kind:layout";
                SearchSort sort = SearchSort.values()[random.nextInt(3)];
                SearchQuery query = SearchQuery.read(q, List.of(facet), sort.key(), null, new Checks());
                SearchResult expected = fresh.search(query, 5);
                assertThat(search.search(query, 5)).as(q + " " + facet).isEqualTo(expected);
            }
        }
    }

    /** Whoever comes second waits, and then works with what the first one wrote. */
    @Test
    void twoWhoWriteComeOneAfterTheOther() {
        CountDownLatch begun = new CountDownLatch(1);
        CompletableFuture<Integer> second = CompletableFuture.supplyAsync(() -> {
            try {
                begun.await();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
            return together.execute(status -> {
                index.hold();
                return index.current("layout", List.of("kite"), SearchIndexer.VERSION)
                        .size();
            });
        });
        together.executeWithoutResult(status -> {
            index.hold();
            begun.countDown();
            index.put(
                    new SearchEntry(
                            "layout",
                            "kite",
                            1,
                            "Kite",
                            "",
                            null,
                            false,
                            "Club",
                            START,
                            -1,
                            null,
                            100,
                            List.of(),
                            new WordBag().add(Weight.NAME, "Kite")),
                    SearchIndexer.VERSION);
        });
        assertThat(second.join()).isEqualTo(1);
    }

    @Test
    void aSearchTakesFewStatementsHoweverMuchIsFound() {
        for (int i = 0; i < 60; i++) {
            publish("layout", "s" + i, "Triangular vane " + i, "pair", Bands.HEIGHT.of(i), Bands.POSITION.of(i));
        }
        SearchService fresh = service();
        for (String q : List.of("", "vane", "trianglar pair", "vaen trianglr", "nothing of this")) {
            SearchQuery query = query(q, "height:6-8", "height:10-15", "kind:layout", "position:5-8");
            assertThat(counter.during(() -> fresh.search(query, SearchService.LARGEST_PAGE)))
                    .as(q)
                    .isBetween(1, SearchService.MOST_STATEMENTS);
        }
        assertThat(counter.during(() -> fresh.search(query("vane"), 12)))
                .as("asked before: whether anything changed, and the page")
                .isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "'",
                "\"",
                "';drop table search_entry;--",
                "vane' | 'x",
                "a & b | !c",
                ":*",
                "vane:*",
                "<->",
                "\\",
                "\\'",
                "%",
                "_",
                "vane%",
                "(((",
                ")",
                "!!",
                "*",
                "?",
                "??",
                "{",
                "${x}",
                ":words",
                "@@",
                "$1",
                "~",
                "\u00a0",
                "\u200bvane",
                "ﬁn",
                "🛩",
                "🛩 vane",
                "…",
                "<script>",
                "&lt;",
                "='vane'",
                "=vane",
                "0.08.",
                "1e999",
                "null",
                "x'00'",
                "vane -- comment",
                "/* vane */",
                "ΚΑΛΗΜΕΡΑ",
                "Ы",
                "日本語"
            })
    void whatLooksLikeAnOperatorIsNone(String q) {
        publish("layout", "kite", "Vane", "🛩 καλημερα");
        Checks checks = new Checks();
        SearchQuery query = SearchQuery.read(q, null, null, null, checks);
        SearchResult result = search.search(query, 5);
        Set<String> typed = new HashSet<>(Words.of(q));
        boolean there = !typed.isEmpty()
                && typed.stream()
                        .filter(w -> !Words.isFiller(w))
                        .allMatch(w -> "vane".startsWith(w) || "καλημερα".startsWith(w));
        if (checks.isClean() && there) {
            assertThat(slugs(result)).containsExactly("kite");
        } else if (!query.text().isEmpty()) {
            assertThat(result.total()).isZero();
        }
        assertThat(found("vane").total()).as("everything is still there").isEqualTo(1);
    }

    @Test
    void longTextsAndManyWordsAreKept() {
        String many = IntStream.range(0, 3000).mapToObj(i -> "word" + i).collect(Collectors.joining(" "));
        publish("layout", "long", "x".repeat(200), many + " " + "y".repeat(5000));
        assertThat(slugs(found("word7 word8 word9"))).containsExactly("long");
        assertThat(slugs(found("x".repeat(200)))).containsExactly("long");
    }

    @Test
    void theIndexKnowsWhetherItIsOfOlderRules() {
        publish("layout", "a", "Vane", "");
        together.executeWithoutResult(status -> index.finish(SearchIndexer.VERSION));
        assertThat(index.isOlderThan(SearchIndexer.VERSION)).isFalse();
        together.executeWithoutResult(status -> index.outdate());
        assertThat(index.isOlderThan(SearchIndexer.VERSION)).isTrue();
        assertThat(index.claim(false, START, START.plusSeconds(60))).isTrue();
        assertThat(index.claim(false, START.plusSeconds(59), START.plusSeconds(120)))
                .as("taken")
                .isFalse();
        assertThat(index.claim(true, START.plusSeconds(59), START.plusSeconds(120)))
                .isTrue();
        assertThat(index.claim(false, START.plusSeconds(121), START.plusSeconds(180)))
                .as("silent")
                .isTrue();
        together.executeWithoutResult(status -> index.finish(SearchIndexer.VERSION));
        assertThat(index.isOlderThan(SearchIndexer.VERSION)).as("for the entry").isTrue();
        assertThat(index.outdated(SearchIndexer.VERSION, 5))
                .containsExactly(new MeasuredEffects.Concerned("layout", "a"));
    }
}
