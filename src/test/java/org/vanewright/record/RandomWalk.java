package org.vanewright.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.vanewright.engineering.input.InvalidInputException;

/** People who do anything in any order; after each step the public record must hold. */
final class RandomWalk {
    private static final Actor STRANGER = Workshop.member("stranger");

    private final Workshop shop;
    private final Random random;
    private final List<Actor> people = List.of(Workshop.ANN, Workshop.BEN, Workshop.MIA, Workshop.MAX);
    private final List<String> drafts = new ArrayList<>();
    private final Set<RevisionRef> revisions = new LinkedHashSet<>();
    private final Map<RevisionRef, Revision<Note>> last = new HashMap<>();
    private int succeeded;

    RandomWalk(Workshop shop, long seed) {
        this.shop = shop;
        this.random = new Random(seed);
    }

    void steps(int count) {
        for (int i = 0; i < count; i++) {
            Actor actor = pick(people);
            try {
                shop.as(actor, this::step);
                succeeded++;
            } catch (DraftClosedException
                    | DraftNotFoundException
                    | DraftConflictException
                    | RevisionConflictException
                    | RecordNotFoundException
                    | NotAllowedException
                    | InvalidInputException e) {
                // refused, so nothing may have changed for the worse
            }
            check();
        }
        assertThat(succeeded).isGreaterThan(count / 8);
        assertThat(last.values()).anyMatch(Revision::isPublic);
    }

    private Object step() {
        Drafts<Note> work = shop.notes.drafts();
        Reviews<Note> reviews = shop.notes.reviews();
        return switch (random.nextInt(11)) {
            case 0 -> started(work.start(note()));
            case 1 -> started(work.startFrom(ref()));
            case 2 -> started(work.startNext(ref()));
            case 3 -> work.save(draft(), version(), note(), null);
            case 4, 5 -> submitted(work.submit(draft(), version(), pick(List.of(Licence.values())), null));
            case 6 -> work.takeBack(draft());
            case 7 -> work.share(draft(), String.valueOf(pick(people).id()));
            case 8 -> reviews.giveBack(waiting(), "Reason");
            case 9 -> reviews.publish(waiting());
            default -> random.nextInt(3) == 0 ? reviews.withdraw(ref(), "Reason") : reviews.publish(waiting());
        };
    }

    private Draft<Note> started(Draft<Note> draft) {
        drafts.add(draft.id());
        return draft;
    }

    private Revision<Note> submitted(Revision<Note> revision) {
        assertThat(revisions.add(revision.ref())).as("a number is used once").isTrue();
        last.put(revision.ref(), revision);
        return revision;
    }

    private Note note() {
        return Note.of(pick(List.of("Kite", "Glider", "Moth", "")), random.nextInt(50));
    }

    private String draft() {
        return drafts.isEmpty() ? "none" : pick(drafts);
    }

    private int version() {
        return 1 + random.nextInt(2);
    }

    private RevisionRef ref() {
        return revisions.isEmpty() ? new RevisionRef("none", 1) : pick(List.copyOf(revisions));
    }

    /** What waits, mostly. */
    private RevisionRef waiting() {
        List<RevisionRef> waiting = revisions.stream()
                .filter(r -> seen(r).state() == RecordState.SUBMITTED)
                .toList();
        return waiting.isEmpty() || random.nextInt(5) == 0 ? ref() : pick(waiting);
    }

    private Revision<Note> seen(RevisionRef ref) {
        return shop.as(Workshop.MIA, () -> shop.notes.exactly(ref));
    }

    private void check() {
        Map<String, Integer> published = new HashMap<>();
        for (RevisionRef ref : revisions) {
            Revision<Note> before = last.get(ref);
            Revision<Note> now = seen(ref);
            if (before == null) {
                throw new AssertionError("unknown " + ref);
            }
            assertThat(now.content()).isEqualTo(before.content());
            assertThat(now.sha256()).isEqualTo(before.sha256());
            assertThat(shop.notes.verify(now)).isTrue();
            assertThat(now.state() == before.state() || reachable(before.state(), now.state()))
                    .as("%s went from %s to %s", ref, before.state(), now.state())
                    .isTrue();
            assertThat(shop.notes.find(ref).isPresent()).isEqualTo(now.isPublic());
            if (now.state() == RecordState.PUBLISHED) {
                published.merge(ref.slug(), 1, Integer::sum);
            }
            last.put(ref, now);
        }
        assertThat(published.values()).allMatch(n -> n == 1);
        for (String id : drafts) {
            assertThatExceptionOfType(DraftNotFoundException.class)
                    .isThrownBy(() -> shop.as(STRANGER, () -> shop.notes.drafts().find(id)));
        }
    }

    private static boolean reachable(RecordState from, RecordState to) {
        return from.mayBecome(to);
    }

    private <E> E pick(List<E> from) {
        return from.get(random.nextInt(from.size()));
    }
}
