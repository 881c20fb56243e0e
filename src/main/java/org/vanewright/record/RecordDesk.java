package org.vanewright.record;

import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.function.Supplier;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.vanewright.audit.AuditLog;

/** What every kind of record works with: who is asking, drafts, the log, transactions, time. */
@Component
public class RecordDesk {
    private final Actors actors;
    private final People people;
    private final DraftRepository drafts;
    private final CanonicalJson json;
    private final AuditLog audit;
    private final ApplicationEventPublisher events;
    private final TransactionTemplate transactions;
    private final Clock clock;

    RecordDesk(
            Actors actors,
            People people,
            DraftRepository drafts,
            CanonicalJson json,
            AuditLog audit,
            ApplicationEventPublisher events,
            PlatformTransactionManager transactions,
            Clock clock) {
        this.actors = actors;
        this.people = people;
        this.drafts = drafts;
        this.json = json;
        this.audit = audit;
        this.events = events;
        this.transactions = new TransactionTemplate(transactions);
        this.clock = clock;
    }

    Actor actor() {
        return actors.current();
    }

    /** The person asking, who needs that power. */
    PersonRef require(Power power) {
        return actors.current().person(power);
    }

    People people() {
        return people;
    }

    DraftRepository drafts() {
        return drafts;
    }

    CanonicalJson json() {
        return json;
    }

    Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }

    /** Everything in it is kept, or nothing. */
    <R> R together(Supplier<R> work) {
        R result = transactions.execute(status -> work.get());
        if (result == null) {
            throw new IllegalStateException("work done together gives a result");
        }
        return result;
    }

    void log(PersonRef person, String event, String subject, String detail) {
        audit.add(person.id(), person.name(), event, subject, detail);
    }

    /** Tells the others, once the change is there to be seen. */
    void tell(RevisionEvent event) {
        events.publishEvent(event);
    }

    /** Tells those who keep something beside what is public, before the change is there to be seen. */
    void tell(PublicChange change) {
        events.publishEvent(change);
    }

    /** Tells those that must be refused with it, before the change is there to be seen. */
    void tell(ImportRefused event) {
        events.publishEvent(event);
    }

    /** Tells those who keep something beside a draft, before the change is there to be seen. */
    void tell(DraftDiscarded event) {
        events.publishEvent(event);
    }
}
