package org.vanewright.record;

import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;

/** The way of one kind of draft into a review, and back before anybody has decided; see {@link Drafts}. */
final class Submissions<T extends RecordContent> {
    private static final int LONGEST_SUMMARY = 1000;

    private final RecordService<T> service;
    private final Drafts<T> drafts;
    private final RevisionRepository<T> records;
    private final RecordDesk desk;

    Submissions(RecordService<T> service, Drafts<T> drafts, RevisionRepository<T> records, RecordDesk desk) {
        this.service = service;
        this.drafts = drafts;
        this.records = records;
        this.desk = desk;
    }

    Revision<T> submit(String id, int version, @Nullable Licence licence, @Nullable String summary) {
        PersonRef person = desk.require(Power.SUBMIT);
        Revision<T> submitted = desk.together(() -> {
            Draft<T> draft = drafts.open(id);
            if (draft.version() != version) {
                throw new DraftConflictException(version, draft);
            }
            if (draft.base() != null) {
                drafts.requireCurrent(draft.base());
            }
            Licence chosen = check(draft, licence, summary);
            Revision<T> revision = records.submit(
                    slug(draft), draft.content(), draft.author(), draft.derivedFrom(), chosen, summary, id);
            if (!desk.drafts().submitted(id, version, revision.ref())) {
                throw new DraftConflictException(version, drafts.find(id));
            }
            desk.log(person, "draft.submitted", service.subject(revision.ref()), "licence " + chosen.spdx());
            return revision;
        });
        desk.tell(new RevisionEvent(service.kind(), submitted.ref(), submitted.state()));
        return submitted;
    }

    private static @Nullable String slug(Draft<?> draft) {
        if (draft.base() != null) {
            return draft.base().slug();
        }
        return draft.submitted() == null ? null : draft.submitted().slug();
    }

    private Licence check(Draft<T> draft, @Nullable Licence licence, @Nullable String summary) {
        Checks checks = new Checks();
        service.problems(draft.content()).forEach(checks::add);
        checks.optionalText("summary", summary, LONGEST_SUMMARY);
        checks.present("licence", licence, "CC_BY_4_0, CC_BY_SA_4_0 or CC0_1_0");
        checkParent(draft, licence, checks);
        checks.throwIfAny();
        return Objects.requireNonNull(licence);
    }

    Set<Licence> licences(Draft<T> draft) {
        Licence given = givenLicence(draft);
        return given == null ? EnumSet.allOf(Licence.class) : given.derivatives();
    }

    /** The licence of another's work that it was made from; null for a work of one's own. */
    private @Nullable Licence givenLicence(Draft<T> draft) {
        return Optional.ofNullable(draft.derivedFrom())
                .flatMap(records::find)
                .map(Revision::standing)
                .filter(parent -> !draft.author().id().equals(parent.contributorId()))
                .map(Standing::licence)
                .orElse(null);
    }

    private void checkParent(Draft<T> draft, @Nullable Licence licence, Checks checks) {
        Licence given = givenLicence(draft);
        if (licence != null && given != null) {
            checks.require(
                    licences(draft).contains(licence),
                    "licence",
                    licence.label(),
                    "one that the licence of what it was made from, " + given.label() + ", allows");
        }
    }

    Draft<T> takeBack(String id) {
        PersonRef person = desk.require(Power.SUBMIT);
        Revision<T> closed = desk.together(() -> {
            Draft<T> draft = drafts.find(id);
            RevisionRef ref = draft.submitted();
            if (draft.state() != DraftState.SUBMITTED
                    || ref == null
                    || !records.close(
                            ref,
                            RecordState.SUBMITTED,
                            RecordState.RETURNED,
                            person.name(),
                            "Taken back by its author.")) {
                throw new DraftClosedException(
                        "This draft is " + draft.state().label() + "; there is nothing to take back.");
            }
            desk.drafts().move(id, DraftState.SUBMITTED, DraftState.DRAFT);
            desk.log(person, "draft.taken-back", service.subject(ref), "");
            return service.exactly(ref);
        });
        desk.tell(new RevisionEvent(service.kind(), closed.ref(), closed.state()));
        return drafts.find(id);
    }
}
