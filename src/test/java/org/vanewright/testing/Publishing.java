package org.vanewright.testing;

import org.springframework.context.ApplicationContext;
import org.vanewright.account.Acting;
import org.vanewright.account.NewPeople;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.record.Draft;
import org.vanewright.record.Licence;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Submits and publishes in the service itself, for tests of something else. */
public final class Publishing {
    private final ApplicationContext service;

    Publishing(ApplicationContext service) {
        this.service = service;
    }

    private Records records() {
        return service.getBean(Records.class);
    }

    /** Submits the draft at that address, as its author would. */
    public Revision<?> submit(NewPerson author, String draftPath) {
        String id = draftPath.replaceFirst("^.*/", "");
        return Acting.as(author, () -> {
            Draft<?> draft = records().draft(id);
            return records()
                    .ofKind(draft.kind())
                    .orElseThrow()
                    .drafts()
                    .submit(id, draft.version(), Licence.CC_BY_SA_4_0, null);
        });
    }

    /** Submits and publishes it by somebody else; gives the address of the record. */
    public String publish(NewPerson author, String draftPath) {
        Revision<?> revision = submit(author, draftPath);
        String plural = draftPath.replaceFirst("^.*/([a-z-]+)/drafts/.*$", "$1");
        Acting.as(
                NewPeople.add(service, Role.MAINTAINER),
                () -> service(plural).reviews().publish(revision.ref()));
        return "/" + plural + "/" + revision.slug();
    }

    public Revision<?> giveBack(String plural, RevisionRef ref, String reason) {
        return Acting.as(
                NewPeople.add(service, Role.MAINTAINER),
                () -> service(plural).reviews().giveBack(ref, reason));
    }

    public Revision<?> withdraw(String plural, RevisionRef ref, String reason) {
        return Acting.as(
                NewPeople.add(service, Role.MAINTAINER),
                () -> service(plural).reviews().withdraw(ref, reason));
    }

    /** Puts a record on the public record at once; gives its revision. */
    public Revision<?> ship(String plural, Object content) {
        return ship(service(plural), content);
    }

    private static <T extends RecordContent> Revision<T> ship(RecordService<T> records, Object content) {
        return records.createShipped(records.contentType().cast(content), "Club of the test", null);
    }

    private RecordService<?> service(String plural) {
        return records().ofPlural(plural).orElseThrow();
    }
}
