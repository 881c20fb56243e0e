package org.vanewright.record;

import java.util.List;
import java.util.Objects;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/** Decisions on what was submitted of one kind of record. Everything asks for {@link Power#REVIEW}. */
public final class Reviews<T extends RecordContent> {
    private static final int LONGEST_REASON = 2000;

    private final RecordService<T> service;
    private final RevisionRepository<T> records;
    private final RecordDesk desk;

    Reviews(RecordService<T> service, RevisionRepository<T> records, RecordDesk desk) {
        this.service = service;
        this.records = records;
        this.desk = desk;
    }

    /** What waits, oldest first. */
    public List<Revision<T>> waiting(int most) {
        desk.require(Power.REVIEW);
        return records.waiting(most);
    }

    /** How much waits: a number that anybody may know. */
    Backlog backlog() {
        return records.backlog();
    }

    /**
     * Puts a submitted or imported revision on the public record.
     *
     * @throws NotAllowedException if it is one's own work and somebody else could review it
     * @throws InvalidInputException if it names something that is not public
     * @throws RevisionConflictException if another revision was published since the one it changes
     * @throws DraftClosedException if it is not waiting
     */
    public Revision<T> publish(RevisionRef ref) {
        PersonRef person = desk.require(Power.REVIEW);
        return moved(desk.together(() -> {
            Revision<T> waiting = submitted(ref);
            requireAnothersWork(waiting);
            List<FieldProblem> problems = service.referenceProblems(waiting.content());
            if (!problems.isEmpty()) {
                throw new InvalidInputException(problems);
            }
            if (waiting.state() == RecordState.IMPORTED) {
                records.accept(waiting, person.name());
            } else {
                records.publish(waiting, person.name());
                moveDraft(waiting, DraftState.PUBLISHED);
            }
            desk.tell(new PublicChange(service.kind(), ref.slug()));
            desk.log(person, "revision.published", service.subject(ref), "sha256 " + waiting.sha256());
            return service.exactly(ref);
        }));
    }

    /** Whether the one who asks may publish it, as far as its authors are concerned. */
    public boolean mayPublish(Revision<T> revision) {
        PersonRef person = desk.require(Power.REVIEW);
        return !worksOn(revision, person.id()) || !desk.people().anotherReviewerThan(person.id());
    }

    private void requireAnothersWork(Revision<T> waiting) {
        if (!mayPublish(waiting)) {
            throw new NotAllowedException("This is your own work: another maintainer publishes it.");
        }
    }

    private boolean worksOn(Revision<T> revision, String personId) {
        return personId.equals(revision.standing().contributorId())
                || service.participants(revision).contains(personId);
    }

    /** Returns a submitted revision to its authors with reasons, or refuses an imported one and what builds on it. */
    public Revision<T> giveBack(RevisionRef ref, String reason) {
        PersonRef person = desk.require(Power.REVIEW);
        requireReason(reason);
        return moved(desk.together(() -> {
            Revision<T> waiting = submitted(ref);
            close(waiting, RecordState.RETURNED, person, reason);
            if (waiting.state() == RecordState.SUBMITTED) {
                moveDraft(waiting, DraftState.RETURNED);
            } else {
                desk.tell(new ImportRefused(new RecordUse(service.plural(), ref), reason));
            }
            desk.log(person, "revision.returned", service.subject(ref), reason);
            return service.exactly(ref);
        }));
    }

    /** Withdraws a public revision. It stays readable, with the reason. */
    public Revision<T> withdraw(RevisionRef ref, String reason) {
        PersonRef person = desk.require(Power.REVIEW);
        requireReason(reason);
        return moved(desk.together(() -> {
            Revision<T> revision = service.exactly(ref);
            if (!revision.state().mayBecome(RecordState.WITHDRAWN)) {
                throw new DraftClosedException("Revision " + ref.revision() + " is not published.");
            }
            close(revision, RecordState.WITHDRAWN, person, reason);
            desk.tell(new PublicChange(service.kind(), ref.slug()));
            desk.log(person, "revision.withdrawn", service.subject(ref), reason);
            return service.exactly(ref);
        }));
    }

    private void close(Revision<T> revision, RecordState to, PersonRef person, String reason) {
        if (!records.close(revision.ref(), revision.state(), to, person.name(), reason.strip())) {
            throw new DraftClosedException(
                    "Somebody else has decided on revision " + revision.number() + " meanwhile.");
        }
    }

    private Revision<T> submitted(RevisionRef ref) {
        Revision<T> revision = service.exactly(ref);
        if (!revision.state().isWaiting()) {
            throw new DraftClosedException("Revision " + ref.revision() + " does not wait for a review.");
        }
        return revision;
    }

    private void moveDraft(Revision<T> revision, DraftState to) {
        desk.drafts().move(Objects.requireNonNull(revision.standing().draftId()), DraftState.SUBMITTED, to);
    }

    private Revision<T> moved(Revision<T> revision) {
        desk.tell(new RevisionEvent(service.kind(), revision.ref(), revision.state()));
        return revision;
    }

    private static void requireReason(String reason) {
        Checks checks = new Checks();
        checks.prose("reason", reason, LONGEST_REASON);
        checks.throwIfAny();
    }
}
