package org.vanewright.review;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.record.Actors;
import org.vanewright.record.Draft;
import org.vanewright.record.DraftNotFoundException;
import org.vanewright.record.DraftState;
import org.vanewright.record.DraftSummary;
import org.vanewright.record.Licence;
import org.vanewright.record.People;
import org.vanewright.record.PersonRef;
import org.vanewright.record.Power;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** What authors do with drafts of every kind, but for writing them. */
@Service
public class DraftDesk {
    private final Records records;
    private final Views views;
    private final People people;
    private final Actors actors;

    DraftDesk(Records records, Views views, People people, Actors actors) {
        this.records = records;
        this.views = views;
        this.people = people;
        this.actors = actors;
    }

    /**
     * A draft in one's own list.
     *
     * @param plural of its kind, as in addresses
     * @param label of its kind
     * @param own whether the reader is its author, not only a co-author
     */
    public record Item(DraftSummary draft, String plural, String label, boolean own) {
        /** Its name, or words for one that has none yet. */
        public String name() {
            return draft.name().isBlank() ? "Without a name yet" : draft.name();
        }
    }

    /**
     * A draft and what its submission needs.
     *
     * @param plural of its kind, as in addresses
     * @param label of its kind
     * @param own whether the reader is its author, not only a co-author
     * @param problems that stand in the way; empty once it is decided on or waits
     * @param parent what it is made from; null for a work of its own
     * @param allowed licences it may carry
     * @param suggested the licence to begin with; null where nothing suggests one
     */
    public record Prepared(
            Draft<?> draft,
            String plural,
            String label,
            boolean own,
            List<FieldProblem> problems,
            @Nullable Revision<?> parent,
            Set<Licence> allowed,
            @Nullable Licence suggested) {
        /** Its name, or words for one that has none yet. */
        public String name() {
            String name = draft.content().name();
            return name == null || name.isBlank() ? "Without a name yet" : name;
        }
    }

    /** Every draft of the one who asks: returned ones first, then the last changed ones. */
    public List<Item> mine() {
        return records.myDrafts().stream()
                .sorted(Comparator.comparing((DraftSummary d) -> d.state() != DraftState.RETURNED))
                .map(d -> new Item(
                        d,
                        service(d.kind()).plural(),
                        views.label(d.kind()),
                        actors.current().is(d.author().id())))
                .toList();
    }

    private RecordService<?> service(String kind) {
        return records.ofKind(kind).orElseThrow(DraftNotFoundException::new);
    }

    /**
     * One's own draft, as far as its submission goes.
     *
     * @throws DraftNotFoundException if there is none, or it is somebody else's
     */
    public Prepared prepare(String id) {
        return prepare(records.ofDraft(id), id);
    }

    private <T extends RecordContent> Prepared prepare(RecordService<T> service, String id) {
        Draft<T> draft = service.drafts().find(id);
        RevisionRef from = draft.derivedFrom();
        Revision<T> parent = from == null ? null : service.find(from).orElse(null);
        Set<Licence> allowed = service.drafts().licences(draft);
        return new Prepared(
                draft,
                service.plural(),
                views.label(service.kind()),
                actors.current().is(draft.author().id()),
                draft.state().isOpen() ? service.check(draft.content()) : List.of(),
                parent,
                allowed,
                suggested(service, draft, parent, allowed));
    }

    /** As last submitted, else as its parent, where that is allowed. */
    private static <T extends RecordContent> @Nullable Licence suggested(
            RecordService<T> service, Draft<T> draft, @Nullable Revision<T> parent, Set<Licence> allowed) {
        Licence before = draft.submitted() == null
                ? null
                : service.find(draft.submitted())
                        .map(r -> r.standing().licence())
                        .orElse(null);
        Licence first =
                before != null || parent == null ? before : parent.standing().licence();
        return first != null && allowed.contains(first) ? first : null;
    }

    /** Submits the saved version that is meant; see {@link org.vanewright.record.Drafts#submit}. */
    public RevisionRef submit(String id, int version, @Nullable Licence licence, @Nullable String summary) {
        return records.ofDraft(id)
                .drafts()
                .submit(id, version, licence, summary)
                .ref();
    }

    public void takeBack(String id) {
        records.ofDraft(id).drafts().takeBack(id);
    }

    public void discard(String id) {
        records.ofDraft(id).drafts().discard(id);
    }

    public void share(String id, String personId) {
        records.ofDraft(id).drafts().share(id, personId);
    }

    public void unshare(String id, String personId) {
        records.ofDraft(id).drafts().unshare(id, personId);
    }

    /** Who could still become a co-author, by name. */
    public List<PersonRef> possibleCoauthors(Draft<?> draft) {
        actors.current().require(Power.READ_OWN);
        return people.members().stream().filter(p -> !draft.belongsTo(p.id())).toList();
    }
}
