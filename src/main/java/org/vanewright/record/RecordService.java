package org.vanewright.record;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * What every feature does with its records: find them, draft them, have them reviewed. A feature extends it with its
 * repository and its rules. What is not public is found by its authors and by reviewers only; for everybody else it does
 * not exist.
 */
public abstract class RecordService<T extends RecordContent> {
    private static final int MOST_CHILDREN = 200;
    private static final int MOST_CONTRIBUTED = 1000;

    private final String kind;
    private final String plural;
    private final RevisionRepository<T> records;
    private final RecordDesk desk;
    private final Drafts<T> drafts;
    private final Reviews<T> reviews;
    private final Imports<T> imports;
    private final PublicRecord<T> everything;

    /**
     * @param kind such as {@code "airframe"}
     * @param plural as in addresses, such as {@code "airframes"}
     */
    protected RecordService(String kind, String plural, RevisionRepository<T> records, RecordDesk desk) {
        this.kind = kind;
        this.plural = plural;
        this.records = records;
        this.desk = desk;
        this.drafts = new Drafts<>(this, records, desk);
        this.reviews = new Reviews<>(this, records, desk);
        this.imports = new Imports<>(this, records, desk);
        this.everything = new PublicRecord<>(records.everythingPublic());
    }

    /** Every problem the feature's rules find; empty where the document may be submitted. */
    protected abstract List<FieldProblem> problems(T content);

    /** What the document names that is not public yet, so that it cannot be published either. */
    protected List<FieldProblem> referenceProblems(T content) {
        return List.of();
    }

    /** A record that is named must be public; whether one must be named is for the rules to say. */
    protected static void requirePublic(
            String field, @Nullable RevisionRef ref, Optional<? extends Revision<?>> found, Checks checks) {
        boolean ok = ref == null || found.isPresent() && found.get().isPublic();
        checks.require(ok, field, RevisionRef.words(ref), "a published revision");
    }

    /** Such as {@code "airframe"}. */
    public String kind() {
        return kind;
    }

    /** As in addresses, such as {@code "airframes"}. */
    public String plural() {
        return plural;
    }

    /** The document that a revision holds. */
    public Class<T> contentType() {
        return records.type();
    }

    /** Work that is not public yet. */
    public Drafts<T> drafts() {
        return drafts;
    }

    /** What comes from other instances. */
    public Imports<T> imports() {
        return imports;
    }

    /** Decisions on what was submitted. */
    public Reviews<T> reviews() {
        return reviews;
    }

    /** A revision in words, for the log. */
    public String subject(RevisionRef ref) {
        return plural + "/" + ref.slug() + " revision " + ref.revision();
    }

    /** Every problem that stands in the way of submitting the document. */
    public List<FieldProblem> check(T content) {
        return problems(content);
    }

    /** The published revision, if there is one. */
    public Optional<Revision<T>> latest(String slug) {
        return records.latest(slug);
    }

    /** Which revision is published, if one is, without what it says. */
    public Optional<RevisionRef> latestRef(String slug) {
        return records.latestRef(slug);
    }

    /** @throws RecordNotFoundException if nothing is published under that slug */
    public Revision<T> published(String slug) {
        return records.latest(slug).orElseThrow(() -> new RecordNotFoundException(kind, slug, null));
    }

    /**
     * What the record's own address shows: the published revision, or the last one that was withdrawn.
     *
     * @throws RecordNotFoundException if nothing of that slug is public
     */
    public Revision<T> shown(String slug) {
        return records.latest(slug)
                .or(() -> records.history(slug).stream()
                        .filter(Revision::isPublic)
                        .findFirst())
                .orElseThrow(() -> new RecordNotFoundException(kind, slug, null));
    }

    /** One exact revision, if it exists and the one who asks may see it. */
    public Optional<Revision<T>> find(RevisionRef ref) {
        return records.find(ref).filter(r -> mayBeSeen(r.state(), r.standing()));
    }

    private boolean mayBeSeen(RecordState state, Standing standing) {
        if (state.isPublic()) {
            return true;
        }
        Actor actor = desk.actor();
        return actor.may(Power.REVIEW)
                || actor.may(Power.READ_OWN)
                        && (state == RecordState.IMPORTED
                                || actor.is(standing.contributorId())
                                || participants(standing).stream().anyMatch(actor::is));
    }

