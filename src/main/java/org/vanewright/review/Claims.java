package org.vanewright.review;

import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.vanewright.audit.AuditLog;
import org.vanewright.record.Actors;
import org.vanewright.record.DraftClosedException;
import org.vanewright.record.PersonRef;
import org.vanewright.record.Power;
import org.vanewright.record.Records;
import org.vanewright.record.RevisionRef;

/** Lets one reviewer at a time say that they look at a submission. It keeps nobody else from deciding. */
@Service
public class Claims {
    private final ClaimRepository claims;
    private final Actors actors;
    private final AuditLog audit;
    private final Clock clock;

    Claims(ClaimRepository claims, Actors actors, AuditLog audit, Clock clock) {
        this.claims = claims;
        this.actors = actors;
        this.audit = audit;
        this.clock = clock;
    }

    /** For reviewers. */
    public Optional<Claim> of(Records.Entry<?> entry) {
        actors.current().require(Power.REVIEW);
        return claims.find(entry.service().kind(), entry.revision().ref());
    }

    /**
     * Claims what waits. Claiming one's own again changes nothing.
     *
     * @param takeOver whether to take it from who has it
     * @throws DraftClosedException if it does not wait, or somebody else has it and it is not to be taken over
     */
    @Transactional
    public void claim(Records.Entry<?> entry, boolean takeOver) {
        PersonRef person = actors.current().person(Power.REVIEW);
        if (!entry.revision().state().isWaiting()) {
            throw new DraftClosedException("Revision " + entry.revision().number() + " does not wait for a review.");
        }
        String kind = entry.service().kind();
        RevisionRef ref = entry.revision().ref();
        if (claims.insert(kind, ref, person, clock.instant().truncatedTo(ChronoUnit.MICROS))) {
            log(person, "review.claimed", entry, "");
            return;
        }
        Claim held = claims.find(kind, ref).orElseThrow(Claims::changed);
        if (held.person().id().equals(person.id())) {
            return;
        }
        if (!takeOver) {
            throw new DraftClosedException(held.person().name() + " is looking at it already.");
        }
        if (!claims.move(kind, ref, held.person().id(), person, clock.instant().truncatedTo(ChronoUnit.MICROS))) {
            throw changed();
        }
        log(person, "review.taken-over", entry, "from " + held.person().name());
    }

    /** Gives one's claim up; nothing happens where there is none. */
    @Transactional
    public void release(Records.Entry<?> entry) {
        PersonRef person = actors.current().person(Power.REVIEW);
        if (claims.delete(entry.service().kind(), entry.revision().ref(), person.id())) {
            log(person, "review.released", entry, "");
        }
    }

    private static DraftClosedException changed() {
        return new DraftClosedException("Somebody else claimed or released it at the same moment. Look again.");
    }

    private void log(PersonRef person, String event, Records.Entry<?> entry, String detail) {
        String subject = entry.service().subject(entry.revision().ref());
        audit.add(person.id(), person.name(), event, subject, detail);
    }
}
