package org.vanewright.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.audit.AuditEntry;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.testing.Databases;

/** Drafts, submissions and reviews by several people, on every database. */
abstract class WorkflowCases {
    private static final Actor ANN = Workshop.ANN;
    private static final Actor BEN = Workshop.BEN;
    private static final Actor MIA = Workshop.MIA;
    private static final Actor MAX = Workshop.MAX;

    private final Databases.Engine engine;
    private @Nullable Workshop opened;

    WorkflowCases(Databases.Engine engine) {
        this.engine = engine;
    }

    @BeforeEach
    void open() {
        opened = new Workshop(engine);
    }

    @AfterEach
    void close() {
        shop().close();
    }

    private Workshop shop() {
        if (opened == null) {
            throw new IllegalStateException("not open");
        }
        return opened;
    }

    private Drafts<Note> drafts() {
        return shop().notes.drafts();
    }

    private Reviews<Note> reviews() {
        return shop().notes.reviews();
    }

    /** What each step may follow; every other one is refused and changes nothing. */
    @ParameterizedTest
    @CsvSource({
        "DRAFT,     save submit discard share",
        "SUBMITTED, take-back publish return",
        "RETURNED,  save submit discard share",
        "PUBLISHED, withdraw",
        "DISCARDED, ''"
    })
    void eachStepFollowsOnlyWhereItMay(DraftState state, String allowed) {
        List<String> steps =
                List.of("save", "submit", "take-back", "discard", "share", "publish", "return", "withdraw");
        for (String step : steps) {
            Draft<Note> draft = at(state, "Kite " + step);
            Throwable refusal = catchThrowable(() -> take(step, draft));
            if (List.of(allowed.split(" ")).contains(step)) {
                assertThat(refusal).as(step + " of what is " + state).isNull();
            } else {
                assertThat(refusal)
                        .as(step + " of what is " + state)
                        .isInstanceOfAny(
                                DraftClosedException.class,
                                DraftNotFoundException.class,
                                RecordNotFoundException.class);
                if (state != DraftState.DISCARDED) {
                    assertThat(shop().as(ANN, () -> drafts().find(draft.id()))).isEqualTo(draft);
                }
            }
        }
    }

    private Draft<Note> at(DraftState state, String name) {
        Draft<Note> draft = shop().started(ANN, name);
        if (state == DraftState.DISCARDED) {
            shop().as(ANN, () -> {
                drafts().discard(draft.id());
                return draft;
            });
            return draft;
        }
        if (state != DraftState.DRAFT) {
            RevisionRef ref = shop().submitted(ANN, draft).ref();
            if (state == DraftState.RETURNED) {
                shop().as(MIA, () -> reviews().giveBack(ref, "Wrong"));
            } else if (state == DraftState.PUBLISHED) {
                shop().as(MIA, () -> reviews().publish(ref));
            }
        }
        Draft<Note> reached = shop().as(ANN, () -> drafts().find(draft.id()));
        assertThat(reached.state()).isEqualTo(state);
        return reached;
    }

    private void take(String step, Draft<Note> draft) {
        RevisionRef ref = draft.submitted() == null ? new RevisionRef("none", 1) : draft.submitted();
        String id = draft.id();
        Supplier<Object> work = switch (step) {
            case "save" -> () -> drafts().save(id, draft.version(), Note.of("Changed", 2), null);
            case "submit" -> () -> drafts().submit(id, draft.version(), Licence.CC0_1_0, null);
            case "take-back" -> () -> drafts().takeBack(id);
            case "discard" ->
                () -> {
                    drafts().discard(id);
                    return id;
                };
            case "share" -> () -> drafts().share(id, "ben");
            case "publish" -> () -> reviews().publish(ref);
            case "return" -> () -> reviews().giveBack(ref, "Wrong");
            default -> () -> reviews().withdraw(ref, "Wrong");
        };
        boolean review = List.of("publish", "return", "withdraw").contains(step);
        shop().as(review ? MIA : ANN, work);
    }

