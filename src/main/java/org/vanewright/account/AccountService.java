package org.vanewright.account;

import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.vanewright.account.OneTimeLink.Purpose;
import org.vanewright.audit.AuditLog;
import org.vanewright.engineering.input.Checks;
import org.vanewright.record.Actor;
import org.vanewright.record.Actors;
import org.vanewright.record.Power;
import org.vanewright.record.RecordNotFoundException;

/** What stewards do with accounts; everything here asks for {@link Power#RUN}. */
@Service
public class AccountService {
    private static final Duration INVITED_FOR = Duration.ofDays(7);
    private static final int LONGEST_NOTE = 120;

    private final PersonRepository people;
    private final LinkRepository stored;
    private final Links links;
    private final Sessions sessions;
    private final Actors actors;
    private final AuditLog audit;
    private final Clock clock;
    private final TransactionTemplate transaction;

    AccountService(
            PersonRepository people,
            LinkRepository stored,
            Links links,
            Sessions sessions,
            Actors actors,
            AuditLog audit,
            Clock clock,
            PlatformTransactionManager transactions) {
        this.people = people;
        this.stored = stored;
        this.links = links;
        this.sessions = sessions;
        this.actors = actors;
        this.audit = audit;
        this.clock = clock;
        this.transaction = new TransactionTemplate(transactions);
    }

    /**
     * An invitation as its maker sees it, once.
     *
     * @param path of the page where somebody joins by it
     */
    public record Invitation(OneTimeLink link, String path) {}

    /** Everybody, by name. */
    public List<Person> all() {
        actors.current().require(Power.RUN);
        return people.all();
    }

    /**
     * Makes a link by which one person joins.
     *
     * @param note for whom it is; may be empty
     */
    public Invitation invite(Role role, @Nullable String note) {
        Actor steward = actors.current();
        steward.require(Power.RUN);
        Checks checks = new Checks();
        checks.require(note == null || !note.contains("\n"), "note", note, "one line");
        checks.optionalText("note", note, LONGEST_NOTE);
        checks.throwIfAny();
        String forWhom = note == null ? "" : note.strip();
        return transact(() -> {
            Links.Made made = links.make(Purpose.INVITATION, role, null, forWhom, steward.name(), INVITED_FOR);
            audit.add(steward.id(), steward.name(), "invitation.made", role.label(), forWhom);
            return new Invitation(made.link(), "/join/" + made.secret());
        });
    }

    /** Invitations that can still be used, newest first. */
    public List<OneTimeLink> invitations() {
        actors.current().require(Power.RUN);
        return stored.open(Purpose.INVITATION, clock.instant());
    }

    /** Makes an invitation useless. */
    public void withdrawInvitation(String id) {
        Actor steward = actors.current();
        steward.require(Power.RUN);
        transact(() -> {
            boolean ended = stored.use(id, clock.instant());
            audit.add(steward.id(), steward.name(), "invitation.withdrawn", id, ended ? "" : "was over already");
            return ended;
        });
    }

    /** Lets somebody in who registered. */
    public void admit(String personId) {
        place(personId, "account.admitted", p -> p.state() == PersonState.PENDING ? in(p, PersonState.ACTIVE) : p);
    }

    public void changeRole(String personId, Role role) {
        place(personId, "account.role", p -> in(p, role));
    }

    /** Ends an account, and all sessions of its owner. */
    public void close(String personId) {
        place(personId, "account.closed", p -> in(p, PersonState.CLOSED));
        sessions.endAll(personId);
    }

    /** Opens a closed account again. */
    public void reopen(String personId) {
        place(personId, "account.reopened", p -> p.state() == PersonState.CLOSED ? in(p, PersonState.ACTIVE) : p);
    }

    private void place(String personId, String event, UnaryOperator<Person> change) {
        Actor steward = actors.current();
        steward.require(Power.RUN);
        transact(() -> {
            // Read after the lock: of two stewards who demote each other, the second sees what the first did.
            List<String> stewards = people.lockStewards();
            Person before =
                    people.find(personId).orElseThrow(() -> new RecordNotFoundException("person", personId, null));
            Person after = change.apply(before);
            boolean stays = after.active() && after.role() == Role.STEWARD;
            if (stewards.equals(List.of(personId)) && !stays) {
                throw new LastStewardException();
            }
            people.place(personId, after.role(), after.state());
            String detail = words(before) + " to " + words(after);
            audit.add(steward.id(), steward.name(), event, before.email(), detail);
            return after;
        });
    }

    private static String words(Person person) {
        return person.role().label() + " (" + person.state().label() + ")";
    }

    private <T> T transact(Supplier<T> work) {
        T result = transaction.execute(status -> work.get());
        if (result == null) {
            throw new IllegalStateException("nothing came of it");
        }
        return result;
    }

    private static Person in(Person p, PersonState state) {
        return new Person(
                p.id(), p.email(), p.name(), p.role(), state, p.about(), p.version(), p.createdAt(), p.signedInAt());
    }

    private static Person in(Person p, Role role) {
        return new Person(
                p.id(), p.email(), p.name(), role, p.state(), p.about(), p.version(), p.createdAt(), p.signedInAt());
    }
}
