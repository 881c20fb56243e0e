package org.vanewright.record;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Work on one kind of record before it is public. Everything asks for {@link Power#SUBMIT}, but for reading one's own,
 * which asks for {@link Power#READ_OWN}. Somebody else's draft is not found.
 */
public final class Drafts<T extends RecordContent> {
    /** Drafts that one person may have open at a time. */
    public static final int MOST_OPEN = 200;

    private static final int LARGEST_CONTENT = 1_000_000;

    private final RecordService<T> service;
    private final RevisionRepository<T> records;
    private final RecordDesk desk;
    private final Submissions<T> submissions;

    Drafts(RecordService<T> service, RevisionRepository<T> records, RecordDesk desk) {
        this.service = service;
        this.records = records;
        this.desk = desk;
        this.submissions = new Submissions<>(service, this, records, desk);
    }

    /** Lets pass whoever may write drafts. */
    public void requireAuthor() {
        desk.require(Power.SUBMIT);
    }

    /** A draft of a new record. */
    public Draft<T> start(T content) {
        return insert(content, null, null);
    }

    /**
     * A draft of a new record that starts as a copy of a public revision and remembers it.
     *
     * @throws RecordNotFoundException if there is none such
     */
    public Draft<T> startFrom(RevisionRef parent) {
        desk.require(Power.SUBMIT);
        Revision<T> revision = service.exactly(parent);
        if (!revision.isReleased()) {
            throw new RecordNotFoundException(service.kind(), parent.slug(), parent.revision());
        }
        return insert(revision.content(), null, revision.ref());
    }

    /**
     * A draft of the next revision. Whoever has one already goes on with it.
     *
     * @param base the published revision, or the last withdrawn one
     * @throws RevisionConflictException if another revision is published by now
     */
    public Draft<T> startNext(RevisionRef base) {
        PersonRef author = desk.require(Power.SUBMIT);
        Optional<String> unfinished = desk.drafts().unfinished(service.kind(), base.slug(), author.id());
        if (unfinished.isPresent()) {
            return find(unfinished.get());
        }
        Revision<T> revision = publicOne(base);
        requireCurrent(revision.ref());
        return insert(revision.content(), revision.ref(), null);
    }

    /**
     * As {@link #startNext(RevisionRef)}, with that content at once.
     *
     * @throws DraftClosedException if the author has an unfinished draft of it, which another text must not overwrite
     */
    public Draft<T> startNext(RevisionRef base, T content) {
        PersonRef author = desk.require(Power.SUBMIT);
        desk.drafts().unfinished(service.kind(), base.slug(), author.id()).ifPresent(id -> {
            throw new DraftClosedException("You have an unfinished draft of this record, " + id + ". Change that one.");
        });
        Revision<T> revision = publicOne(base);
        requireCurrent(revision.ref());
        return insert(content, revision.ref(), null);
    }

    private Revision<T> publicOne(RevisionRef ref) {
        return records.find(ref)
                .filter(Revision::isPublic)
                .orElseThrow(() -> new RecordNotFoundException(service.kind(), ref.slug(), ref.revision()));
    }

    void requireCurrent(RevisionRef base) {
        Optional<Revision<T>> current = records.latest(base.slug());
        if (current.isPresent() && !current.get().ref().equals(base)) {
            throw new RevisionConflictException(base, current.get());
        }
    }

    private Draft<T> insert(T content, @Nullable RevisionRef base, @Nullable RevisionRef origin) {
        PersonRef author = desk.require(Power.SUBMIT);
        if (desk.drafts().countOpen(author.id()) >= MOST_OPEN) {
            throw new NotAllowedException("You have " + MOST_OPEN + " open drafts. Finish or discard some first.");
        }
        String id = UUID.randomUUID().toString();
        DraftSummary draft = new DraftSummary(
                id,
                service.kind(),
                listName(content),
                DraftState.DRAFT,
                1,
                author,
                desk.now(),
                desk.now(),
                base,
                origin,
                null);
        String text = text(content);
        return desk.together(() -> {
            desk.drafts().insert(draft, text);
            desk.log(author, "draft.started", subject(draft), "");
            return find(id);
        });
    }

    /**
     * One's own draft, as last saved.
     *
     * @throws DraftNotFoundException if there is none, or it is somebody else's
     */
    public Draft<T> find(String id) {
        PersonRef person = desk.require(Power.READ_OWN);
        DraftSummary found = desk.drafts()
                .find(id)
                .filter(d -> d.kind().equals(service.kind()))
                .orElseThrow(DraftNotFoundException::new);
        Draft<T> draft = draft(found);
        if (!draft.belongsTo(person.id()) || draft.state() == DraftState.DISCARDED) {
            throw new DraftNotFoundException();
        }
        return draft;
    }

    private Draft<T> draft(DraftSummary d) {
        return new Draft<>(
                d.id(),
                d.kind(),
                d.state(),
                d.version(),
                content(d.id(), d.version()),
                d.author(),
                desk.drafts().coauthors(d.id()),
                d.createdAt(),
                d.changedAt(),
                d.base(),
                d.origin(),
                d.submitted());
    }

    private T content(String id, int version) {
        return desk.drafts().content(id, version).map(records::read).orElseThrow(DraftNotFoundException::new);
    }

    /** What one of its savings said. */
    public T version(Draft<T> draft, int version) {
        return content(find(draft.id()).id(), version);
    }

    /**
     * Saves what was typed, complete or not.
     *
     * @param startedFrom the version the change started from
     * @param takenIn number of the published revision whose changes the text has taken in; null leaves it as it is
     * @throws DraftConflictException if another version is saved by now
     * @throws DraftClosedException if it waits for a review, or is published
     */
    public Draft<T> save(String id, int startedFrom, T content, @Nullable Integer takenIn) {
        PersonRef person = desk.require(Power.SUBMIT);
        String text = text(content);
        return desk.together(() -> {
            Draft<T> draft = open(id);
            if (!desk.drafts().save(id, startedFrom, listName(content), text, person, desk.now())) {
                throw new DraftConflictException(startedFrom, find(id));
            }
            takeIn(draft, takenIn);
            return find(id);
        });
    }

    private void takeIn(Draft<T> draft, @Nullable Integer number) {
        RevisionRef base = draft.base();
        if (number != null && base != null && base.revision() != number) {
            desk.drafts()
                    .base(
                            draft.id(),
                            publicOne(new RevisionRef(base.slug(), number)).ref());
        }
    }

    /**
     * One's own draft, if it can be changed.
     *
     * @throws DraftClosedException if it waits for a review, or is published
     */
    public Draft<T> open(String id) {
        Draft<T> draft = find(id);
        if (!draft.state().isOpen()) {
            throw new DraftClosedException("This draft is " + draft.state().label() + " and cannot be changed.");
        }
        return draft;
    }

    /**
     * Freezes the draft as a revision that waits for a review.
     *
     * @param version the saved version that is meant
     * @param licence under which others may use it
     * @param summary what is new in it; may be absent
     * @throws InvalidInputException with every problem the rules find
     * @throws DraftConflictException if another version is saved by now
     * @throws RevisionConflictException if another revision was published since the one it changes
     */
    public Revision<T> submit(String id, int version, @Nullable Licence licence, @Nullable String summary) {
        return submissions.submit(id, version, licence, summary);
    }

    /** Licences that it may carry: what is made from another's work keeps to that work's licence. */
    public Set<Licence> licences(Draft<T> draft) {
        return submissions.licences(draft);
    }

    /** Takes a submission back before anybody has decided on it. */
    public Draft<T> takeBack(String id) {
        return submissions.takeBack(id);
    }

    /** Gives a draft up. Its text is kept out of sight, and what was submitted of it stays with its reviews. */
    public void discard(String id) {
        PersonRef person = desk.require(Power.SUBMIT);
        desk.together(() -> {
            Draft<T> draft = ownedOpen(id, person);
            desk.drafts().move(id, draft.state(), DraftState.DISCARDED);
            desk.log(person, "draft.discarded", subject(summary(id)), "");
            desk.tell(new DraftDiscarded(service.kind(), id));
            return draft;
        });
    }

    /** Lets somebody else change the draft, too. */
    public Draft<T> share(String id, String personId) {
        PersonRef person = desk.require(Power.SUBMIT);
        ownedOpen(id, person);
        PersonRef other = desk.people()
                .find(personId)
                .filter(p -> !p.id().equals(person.id()))
                .orElseThrow(() -> new InvalidInputException(
                        new FieldProblem("coauthor", personId, "somebody else who has an account here")));
        desk.drafts().addCoauthor(id, other);
        desk.log(person, "draft.shared", subject(summary(id)), "with " + other.name());
        return find(id);
    }

    public Draft<T> unshare(String id, String personId) {
        PersonRef person = desk.require(Power.SUBMIT);
        Draft<T> draft = ownedOpen(id, person);
        if (draft.coauthors().stream().anyMatch(c -> c.id().equals(personId))) {
            desk.drafts().removeCoauthor(id, personId);
            desk.log(person, "draft.unshared", subject(summary(id)), "");
        }
        return find(id);
    }

    private Draft<T> ownedOpen(String id, PersonRef person) {
        Draft<T> draft = open(id);
        if (!draft.isAuthor(person.id())) {
            throw new NotAllowedException("Only the author of a draft may do this.");
        }
        return draft;
    }

    private DraftSummary summary(String id) {
        return desk.drafts().find(id).orElseThrow(DraftNotFoundException::new);
    }

    private String text(T content) {
        Checks checks = new Checks();
        desk.json().unwritable(content).forEach(path -> checks.add(new FieldProblem(path, "not finite", "a number")));
        checks.throwIfAny();
        String text = desk.json().write(content);
        if (text.length() > LARGEST_CONTENT) {
            throw new InvalidInputException(new FieldProblem(
                    "", text.length() + " characters", "at most " + LARGEST_CONTENT + " characters in all"));
        }
        return text;
    }

    private static String listName(RecordContent content) {
        // A draft may hold any text, but a database cannot hold every character in a column of its own.
        String name = content.name() == null
                ? ""
                : content.name().replaceAll("[\\p{Cntrl}\\p{Cs}]+", " ").strip();
        return name.length() <= 200 ? name : name.substring(0, 200);
    }

    private static String subject(DraftSummary draft) {
        return String.format(Locale.ROOT, "%s draft %s", draft.kind(), draft.id());
    }
}
