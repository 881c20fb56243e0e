package org.vanewright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.DraftClosedException;
import org.vanewright.record.ImportOrigin;
import org.vanewright.record.ImportedDocument;
import org.vanewright.record.Licence;
import org.vanewright.record.ListedRevision;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordNotFoundException;
import org.vanewright.record.RecordPage;
import org.vanewright.record.RecordState;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionConflictException;
import org.vanewright.record.RevisionHead;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.RevisionRepository;

/**
 * What every repository of revisions keeps, on every database. A feature extends it twice, once for each
 * {@link Databases.Engine}.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
public abstract class RepositoryContract<T extends RecordContent> {
    private static final int RACERS = 6;

    private final HikariDataSource database;
    private final String table;
    private final SteppingClock clock = new SteppingClock();
    private final CanonicalJson json = new CanonicalJson();
    private final RevisionRepository<T> repository;

    /** @param table the repository's own */
    protected RepositoryContract(Databases.Engine engine, String table) {
        this.database = Databases.migrated(engine);
        this.table = table;
        this.repository = Databases.transactional(database, jdbc -> create(jdbc, json, clock));
    }

    /** The repository under test, by its own constructor. */
    protected abstract RevisionRepository<T> create(JdbcClient jdbc, CanonicalJson json, Clock clock);

    /** A valid document; another {@code variant} is another document of the same name. */
    protected abstract T content(String name, int variant);

    @BeforeEach
    void clear() {
        sql("delete from " + table);
    }

    @AfterAll
    void close() {
        database.close();
    }

    @Test
    void theFirstRevisionIsFoundAsItWasPublished() {
        RevisionRef origin = new RevisionRef("older-kite", 3);
        Revision<T> first = repository.publishNew(content("Kite", 1), "Club", origin);
        assertThat(first.ref()).isEqualTo(new RevisionRef("kite", 1));
        assertThat(first.state()).isEqualTo(RecordState.PUBLISHED);
        assertThat(first.content()).isEqualTo(content("Kite", 1));
        assertThat(first.contributor()).isEqualTo("Club");
        assertThat(first.createdAt()).isEqualTo(clock.instant());
        assertThat(first.derivedFrom()).isEqualTo(origin);
        assertThat(repository.latest("kite")).contains(first);
        assertThat(repository.find(first.ref())).contains(first);
        assertThat(repository.history("kite")).containsExactly(first);
        String stored = repository.canonicalJson(first.ref()).orElseThrow();
        assertThat(stored).isEqualTo(json.write(content("Kite", 1)));
        assertThat(first.sha256()).isEqualTo(json.sha256(stored));
    }

    @Test
    void whatIsImportedStandsBesideWhatIsHere() {
        Revision<T> here = repository.publishNew(content("Kite", 1), "Club", null);
        Revision<T> renamed = repository.keepImported(imported(2, null), origin("kite", 3));
        assertThat(renamed.ref()).as("another record has its slug").isEqualTo(new RevisionRef("kite-2", 3));
        Revision<T> next = repository.keepImported(imported(4, null), origin("kite", 4));
        assertThat(next.ref()).as("a revision of the same record").isEqualTo(new RevisionRef("kite-2", 4));
        Revision<T> localised = repository.keepImported(imported(5, json.write(content("Kite", 6))), origin("kite", 4));
        assertThat(localised.ref()).as("that number is taken").isEqualTo(new RevisionRef("kite-3", 4));
        Revision<T> found = repository.find(localised.ref()).orElseThrow();
        assertThat(found).isEqualTo(localised);
        assertThat(found.content()).isEqualTo(content("Kite", 6));
        assertThat(found.state()).isEqualTo(RecordState.IMPORTED);
        assertThat(found.sha256()).isEqualTo(json.sha256(json.write(content("Kite", 5))));
        assertThat(repository.canonicalJson(found.ref())).contains(json.write(content("Kite", 5)));
        assertThat(repository.verify(found)).isTrue();
        assertThat(repository.withHash(found.sha256())).containsExactly(found);
        assertThat(repository.waiting(10)).containsExactlyInAnyOrder(renamed, next, localised);
        assertThat(repository.list(null, 10).items()).containsExactly(here);
        assertThat(repository.history("kite")).containsExactly(here);
    }

    @Test
    void anAcceptedImportIsTheCurrentOneUnlessALaterOneIs() {
        Revision<T> third = repository.keepImported(imported(3, null), origin("kite", 3));
        Revision<T> second = repository.keepImported(imported(2, null), origin("kite", 2));
        repository.accept(third, "Maintainer");
        repository.accept(second, "Maintainer");
        assertThat(repository.latest("kite").orElseThrow().ref()).isEqualTo(third.ref());
        assertThat(repository.find(second.ref()).orElseThrow().state()).isEqualTo(RecordState.SUPERSEDED);
        Revision<T> fourth = repository.keepImported(imported(4, null), origin("kite", 4));
        repository.accept(fourth, "Maintainer");
        assertThat(repository.latest("kite").orElseThrow().ref()).isEqualTo(fourth.ref());
        assertThatExceptionOfType(DraftClosedException.class).isThrownBy(() -> repository.accept(fourth, "Maintainer"));
    }

    private ImportedDocument imported(int variant, @Nullable String localised) {
        return new ImportedDocument(
                json.write(content("Kite", variant)), localised, "Ada", clock.instant(), Licence.CC_BY_4_0);
    }

    private ImportOrigin origin(String slug, int revision) {
        return new ImportOrigin(
                "import",
                "Other club",
                "https://other.example",
                slug,
                revision,
                clock.instant(),
                new RevisionRef("older", 1),
                null,
                "person",
                "Ben",
                clock.instant(),
                null);
    }

    @Test
    void whatIsNotThereIsEmpty() {
        assertThat(repository.latest("kite")).isEmpty();
        assertThat(repository.find(new RevisionRef("kite", 1))).isEmpty();
        assertThat(repository.history("kite")).isEmpty();
        assertThat(repository.canonicalJson(new RevisionRef("kite", 1))).isEmpty();
        assertThat(repository.list(null, 10)).isEqualTo(new RecordPage<>(List.of(), null));
    }

    @Test
    void headsAreWhatIsPublishedWithoutWhatItSays() {
        Revision<T> first = repository.publishNew(content("First", 1), "A", null);
        Revision<T> second = repository.publishNew(content("Second", 2), "A", null);
        Revision<T> next = repository.publishNext(first.ref(), content("First", 3), "A");
        assertThat(repository.countPublished()).isEqualTo(2);
        assertThat(repository.heads(0, 10))
                .extracting(RevisionHead::ref)
                .containsExactlyInAnyOrder(next.ref(), second.ref());
        assertThat(repository.heads(0, 1)).hasSize(1);
        assertThat(repository.heads(1, 10)).hasSize(1).doesNotContainAnyElementsOf(repository.heads(0, 1));
        assertThat(repository.heads(0, 10))
                .filteredOn(h -> h.ref().equals(next.ref()))
                .allSatisfy(h -> assertThat(h.sha256()).isEqualTo(next.sha256()));
        assertThat(repository.findAll(List.of(first.ref(), second.ref(), new RevisionRef("absent", 1))))
                .extracting(Revision::sha256)
                .containsExactlyInAnyOrder(first.sha256(), second.sha256());
        assertThat(repository.findAll(List.of())).isEmpty();
    }

    @Test
    void theSameNameGetsNumberedSlugs() {
        List<String> slugs = Stream.of("Kite", "kite!", "KITE")
                .map(name ->
                        repository.publishNew(content(name, 1), "Club", null).slug())
                .toList();
        assertThat(slugs).containsExactly("kite", "kite-2", "kite-3");
    }

    @Test
    void theNextRevisionSupersedesTheFormer() {
        Revision<T> first = repository.publishNew(content("Kite", 1), "Club", null);
        clock.advance(Duration.ofHours(1));
        Revision<T> second = repository.publishNext(first.ref(), content("Kite renamed", 2), "Other");
        assertThat(second.ref()).isEqualTo(new RevisionRef("kite", 2));
        assertThat(second.derivedFrom()).isEqualTo(first.ref());
        assertThat(repository.latest("kite")).contains(second);
        assertThat(repository.history("kite"))
                .extracting(Revision::state)
                .containsExactly(RecordState.PUBLISHED, RecordState.SUPERSEDED);
        assertThat(repository.listedHistory("kite"))
                .isEqualTo(repository.history("kite").stream()
                        .map(RepositoryContract::listed)
                        .toList());
        Revision<T> former = repository.find(first.ref()).orElseThrow();
        assertThat(former.content()).isEqualTo(first.content());
        assertThat(former.sha256()).isEqualTo(first.sha256());
        assertThat(repository.list(null, 10).items()).containsExactly(second);
    }

    @Test
    void aChangeOfAFormerRevisionIsAConflictThatShowsTheCurrentOne() {
        Revision<T> first = repository.publishNew(content("Kite", 1), "Club", null);
        Revision<T> second = repository.publishNext(first.ref(), content("Kite", 2), "Other");
        var conflict = catchThrowableOfType(
                RevisionConflictException.class, () -> repository.publishNext(first.ref(), content("Kite", 3), "Late"));
        assertThat(conflict.current()).isEqualTo(second);
        assertThat(conflict.base()).isEqualTo(first.ref());
        assertThat(repository.history("kite")).hasSize(2);
    }

    @Test
    void aChangeOfNothingIsNotFound() {
        Revision<T> first = repository.publishNew(content("Kite", 1), "Club", null);
        for (RevisionRef base : List.of(new RevisionRef("other", 1), new RevisionRef(first.slug(), 2))) {
            assertThatExceptionOfType(RecordNotFoundException.class)
                    .isThrownBy(() -> repository.publishNext(base, content("Kite", 2), "Club"));
        }
        sql("update " + table + " set state = 'WITHDRAWN'");
        assertThatExceptionOfType(RecordNotFoundException.class)
                .isThrownBy(() -> repository.publishNext(first.ref(), content("Kite", 2), "Club"));
    }

    private static ListedRevision listed(Revision<?> r) {
        return new ListedRevision(
                r.slug(), r.number(), r.state(), r.sha256(), r.contributor(), r.createdAt(), r.standing());
    }

    @Test
    void aChangeThatCannotBeStoredLeavesTheFormerPublished() {
        Revision<T> first = repository.publishNew(content("Kite", 1), "Club", null);
        String tooLong = "x".repeat(121);
        assertThatExceptionOfType(DataIntegrityViolationException.class)
                .isThrownBy(() -> repository.publishNext(first.ref(), content("Kite", 2), tooLong));
        assertThat(repository.latest("kite")).contains(first);
        assertThat(repository.history("kite")).containsExactly(first);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
    void ofChangesAtOnceExactlyOneWins(int round) throws Exception {
        Revision<T> first = repository.publishNew(content("Kite", round), "Club", null);
        List<Object> outcomes = race(racer -> {
            try {
                return repository.publishNext(first.ref(), content("Kite", 100 + racer), "Racer " + racer);
            } catch (RevisionConflictException e) {
                return e;
            }
        });
        List<Object> winners =
                outcomes.stream().filter(Revision.class::isInstance).toList();
        assertThat(winners).hasSize(1);
        assertThat(repository.latest("kite")).isEqualTo(winners.stream().findFirst());
        assertThat(repository.history("kite"))
                .extracting(Revision::state)
                .containsExactly(RecordState.PUBLISHED, RecordState.SUPERSEDED);
        assertThat(outcomes.stream().filter(RevisionConflictException.class::isInstance))
                .hasSize(RACERS - 1)
                .allSatisfy(e ->
                        assertThat(((RevisionConflictException) e).current()).isEqualTo(winners.get(0)));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void newRecordsAtOnceGetDifferentSlugs(int round) throws Exception {
        List<Object> slugs = race(racer -> repository
                .publishNew(content("Kite", round), "Racer " + racer, null)
                .slug());
        assertThat(slugs).containsExactlyInAnyOrder("kite", "kite-2", "kite-3", "kite-4", "kite-5", "kite-6");
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void pagesTogetherAreTheWholeListOnce(long seed) {
        Random random = new Random(seed);
        for (int i = 0; i < 40; i++) {
            Revision<T> published = repository.publishNew(content("Kite", i), "Club", null);
            for (int more = random.nextInt(3); more > 0; more--) {
                published = repository.publishNext(published.ref(), content("Kite", i + 100 * more), "Club");
            }
            // Some of the same instant, so that the slug settles their order.
            clock.advance(Duration.ofNanos(1000L * random.nextInt(2)));
        }
        List<Revision<T>> collected = new ArrayList<>();
        String cursor = null;
        do {
            int limit = 1 + random.nextInt(9);
            RecordPage<Revision<T>> page = repository.list(cursor, limit);
            assertThat(page.items()).hasSizeBetween(1, limit);
            collected.addAll(page.items());
            cursor = page.nextCursor();
        } while (cursor != null);
        assertThat(collected).hasSize(40).doesNotHaveDuplicates();
        assertThat(collected)
                .isSortedAccordingTo(Comparator.comparing((Revision<T> r) -> r.createdAt())
                        .reversed()
                        .thenComparing(Revision::slug));
        assertThat(collected)
                .allSatisfy(r -> assertThat(repository.latest(r.slug())).contains(r));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "x", "!!", "bm90IGEgY3Vyc29y", "MjAyNi0wMS0wMVQwMDowMDowMFogYQ=="})
    void aCursorOfOnesOwnMakingIsRefused(String cursor) {
        assertThat(refused(cursor, 10)).extracting(FieldProblem::field).containsExactly("cursor");
    }

    @ParameterizedTest
    @ValueSource(ints = {Integer.MIN_VALUE, 0, RevisionRepository.LARGEST_PAGE + 1, Integer.MAX_VALUE})
    void aPageHasASensibleSize(int limit) {
        assertThat(refused(null, limit)).extracting(FieldProblem::field).containsExactly("limit");
    }

    @Test
    void aChangedDocumentIsNoticed() {
        Revision<T> first = repository.publishNew(content("Kite", 1), "Club", null);
        assertThat(repository.verify(first)).isTrue();
        sql("update " + table + " set content = '"
                + json.write(content("Kite", 2)).replace("'", "''") + "'");
        assertThat(repository.verify(first)).isFalse();
        sql("delete from " + table);
        assertThat(repository.verify(first)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"state = 'LOST'", "revision = 0", "derived_from_slug = 'kite'", "sha256 = null"})
    void theTableItselfRefusesNonsense(String change) {
        repository.publishNew(content("Kite", 1), "Club", null);
        assertThatExceptionOfType(DataIntegrityViolationException.class)
                .isThrownBy(() -> sql("update " + table + " set " + change));
    }

    private List<FieldProblem> refused(@Nullable String cursor, int limit) {
        return catchThrowableOfType(InvalidInputException.class, () -> repository.list(cursor, limit))
                .problems();
    }

    private void sql(String statement) {
        JdbcClient.create(database).sql(statement).update();
    }

    private interface Racer {
        Object run(int racer);
    }

    /** Lets all start at once and gives their results, in no order. */
    private static List<Object> race(Racer racer) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(RACERS);
        try {
            CyclicBarrier start = new CyclicBarrier(RACERS);
            List<Callable<Object>> tasks = IntStream.range(0, RACERS)
                    .mapToObj(i -> (Callable<Object>) () -> {
                        start.await();
                        return racer.run(i);
                    })
                    .toList();
            List<Object> results = new ArrayList<>();
            for (Future<Object> result : threads.invokeAll(tasks)) {
                results.add(result.get());
            }
            return results;
        } finally {
            threads.shutdownNow();
        }
    }
}
