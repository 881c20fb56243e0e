package org.vanewright.account;

import java.time.Duration;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.vanewright.account.OneTimeLink.Purpose;
import org.vanewright.audit.AuditLog;
import org.vanewright.engineering.input.Checks;
import org.vanewright.record.Actor;
import org.vanewright.record.Actors;
import org.vanewright.record.NotAllowedException;
import org.vanewright.record.Power;
import org.vanewright.record.RecordNotFoundException;

/** Lets people choose a new password who forgot theirs. */
@Service
public class PasswordReset {
    private static final String FIELD = "newPassword";

    private final PersonRepository people;
    private final PersonRules rules;
    private final Passwords passwords;
    private final AccessTokenRepository tokens;
    private final ResetLinkRepository earlier;
    private final ResetLinks resets;
    private final Links links;
    private final ResetMails mails;
    private final AttemptLimits limits;
    private final Sessions sessions;
    private final Actors actors;
    private final AuditLog audit;
    private final TransactionTemplate transaction;

    PasswordReset(
            PersonRepository people,
            PersonRules rules,
            Passwords passwords,
            AccessTokenRepository tokens,
            ResetLinkRepository earlier,
            ResetLinks resets,
            Links links,
            ResetMails mails,
            AttemptLimits limits,
            Sessions sessions,
            Actors actors,
            AuditLog audit,
            PlatformTransactionManager transactions) {
        this.people = people;
        this.rules = rules;
        this.passwords = passwords;
        this.tokens = tokens;
        this.earlier = earlier;
        this.resets = resets;
        this.links = links;
        this.mails = mails;
        this.limits = limits;
        this.sessions = sessions;
        this.actors = actors;
        this.audit = audit;
        this.transaction = new TransactionTemplate(transactions);
    }

    /** Whether this service sends links by mail; where it does not, stewards give them out. */
    public boolean byMail() {
        return mails.available();
    }

    /**
     * Asks for a link by mail. Nothing tells whether there is such an account.
     *
     * @param typed the e-mail address as typed
     * @param address of the network
     * @return how long to wait instead, after too many; zero where a link is on its way if there is an account
     */
    public Duration ask(String typed, String address) {
        Checks checks = new Checks();
        rules.email(checks, typed);
        checks.throwIfAny();
        String email = EmailAddress.of(typed).orElseThrow();
        Duration wait = limits.begin("reset " + email, address);
        audit.add(null, "Visitor", wait.isZero() ? "reset.asked" : "reset.limited", email, "");
        if (wait.isZero()) {
            mails.send(email);
        }
        return wait;
    }

    /**
     * Makes a link for somebody who cannot get one by mail; stewards only.
     *
     * @return its whole address, which nobody can find out later
     */
    public String issueResetLink(String personId) {
        Actor steward = actors.current();
        String id = steward.require(Power.RUN);
        Person person = people.find(personId).orElseThrow(() -> new RecordNotFoundException("person", personId, null));
        if (!person.active()) {
            throw new NotAllowedException("This account is not open, so a new password would be of no use.");
        }
        String link = resets.make(person, steward.name());
        audit.add(id, steward.name(), "reset.link-made", person.email(), "");
        return link;
    }

    /** Whose password a link changes; empty where it does not work, or no more. */
    public Optional<Person> holder(String secret) {
        return links.open(Purpose.RESET, secret).flatMap(this::holder);
    }

    /**
     * Changes the password, ends the person's sessions and revokes their tokens.
     *
     * @return false where the link does not work, or no more
     */
    public boolean choose(String secret, String password) {
        Optional<OneTimeLink> link = links.open(Purpose.RESET, secret);
        Optional<Person> person = link.flatMap(this::holder);
        if (link.isEmpty() || person.isEmpty()) {
            return false;
        }
        Person holder = person.get();
        Checks checks = new Checks();
        rules.password(checks, FIELD, password, holder.email(), holder.name());
        checks.throwIfAny();
        String hash = passwords.hash(password);
        boolean changed = Boolean.TRUE.equals(transaction.execute(status -> change(link.get(), holder, hash)));
        if (changed) {
            sessions.endAll(holder.id());
        }
        return changed;
    }

    private boolean change(OneTimeLink link, Person holder, String hash) {
        if (!links.use(link)) {
            return false;
        }
        people.changePassword(holder.id(), hash);
        earlier.endAll(holder.id());
        int revoked = tokens.removeAll(holder.id());
        audit.add(
                holder.id(),
                holder.name(),
                "account.password-reset",
                holder.email(),
                "link by " + link.createdBy() + "; tokens revoked: " + revoked);
        return true;
    }

    private Optional<Person> holder(OneTimeLink link) {
        String personId = link.personId();
        return personId == null ? Optional.empty() : people.find(personId).filter(Person::active);
    }
}
