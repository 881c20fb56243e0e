package org.vanewright.record;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * What every feature does with its records: find them, and publish revisions that its rules pass. A feature extends it
 * with its repository and its rules.
 */
public abstract class RecordService<T extends RecordContent> {
    private final String kind;
    private final RevisionRepository<T> records;
    private final WritePolicy policy;

    /** @param kind such as {@code "airframe"}, for messages */
    protected RecordService(String kind, RevisionRepository<T> records, WritePolicy policy) {
        this.kind = kind;
        this.records = records;
        this.policy = policy;
    }

    /** Every problem the feature's rules find; empty where the document may be published. */
    protected abstract List<FieldProblem> problems(T content);

    /** The published revision, if there is one. */
    public Optional<Revision<T>> latest(String slug) {
        return records.latest(slug);
    }

    /** @throws RecordNotFoundException if nothing is published under that slug */
    public Revision<T> published(String slug) {
        return records.latest(slug).orElseThrow(() -> new RecordNotFoundException(kind, slug, null));
    }

    /** One exact revision, if it exists. */
    public Optional<Revision<T>> find(RevisionRef ref) {
        return records.find(ref);
    }

    /** @throws RecordNotFoundException if there is no such revision */
    public Revision<T> exactly(RevisionRef ref) {
        return records.find(ref).orElseThrow(() -> new RecordNotFoundException(kind, ref.slug(), ref.revision()));
    }

    /** Every revision, newest first. */
    public List<Revision<T>> history(String slug) {
        return records.history(slug);
    }

    /** The published revision of each record, newest first. */
    public RecordPage<Revision<T>> list(@Nullable String cursor, int limit) {
        return records.list(cursor, limit);
    }

    /** Whether the stored document still has the hash it was published with. */
    public boolean verify(Revision<T> revision) {
        return records.verify(revision);
    }

    /**
     * Publishes a new record.
     *
     * @throws InvalidInputException with every problem the rules find
     */
    public Revision<T> create(T content, String contributor, @Nullable RevisionRef derivedFrom) {
        policy.requireOpen();
        return createShipped(content, contributor, derivedFrom);
    }

    /**
     * Publishes the next revision.
     *
     * @throws InvalidInputException with every problem the rules find
     * @throws RevisionConflictException if {@code base} is no longer the published one
     */
    public Revision<T> revise(RevisionRef base, T content, String contributor) {
        policy.requireOpen();
        return reviseShipped(base, content, contributor);
    }

    /** As {@link #create} without asking who may edit: only for data that comes with the service. */
    public Revision<T> createShipped(T content, String contributor, @Nullable RevisionRef derivedFrom) {
        requireValid(content);
        return records.publishNew(content, contributor, derivedFrom);
    }

    /** As {@link #revise} without asking who may edit: only for data that comes with the service. */
    public Revision<T> reviseShipped(RevisionRef base, T content, String contributor) {
        requireValid(content);
        return records.publishNext(base, content, contributor);
    }

    private void requireValid(T content) {
        List<FieldProblem> problems = problems(content);
        if (!problems.isEmpty()) {
            throw new InvalidInputException(problems);
        }
    }
}