    @Test
    void whatComesBackIsCorrectedAndSubmittedAgain() {
        Draft<Note> draft = shop().started(ANN, "Kite");
        Revision<Note> first = shop().submitted(ANN, draft);
        assertThat(first.state()).isEqualTo(RecordState.SUBMITTED);
        Revision<Note> returned = shop().as(MIA, () -> reviews().giveBack(first.ref(), " Too tall "));
        assertThat(returned.standing().reason()).isEqualTo("Too tall");
        assertThat(returned.standing().closedBy()).isEqualTo("mia");
        shop().as(ANN, () -> drafts().save(draft.id(), 1, Note.of("Kite", 2), null));
        Revision<Note> second = shop().submitted(ANN, draft);
        assertThat(second.ref()).isEqualTo(new RevisionRef("kite", 2));
        Revision<Note> published = shop().as(MIA, () -> reviews().publish(second.ref()));
        assertThat(published.content()).isEqualTo(Note.of("Kite", 2));
        assertThat(published.sha256()).isEqualTo(second.sha256());
        assertThat(shop().notes.published("kite")).isEqualTo(published);
        assertThat(shop().notes.history("kite")).containsExactly(published);
        assertThat(shop().as(MIA, () -> shop().notes.history("kite"))).hasSize(2);
    }

    @Test
    void whatWaitsIsCountedFromItsOldestOn() {
        assertThat(reviews().backlog()).isEqualTo(Backlog.NONE);
        Revision<Note> first = shop().submitted(ANN, shop().started(ANN, "First"));
        Revision<Note> second = shop().submitted(BEN, shop().started(BEN, "Second"));
        assertThat(reviews().backlog()).isEqualTo(new Backlog(2, first.createdAt()));
        assertThat(reviews().backlog().plus(new Backlog(1, second.createdAt())))
                .isEqualTo(new Backlog(3, first.createdAt()));
        shop().as(MIA, () -> reviews().giveBack(first.ref(), "Wrong"));
        assertThat(reviews().backlog()).isEqualTo(new Backlog(1, second.createdAt()));
    }

    @Test
    void whatSomebodyMadePublicIsCountedAndListed() {
        RevisionRef first = shop().submitted(ANN, shop().started(ANN, "Kite")).ref();
        RevisionRef second =
                shop().submitted(ANN, shop().started(ANN, "Other kite")).ref();
        shop().submitted(BEN, shop().started(BEN, "Waiting kite"));
        assertThat(shop().notes.contributions(List.of("ann", "ben"))).isEmpty();

        shop().as(MIA, () -> reviews().publish(first));
        shop().as(MIA, () -> reviews().publish(second));
        shop().as(MIA, () -> reviews().withdraw(first, "Wrong"));

        assertThat(shop().notes.contributions(List.of("ann", "ben"))).isEqualTo(Map.of("ann", 2));
        assertThat(shop().notes.contributedBy("ann"))
                .extracting(Revision::ref)
                .containsExactlyInAnyOrder(first, second);
        assertThat(shop().notes.contributedBy("ben")).isEmpty();
    }

