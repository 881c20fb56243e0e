package org.vanewright.record;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.context.annotation.AnnotationConfigApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.transaction.support.TransactionSynchronizationManager;
import org.vanewright.audit.AuditEntry;
import org.vanewright.audit.AuditFilter;
import org.vanewright.audit.AuditLog;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.testing.Databases;
import org.vanewright.testing.SteppingClock;

/** Notes with everything they need, on a database of their own, and people to work on them. */
final class Workshop implements AutoCloseable {
    static final Actor ANN = member("ann");
    static final Actor BEN = member("ben");
    static final Actor MIA = maintainer("mia");
    static final Actor MAX = maintainer("max");

    final SteppingClock clock = new SteppingClock();
    final List<RevisionEvent> told = new ArrayList<>();
    final List<PublicChange> changed = new ArrayList<>();
    final List<DraftDiscarded> discarded = new ArrayList<>();
    final NoteService notes;
    final OwnDrafts ownDrafts;
    private final Set<String> reviewers = new HashSet<>(Set.of("mia", "max"));
    private final HikariDataSource database;
    private final AnnotationConfigApplicationContext context = new AnnotationConfigApplicationContext();
    private final ThreadLocal<Actor> acting = ThreadLocal.withInitial(Actor::visitor);

    Workshop(Databases.Engine engine) {
        database = Databases.migrated(engine);
        CanonicalJson json = new CanonicalJson();
        context.registerBean(JdbcClient.class, () -> JdbcClient.create(database));
        context.registerBean(Clock.class, () -> clock);
        context.scan("org.vanewright.audit");
        context.refresh();
        DraftRepository draftTable = new DraftRepository(JdbcClient.create(database));
        ownDrafts = draftTable;
        RecordDesk desk = new RecordDesk(
                acting::get,
                new Members(),
                draftTable,
                json,
                context.getBean(AuditLog.class),
                event -> {
                    synchronized (told) {
                        if (event instanceof RevisionEvent of) {
                            told.add(of);
                        } else if (event instanceof PublicChange change) {
                            if (!TransactionSynchronizationManager.isActualTransactionActive()) {
                                throw new IllegalStateException("told outside of the transaction that changes it");
                            }
                            changed.add(change);
                        } else {
                            discarded.add((DraftDiscarded) event);
                        }
                    }
                },
                new JdbcTransactionManager(database),
                clock);
        notes = new NoteService(
                Databases.transactional(database, jdbc -> new Note.NoteRepository(jdbc, json, clock)), desk);
    }

    static Actor member(String name) {
        return new Actor(name, name, Set.of(Power.READ_OWN, Power.SUBMIT));
    }

    static Actor maintainer(String name) {
        return new Actor(name, name, Set.of(Power.READ_OWN, Power.SUBMIT, Power.REVIEW));
    }

    <R> R as(Actor actor, Supplier<R> work) {
        Actor before = acting.get();
        acting.set(actor);
        try {
            return work.get();
        } finally {
            acting.set(before);
        }
    }

    /** From now on nobody but that one reviews. */
    void onlyReviewer(String id) {
        reviewers.clear();
        reviewers.add(id);
    }

    List<AuditEntry> log() {
        List<AuditEntry> entries = new ArrayList<>();
        context.getBean(AuditLog.class).forEach(AuditFilter.ALL, entries::add);
        return entries;
    }

    Draft<Note> started(Actor author, String name) {
        return as(author, () -> notes.drafts().start(Note.of(name, 1)));
    }

    Revision<Note> submitted(Actor author, Draft<Note> draft) {
        return as(author, () -> {
            int version = notes.drafts().find(draft.id()).version();
            return notes.drafts().submit(draft.id(), version, Licence.CC_BY_4_0, "New");
        });
    }

    Revision<Note> published(Actor author, String name) {
        Revision<Note> waiting = submitted(author, started(author, name));
        return as(MIA, () -> notes.reviews().publish(waiting.ref()));
    }

    @Override
    public void close() {
        context.close();
        database.close();
    }

    /** Notes; each needs a name, and one that is named after something secret cannot be published. */
    static final class NoteService extends RecordService<Note> {
        NoteService(RevisionRepository<Note> notes, RecordDesk desk) {
            super("airframe", "airframes", notes, desk);
        }

        @Override
        protected List<FieldProblem> problems(Note note) {
            Checks checks = new Checks();
            checks.text("name", note.name(), 120);
            return checks.problems();
        }

        @Override
        protected List<FieldProblem> referenceProblems(Note note) {
            Checks checks = new Checks();
            checks.require(!note.name().startsWith("Secret"), "name", note.name(), "something public");
            return checks.problems();
        }
    }

    private final class Members implements People {
        @Override
        public List<PersonRef> members() {
            return List.of(ANN, BEN, MIA, MAX).stream()
                    .map(a -> new PersonRef(String.valueOf(a.id()), a.name()))
                    .sorted(Comparator.comparing(PersonRef::name))
                    .toList();
        }

        @Override
        public List<Known> byName(@Nullable String after, int most) {
            return members().stream().map(p -> new Known(p, true)).limit(most).toList();
        }

        @Override
        public boolean isMember(String personId) {
            return find(personId).isPresent();
        }

        @Override
        public Optional<PersonRef> find(String personId) {
            return members().stream().filter(p -> p.id().equals(personId)).findFirst();
        }

        @Override
        public List<PersonRef> find(Collection<String> personIds) {
            return members().stream().filter(p -> personIds.contains(p.id())).toList();
        }

        @Override
        public boolean anotherReviewerThan(String personId) {
            return reviewers.stream().anyMatch(r -> !r.equals(personId));
        }
    }
}