    /** Whether the one who asks is its author or one of its co-authors. */
    public boolean isOwn(Revision<T> revision) {
        Actor actor = desk.actor();
        return actor.is(revision.standing().contributorId())
                || participants(revision).stream().anyMatch(actor::is);
    }

    /** Ids of the author and co-authors of the draft a revision was submitted from, or of who imported it. */
    Set<String> participants(Revision<T> revision) {
        return participants(revision.standing());
    }

    private Set<String> participants(Standing standing) {
        String draftId = standing.draftId();
        Set<String> ids = new HashSet<>();
        if (standing.origin() != null) {
            ids.add(standing.origin().importedById());
        }
        if (draftId != null) {
            desk.drafts().find(draftId).ifPresent(d -> ids.add(d.author().id()));
            desk.drafts().coauthors(draftId).forEach(c -> ids.add(c.id()));
        }
        return ids;
    }

    /** @throws RecordNotFoundException if there is no such revision that the one who asks may see */
    public Revision<T> exactly(RevisionRef ref) {
        return find(ref).orElseThrow(() -> new RecordNotFoundException(kind, ref.slug(), ref.revision()));
    }

    /** Every revision that the one who asks may see, newest first. */
    public List<Revision<T>> history(String slug) {
        return records.history(slug).stream()
                .filter(r -> mayBeSeen(r.state(), r.standing()))
                .toList();
    }

    /** As {@link #history}, without what the revisions say. */
    public List<ListedRevision> listedHistory(String slug) {
        return records.listedHistory(slug).stream()
                .filter(r -> mayBeSeen(r.state(), r.standing()))
                .toList();
    }

    /** Public revisions made from one, of this record and of others. */
    public List<Revision<T>> children(RevisionRef parent) {
        return records.children(parent, MOST_CHILDREN);
    }

    /** How many revisions each of those people has made public, by the person's id. */
    public Map<String, Integer> contributions(Collection<String> personIds) {
        return records.everythingPublic().contributions(personIds);
    }

    /** What one person has made public, newest first. */
    public List<Revision<T>> contributedBy(String personId) {
        return records.everythingPublic().contributedBy(personId, MOST_CONTRIBUTED);
    }

    /** The published revision of each record, newest first. */
    public RecordPage<Revision<T>> list(@Nullable String cursor, int limit) {
        return records.list(cursor, limit);
    }

    /** The published revision of each record without what it says, newest first, in one statement. */
    public List<RevisionHead> heads(int skip, int most) {
        return records.heads(skip, most);
    }

    /** As {@link #list}, without what the records say. */
    public RecordPage<RevisionHead> listHeads(@Nullable String cursor, int limit) {
        return records.listHeads(cursor, limit);
    }

    /** Another text whenever other revisions are published than before, in one look at an index. */
    public String publishedState() {
        return records.everythingPublic().publishedState();
    }

    /** How many records have a published revision. */
    public int countPublished() {
        return records.countPublished();
    }

    /** Everything of this kind that is public. */
    public PublicRecord<T> everythingPublic() {
        return everything;
    }

    /** Exact revisions that anybody may see, in one statement and no certain order. */
    public List<Revision<T>> allPublic(Collection<RevisionRef> refs) {
        return records.findAll(refs).stream().filter(Revision::isPublic).toList();
    }

    /** Whether the stored document still has the hash it was frozen with. */
    public boolean verify(Revision<T> revision) {
        return records.verify(revision);
    }

    /** Publishes a new record at once, without asking who: only for data that comes with the service. */
    public Revision<T> createShipped(T content, String contributor, @Nullable RevisionRef derivedFrom) {
        requireValid(content);
        return shipped(() -> records.publishNew(content, contributor, derivedFrom));
    }

    /** Publishes the next revision at once, without asking who: only for data that comes with the service. */
    public Revision<T> reviseShipped(RevisionRef base, T content, String contributor) {
        requireValid(content);
        return shipped(() -> records.publishNext(base, content, contributor));
    }

    private Revision<T> shipped(Supplier<Revision<T>> publication) {
        return desk.together(() -> {
            Revision<T> revision = publication.get();
            desk.tell(new PublicChange(kind, revision.slug()));
            return revision;
        });
    }

    private void requireValid(T content) {
        List<FieldProblem> problems = problems(content);
        if (!problems.isEmpty()) {
            throw new InvalidInputException(problems);
        }
    }
}