    @Test
    void whatADraftMentionsIsKnownForItsAuthorsOnly() {
        Draft<Note> draft = shop().started(ANN, "Kite 0123abcd");
        shop().as(ANN, () -> drafts().share(draft.id(), "ben"));

        assertThat(shop().ownDrafts.mention("ann", "0123abcd")).isTrue();
        assertThat(shop().ownDrafts.mention("ben", "0123abcd")).isTrue();
        assertThat(shop().ownDrafts.mention("mia", "0123abcd")).isFalse();
        assertThat(shop().ownDrafts.mention("ann", "0123abce")).isFalse();
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> shop().ownDrafts.mention("ann", "%"));
    }

    @Test
    void whatIsNotPublicIsFoundByItsAuthorsAndReviewersOnly() {
        Draft<Note> draft = shop().started(ANN, "Kite");
        RevisionRef ref = shop().submitted(ANN, draft).ref();
        for (Actor stranger : List.of(BEN, MAX)) {
            assertThatExceptionOfType(DraftNotFoundException.class)
                    .isThrownBy(() -> shop().as(stranger, () -> drafts().find(draft.id())));
        }
        assertThatExceptionOfType(SignInNeededException.class).isThrownBy(() -> drafts().find(draft.id()));
        assertThat(shop().notes.find(ref)).isEmpty();
        assertThat(shop().as(BEN, () -> shop().notes.find(ref))).isEmpty();
        assertThat(shop().as(MAX, () -> shop().notes.find(ref))).isPresent();
        assertThat(shop().as(ANN, () -> shop().notes.find(ref))).isPresent();
        assertThat(shop().notes.history("kite")).isEmpty();
        assertThat(shop().notes.listedHistory("kite")).isEmpty();
        assertThat(shop().as(ANN, () -> shop().notes.listedHistory("kite")))
                .extracting(ListedRevision::state)
                .containsExactly(RecordState.SUBMITTED);
    }

    @Test
    void aCoauthorChangesAndSubmitsButNeitherSharesNorDiscards() {
        Draft<Note> draft = shop().started(ANN, "Kite");
        shop().as(ANN, () -> drafts().share(draft.id(), "ben"));
        shop().as(BEN, () -> drafts().save(draft.id(), 1, Note.of("Kite", 7), null));
        assertThatExceptionOfType(NotAllowedException.class)
                .isThrownBy(() -> shop().as(BEN, () -> drafts().share(draft.id(), "mia")));
        assertThatExceptionOfType(NotAllowedException.class).isThrownBy(() -> take(BEN, draft));
        Revision<Note> waiting = shop().submitted(BEN, draft);
        assertThat(waiting.contributor()).isEqualTo("ann");
        assertThat(shop().as(BEN, () -> shop().notes.isOwn(waiting))).isTrue();
        shop().as(BEN, () -> drafts().takeBack(draft.id()));
        shop().as(ANN, () -> drafts().unshare(draft.id(), "ben"));
        assertThatExceptionOfType(DraftNotFoundException.class)
                .isThrownBy(() -> shop().as(BEN, () -> drafts().find(draft.id())));
        assertThatExceptionOfType(InvalidInputException.class)
                .isThrownBy(() -> shop().as(ANN, () -> drafts().share(draft.id(), "nobody")));
    }

    private void take(Actor actor, Draft<Note> draft) {
        shop().as(actor, () -> {
            drafts().discard(draft.id());
            return draft;
        });
    }

    @RepeatedTest(4)
    void ofTwoCoauthorsAtOnceTheSecondSeesBothVersions() throws Exception {
        Draft<Note> draft = shop().started(ANN, "Kite");
        shop().as(ANN, () -> drafts().share(draft.id(), "ben"));
        List<Object> outcomes = atOnce(
                () -> shop().as(ANN, () -> drafts().save(draft.id(), 1, Note.of("Ann’s kite", 2), null)),
                () -> shop().as(BEN, () -> drafts().save(draft.id(), 1, Note.of("Ben’s kite", 3), null)));
        assertThat(outcomes).hasAtLeastOneElementOfType(Draft.class);
        DraftConflictException conflict = only(outcomes, DraftConflictException.class);
        assertThat(conflict.startedFrom()).isEqualTo(1);
        Draft<Note> saved = shop().as(ANN, () -> drafts().find(draft.id()));
        assertThat(conflict.current()).isEqualTo(saved);
        assertThat(saved.version()).isEqualTo(2);
        assertThat(shop().as(BEN, () -> drafts().version(saved, 1))).isEqualTo(Note.of("Kite", 1));
        String second = saved.content().name().startsWith("Ann") ? "Ben’s kite" : "Ann’s kite";
        Draft<Note> merged = shop().as(ANN, () -> drafts().save(draft.id(), 2, Note.of(second, 4), null));
        assertThat(shop().as(ANN, () -> drafts().version(merged, 2))).isEqualTo(saved.content());
    }

    @RepeatedTest(4)
    void ofTwoReviewersAtOnceOneDecides() throws Exception {
        RevisionRef ref = shop().submitted(ANN, shop().started(ANN, "Kite")).ref();
        List<Object> outcomes = atOnce(
                () -> shop().as(MIA, () -> reviews().publish(ref)),
                () -> shop().as(MAX, () -> reviews().giveBack(ref, "Not yet")));
        only(outcomes, DraftClosedException.class);
        Revision<?> decided = only(outcomes, Revision.class);
        assertThat(shop().as(MIA, () -> shop().notes.exactly(ref)).state()).isEqualTo(decided.state());
        assertThat(shop().log().stream().map(AuditEntry::event))
                .filteredOn(e -> e.equals("revision.published") || e.equals("revision.returned"))
                .hasSize(1);
    }

    @RepeatedTest(4)
    void ofTwoChangesOfOneRevisionOneIsPublished() throws Exception {
        Revision<Note> base = shop().published(ANN, "Kite");
        RevisionRef anns = shop().submitted(ANN, shop().as(ANN, () -> drafts().startNext(base.ref())))
                .ref();
        RevisionRef bens = shop().submitted(BEN, shop().as(BEN, () -> drafts().startNext(base.ref())))
                .ref();
        List<Object> outcomes = atOnce(
                () -> shop().as(MIA, () -> reviews().publish(anns)),
                () -> shop().as(MAX, () -> reviews().publish(bens)));
        Revision<?> winner = only(outcomes, Revision.class);
        RevisionConflictException conflict = only(outcomes, RevisionConflictException.class);
        assertThat(conflict.base()).isEqualTo(base.ref());
        assertThat(conflict.current().ref()).isEqualTo(winner.ref());
        assertThat(shop().notes.history("kite"))
                .extracting(Revision::state)
                .containsExactly(RecordState.PUBLISHED, RecordState.SUPERSEDED);
    }

    @Test
    void aChangeThatWasOvertakenTakesTheOtherInBeforeItIsSubmittedAgain() {
        Revision<Note> base = shop().published(ANN, "Kite");
        Draft<Note> late = shop().as(BEN, () -> drafts().startNext(base.ref()));
        RevisionRef sooner = shop().submitted(ANN, shop().as(ANN, () -> drafts().startNext(base.ref())))
                .ref();
        shop().as(MIA, () -> reviews().publish(sooner));
        assertThatExceptionOfType(RevisionConflictException.class).isThrownBy(() -> shop().submitted(BEN, late));
        shop().as(BEN, () -> drafts().save(late.id(), 1, Note.of("Kite", 9), sooner.revision()));
        Revision<Note> merged = shop().submitted(BEN, late);
        assertThat(merged.base()).isEqualTo(sooner);
        shop().as(MIA, () -> reviews().publish(merged.ref()));
        assertThat(shop().notes.published("kite").number()).isEqualTo(3);
    }

    @Test
    void nobodyPublishesTheirOwnWorkWhereSomebodyElseCould() {
        Draft<Note> shared = shop().started(ANN, "Shared kite");
        shop().as(ANN, () -> drafts().share(shared.id(), "max"));
        RevisionRef coauthored = shop().submitted(ANN, shared).ref();
        Revision<Note> own = shop().submitted(MIA, shop().started(MIA, "Own kite"));
        assertThatExceptionOfType(NotAllowedException.class)
                .isThrownBy(() -> shop().as(MIA, () -> reviews().publish(own.ref())));
        assertThatExceptionOfType(NotAllowedException.class)
                .isThrownBy(() -> shop().as(MAX, () -> reviews().publish(coauthored)));
        assertThat(shop().as(MIA, () -> reviews().mayPublish(own))).isFalse();
        shop().onlyReviewer("mia");
        assertThat(shop().as(MIA, () -> reviews().mayPublish(own))).isTrue();
        assertThat(shop().as(MIA, () -> reviews().publish(own.ref())).state()).isEqualTo(RecordState.PUBLISHED);
    }

    @Test
    void stepsOfAReviewAreForReviewersOnly() {
        RevisionRef ref = shop().submitted(ANN, shop().started(ANN, "Kite")).ref();
        List<Supplier<Object>> steps = List.of(
                () -> reviews().waiting(10),
                () -> reviews().publish(ref),
                () -> reviews().giveBack(ref, "No"),
                () -> reviews().withdraw(ref, "No"));
        for (Supplier<Object> step : steps) {
            assertThatExceptionOfType(NotAllowedException.class).isThrownBy(() -> shop().as(BEN, step));
            assertThatExceptionOfType(SignInNeededException.class).isThrownBy(() -> shop().as(Actor.visitor(), step));
        }
        Actor reader = new Actor("ann", "ann", Set.of(Power.READ_OWN));
        assertThatExceptionOfType(NotAllowedException.class)
                .isThrownBy(() -> shop().as(reader, () -> drafts().start(Note.of("Kite", 1))));
    }

    @ParameterizedTest
    @EnumSource(Licence.class)
    void whatIsMadeFromAnothersWorkKeepsToItsLicence(Licence given) {
        Draft<Note> first = shop().started(ANN, "Kite");
        RevisionRef ref = shop().as(ANN, () -> drafts().submit(first.id(), 1, given, null))
                .ref();
        shop().as(MIA, () -> reviews().publish(ref));
        for (Licence chosen : Licence.values()) {
            Draft<Note> others = shop().as(BEN, () -> drafts().startFrom(ref));
            assertThat(others.derivedFrom()).isEqualTo(ref);
            Throwable refusal =
                    catchThrowable(() -> shop().as(BEN, () -> drafts().submit(others.id(), 1, chosen, null)));
            if (given.derivatives().contains(chosen)) {
                assertThat(refusal).isNull();
            } else {
                assertThat(refusal)
                        .isInstanceOfSatisfying(
                                InvalidInputException.class,
                                e -> assertThat(e.problems().get(0).field()).isEqualTo("licence"));
            }
            Draft<Note> own = shop().as(ANN, () -> drafts().startFrom(ref));
            assertThat(shop().as(ANN, () -> drafts().submit(own.id(), 1, chosen, null))
                            .standing()
                            .licence())
                    .isEqualTo(chosen);
        }
    }

    @Test
    void aSubmissionNamesEveryObstacleAndTheVersionItMeans() {
        Draft<Note> nameless = shop().started(ANN, "");
        InvalidInputException refused = catchThrowableOfType(
                InvalidInputException.class,
                () -> shop().as(ANN, () -> drafts().submit(nameless.id(), 1, null, "x".repeat(1001))));
        assertThat(refused.problems()).extracting(p -> p.field()).containsExactly("name", "summary", "licence");
        assertThatExceptionOfType(DraftConflictException.class)
                .isThrownBy(() -> shop().as(ANN, () -> drafts().submit(nameless.id(), 2, Licence.CC0_1_0, null)));
    }

    @Test
    void whatNamesSomethingSecretIsNotPublished() {
        RevisionRef ref =
                shop().submitted(ANN, shop().started(ANN, "Secret kite")).ref();
        assertThatExceptionOfType(InvalidInputException.class)
                .isThrownBy(() -> shop().as(MIA, () -> reviews().publish(ref)));
        assertThat(shop().as(MIA, () -> shop().notes.exactly(ref)).state()).isEqualTo(RecordState.SUBMITTED);
    }

    @Test
    void aReasonIsNeededAndAWithdrawnRevisionStaysReadable() {
        Revision<Note> published = shop().published(ANN, "Kite");
        for (String reason : List.of("", "  ", "x".repeat(2001))) {
            assertThatExceptionOfType(InvalidInputException.class)
                    .isThrownBy(() -> shop().as(MIA, () -> reviews().withdraw(published.ref(), reason)));
        }
        shop().as(MIA, () -> reviews().withdraw(published.ref(), "The chord was wrong."));
        Revision<Note> withdrawn = shop().notes.shown("kite");
        assertThat(withdrawn.state()).isEqualTo(RecordState.WITHDRAWN);
        assertThat(withdrawn.standing().reason()).isEqualTo("The chord was wrong.");
        assertThat(withdrawn.content()).isEqualTo(published.content());
        assertThat(shop().notes.verify(withdrawn)).isTrue();
        Draft<Note> next = shop().as(ANN, () -> drafts().startNext(published.ref()));
        RevisionRef again = shop().submitted(ANN, next).ref();
        shop().as(MIA, () -> reviews().publish(again));
        assertThat(shop().notes.published("kite").ref()).isEqualTo(again);
    }

    @Test
    void everyStepIsLoggedAndTold() {
        Draft<Note> draft = shop().started(ANN, "Kite");
        shop().as(ANN, () -> drafts().share(draft.id(), "ben"));
        shop().as(ANN, () -> drafts().unshare(draft.id(), "ben"));
        shop().submitted(ANN, draft);
        shop().as(ANN, () -> drafts().takeBack(draft.id()));
        RevisionRef second = shop().submitted(ANN, draft).ref();
        shop().as(MIA, () -> reviews().giveBack(second, "Wrong"));
        RevisionRef third = shop().submitted(ANN, draft).ref();
        shop().as(MIA, () -> reviews().publish(third));
        shop().as(MAX, () -> reviews().withdraw(third, "Wrong"));
        take(ANN, shop().started(ANN, "Given up"));
        assertThat(shop().log().stream().map(e -> e.person() + " " + e.event()))
                .containsExactly(
                        "ann draft.started",
                        "ann draft.shared",
                        "ann draft.unshared",
                        "ann draft.submitted",
                        "ann draft.taken-back",
                        "ann draft.submitted",
                        "mia revision.returned",
                        "ann draft.submitted",
                        "mia revision.published",
                        "max revision.withdrawn",
                        "ann draft.started",
                        "ann draft.discarded");
        assertThat(shop().told)
                .extracting(RevisionEvent::state)
                .containsExactly(
                        RecordState.SUBMITTED,
                        RecordState.RETURNED,
                        RecordState.SUBMITTED,
                        RecordState.RETURNED,
                        RecordState.SUBMITTED,
                        RecordState.PUBLISHED,
                        RecordState.WITHDRAWN);
        assertThat(shop().changed)
                .as("what is public changed twice")
                .extracting(PublicChange::slug)
                .containsExactly(third.slug(), third.slug());
        assertThat(shop().discarded).extracting(DraftDiscarded::kind).containsExactly("airframe");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void whateverPeopleDoThePublicRecordHolds(long seed) {
        new RandomWalk(shop(), seed).steps(150);
    }

    private static <T> T only(List<Object> outcomes, Class<T> type) {
        List<T> found =
                outcomes.stream().filter(type::isInstance).map(type::cast).toList();
        assertThat(found).as("outcomes " + outcomes).hasSize(1);
        return found.get(0);
    }

    private static List<Object> atOnce(Supplier<Object> first, Supplier<Object> second) throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(2);
        try {
            CyclicBarrier start = new CyclicBarrier(2);
            List<Callable<Object>> tasks = new ArrayList<>();
            for (Supplier<Object> work : List.of(first, second)) {
                tasks.add(() -> {
                    start.await();
                    try {
                        return work.get();
                    } catch (DraftConflictException | DraftClosedException | RevisionConflictException e) {
                        return e;
                    }
                });
            }
            List<Object> outcomes = new ArrayList<>();
            for (Future<Object> each : threads.invokeAll(tasks)) {
                outcomes.add(each.get());
            }
            return outcomes;
        } finally {
            threads.shutdownNow();
        }
    }
}
