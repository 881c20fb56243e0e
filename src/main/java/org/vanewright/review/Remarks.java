package org.vanewright.review;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.vanewright.audit.AuditLog;
import org.vanewright.engineering.input.Checks;
import org.vanewright.record.Actor;
import org.vanewright.record.Actors;
import org.vanewright.record.Draft;
import org.vanewright.record.DraftState;
import org.vanewright.record.PersonRef;
import org.vanewright.record.Power;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** What reviewers say about revisions, for their authors and other reviewers. */
@Service
public class Remarks {
    private static final int LONGEST_TEXT = 2000;
    private static final int LONGEST_FIELD = 300;

    private final RemarkRepository remarks;
    private final Records records;
    private final Actors actors;
    private final AuditLog audit;
    private final Clock clock;

    Remarks(RemarkRepository remarks, Records records, Actors actors, AuditLog audit, Clock clock) {
        this.remarks = remarks;
        this.records = records;
        this.actors = actors;
        this.audit = audit;
        this.clock = clock;
    }

    /**
     * What came back with a returned draft.
     *
     * @param kind of record, plural, as in addresses
     * @param ref the revision it was last submitted as
     * @param reason why it was returned; null while it waits
     * @param by who returned it; null while it waits
     * @param remarks on it, oldest first
     */
    public record OfDraft(
            String kind,
            RevisionRef ref,
            @Nullable String reason,
            @Nullable String by,
            List<Remark> remarks) {
        /** By field path; the whole is under the empty one. */
        public Map<String, List<String>> byField() {
            Map<String, List<String>> map = new LinkedHashMap<>();
            remarks.forEach(r -> map.computeIfAbsent(r.field(), f -> new ArrayList<>())
                    .add(r.text() + " — " + r.person().name()));
            return map;
        }
    }

    /**
     * What was said about the last submission of one's own draft; null where it was never submitted, or the draft is
     * published.
     *
     * @throws org.vanewright.record.DraftNotFoundException if there is none, or it is somebody else's
     */
    public @Nullable OfDraft forDraft(String draftId) {
        Draft<?> draft = records.draft(draftId);
        RevisionRef ref = draft.submitted();
        if (ref == null || draft.state() == DraftState.PUBLISHED) {
            return null;
        }
        RecordService<?> service = records.ofKind(draft.kind()).orElseThrow();
        Revision<?> revision = service.exactly(ref);
        return new OfDraft(
                service.plural(),
                ref,
                revision.standing().reason(),
                revision.standing().closedBy(),
                remarks.of(draft.kind(), ref));
    }

    /** Remarks on a revision, for its authors and for reviewers; nobody else sees any. */
    public List<Remark> of(Records.Entry<?> entry) {
        return mayRead(entry)
                ? remarks.of(entry.service().kind(), entry.revision().ref())
                : List.of();
    }

    private <T extends RecordContent> boolean mayRead(Records.Entry<T> entry) {
        Actor actor = actors.current();
        return actor.may(Power.REVIEW)
                || (actor.may(Power.READ_OWN) && entry.service().isOwn(entry.revision()));
    }

    /** A reviewer's remark on one field, or on the whole where {@code field} is blank. */
    @Transactional
    public Remark add(Records.Entry<?> entry, @Nullable String field, @Nullable String text) {
        PersonRef person = actors.current().person(Power.REVIEW);
        String path = field == null ? "" : field.strip();
        Checks checks = new Checks();
        checks.prose("text", text, LONGEST_TEXT);
        checks.require(
                path.length() <= LONGEST_FIELD && path.matches("[A-Za-z0-9_.\\[\\]-]*"),
                "field",
                path,
                "the path of a field, or nothing for the whole");
        checks.throwIfAny();
        Remark remark = new Remark(
                path, String.valueOf(text).strip(), person, clock.instant().truncatedTo(ChronoUnit.MICROS));
        RevisionRef ref = entry.revision().ref();
        remarks.insert(entry.service().kind(), ref, remark);
        audit.add(
                person.id(), person.name(), "revision.remarked", entry.service().subject(ref), path);
        return remark;
    }
}
