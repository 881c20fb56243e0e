package org.vanewright.account;

import static org.mockito.Mockito.mock;

import com.zaxxer.hikari.HikariDataSource;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReference;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.mock.env.MockEnvironment;
import org.vanewright.audit.AuditLog;
import org.vanewright.record.Actor;
import org.vanewright.record.Actors;
import org.vanewright.testing.Databases;
import org.vanewright.testing.SteppingClock;

/** Accounts on a fresh database of either kind, without the rest of the service. */
final class Bench implements AutoCloseable {
    final SteppingClock clock = new SteppingClock();
    final AtomicReference<Actor> asking = new AtomicReference<>(Actor.visitor());
    final AuditLog audit = mock(AuditLog.class);
    final Sessions sessions = mock(Sessions.class);
    final PersonRepository people;
    final ProviderIdentityRepository identities;
    final LinkRepository stored;
    final SettingRepository settings;
    final AttemptRepository attempts;
    final AttemptLimits limits;
    final Links links;
    final SetUp setUp;
    final Joining joining;
    final AccountService accounts;
    final SigningIn signingIn;
    final CountingEncoder encoder = new CountingEncoder();
    final Passwords passwords = new Passwords(new PasswordSettings(64, 1, 4), encoder);

    private final HikariDataSource source;

    Bench(Databases.Engine engine) {
        source = Databases.migrated(engine);
        JdbcTransactionManager transactions = new JdbcTransactionManager(source);
        Actors actors = () -> Objects.requireNonNull(asking.get());
        people = Databases.transactional(source, PersonRepository::new);
        identities = Databases.transactional(source, ProviderIdentityRepository::new);
        stored = Databases.transactional(source, LinkRepository::new);
        settings = Databases.transactional(source, SettingRepository::new);
        attempts = Databases.transactional(source, AttemptRepository::new);
        limits = new AttemptLimits(attempts, new AttemptSettings(5, 30, 30), clock);
        links = new Links(stored, clock);
        setUp = new SetUp(people, settings, stored, links, new BaseUrl("", new MockEnvironment()));
        PersonRules rules = new PersonRules(new PasswordStrength());
        InstanceSettings instance = new InstanceSettings(settings, actors, audit);
        NewAccounts newAccounts = new NewAccounts(people, identities, rules, passwords, clock);
        joining = new Joining(newAccounts, links, setUp, settings, instance, limits, audit, transactions);
        accounts = new AccountService(people, stored, links, sessions, actors, audit, clock, transactions);
        signingIn = new SigningIn(people, passwords, limits, audit, clock);
    }

    /** Adds somebody with the password of everybody in tests. */
    Person add(Role role, PersonState state) {
        Person person = NewPeople.person(role, state);
        people.add(person, passwords.hash(NewPeople.PASSWORD));
        return person;
    }

    void ask(Person person) {
        asking.set(new Actor(person.id(), person.name(), person.role().powers()));
    }

    JdbcClient jdbc() {
        return JdbcClient.create(source);
    }

    @Override
    public void close() {
        source.close();
    }
}
