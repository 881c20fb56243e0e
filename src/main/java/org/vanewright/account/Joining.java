package org.vanewright.account;

import java.time.Duration;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.vanewright.account.OneTimeLink.Purpose;
import org.vanewright.audit.AuditLog;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/** How people come to have an account. */
@Service
public class Joining {
    private static final int LONGEST_SHOWN = 80;

    private final NewAccounts accounts;
    private final Links links;
    private final SetUp setUp;
    private final SettingRepository settings;
    private final InstanceSettings instance;
    private final AttemptLimits limits;
    private final AuditLog audit;
    private final TransactionTemplate transaction;

    Joining(
            NewAccounts accounts,
            Links links,
            SetUp setUp,
            SettingRepository settings,
            InstanceSettings instance,
            AttemptLimits limits,
            AuditLog audit,
            PlatformTransactionManager transactions) {
        this.accounts = accounts;
        this.links = links;
        this.setUp = setUp;
        this.settings = settings;
        this.instance = instance;
        this.limits = limits;
        this.audit = audit;
        this.transaction = new TransactionTemplate(transactions);
    }

    /**
     * What somebody says of themselves to get an account.
     *
     * @param password not looked at where there is a provider
     * @param provider by which the person signs in, without a password; null for most
     */
    public record Details(
            @Nullable String email,
            @Nullable String name,
            String password,
            @Nullable ProviderIdentity provider) {
        public Details(@Nullable String email, @Nullable String name, String password) {
            this(email, name, password, null);
        }

        /** Passwords are written nowhere. */
        @Override
        public String toString() {
            return "Details of " + email;
        }
    }

    /** The link, while the first steward can still be made by it. */
    public Optional<OneTimeLink> setUp(String secret) {
        return setUp.isOpen() ? links.open(Purpose.SET_UP, secret) : Optional.empty();
    }

    /** The link, while somebody can still join by it. */
    public Optional<OneTimeLink> invitation(String secret) {
        return links.open(Purpose.INVITATION, secret);
    }

    /**
     * Makes the first steward.
     *
     * @return nobody where the link does not work or somebody was faster
     * @throws InvalidInputException where the details cannot be used; the link still works then
     */
    public Optional<Person> setUp(String secret, Details details) {
        return setUp(secret).flatMap(link -> {
            Person steward = accounts.checked(details, Role.STEWARD, PersonState.ACTIVE);
            return add(link, steward, details, "account.set-up", settings::closeSetUp);
        });
    }

    /** As {@link #setUp(String, Details)}, by an invitation and in the role that its maker chose. */
    public Optional<Person> join(String secret, Details details) {
        return invitation(secret).flatMap(link -> {
            Role role = link.role() == null ? Role.MEMBER : link.role();
            Person person = accounts.checked(details, role, PersonState.ACTIVE);
            return add(link, person, details, "account.joined", () -> true);
        });
    }

    /** Whether anybody may ask for an account. */
    public boolean registeringIsOpen() {
        return instance.registeringIsOpen();
    }

    /**
     * Asks for an account, which a steward then admits. Who asks learns nothing about whether the address is known.
     *
     * @param address of the network
     * @return how long to wait instead; zero where it was done
     */
    public Duration register(Details details, String address) {
        Person person = accounts.checked(details, Role.MEMBER, PersonState.PENDING);
        Duration delay = limits.beginInNetwork(address);
        if (delay.isZero()) {
            // Before it is known whether it is needed: who asks with a known address waits as long.
            String hash = accounts.hash(details);
            boolean added = Boolean.TRUE.equals(transaction.execute(status -> accounts.add(person, hash, details)));
            String event = added ? "account.registered" : "account.registered-again";
            audit.add(null, person.name(), event, person.email(), NewAccounts.by(details));
        }
        return delay;
    }

    private Optional<Person> add(OneTimeLink link, Person person, Details details, String event, OnlyOnce once) {
        String hash = accounts.hash(details);
        Optional<Person> added = transaction.execute(status -> {
            if (!links.use(link) || !once.mine()) {
                status.setRollbackOnly();
                return Optional.empty();
            }
            if (!accounts.add(person, hash, details)) {
                // Rolls back, so that the link still works.
                throw new InvalidInputException(new FieldProblem(
                        "email", shown(person.email()), "an address that has no account here; sign in with that one"));
            }
            String detail = Stream.of(
                            person.role().label(),
                            link.note().isEmpty() ? "" : "invited as " + link.note(),
                            NewAccounts.by(details))
                    .filter(part -> !part.isEmpty())
                    .collect(Collectors.joining(", "));
            audit.add(person.id(), person.name(), event, person.email(), detail);
            return Optional.of(person);
        });
        return added == null ? Optional.empty() : added;
    }

    /** What only one of those who try at the same time gets. */
    private interface OnlyOnce {
        boolean mine();
    }

    private static String shown(String text) {
        return text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN - 1) + "…";
    }
}
