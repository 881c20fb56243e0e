package org.vanewright.account;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Locale;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import javax.sql.DataSource;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** People for tests, each with an address and a name of their own. */
public final class NewPeople {
    /** Of everybody here. */
    public static final String PASSWORD = "seven calm herons at dusk";

    private static final AtomicInteger COUNT = new AtomicInteger();

    private NewPeople() {}

    /**
     * Somebody who can sign in.
     *
     * @param id of the person
     */
    public record NewPerson(String id, String email, String name, String password) {}

    /** Adds somebody to the service's database. */
    public static NewPerson add(ApplicationContext service, Role role) {
        return add(service, role, PersonState.ACTIVE);
    }

    public static NewPerson add(ApplicationContext service, Role role, PersonState state) {
        Person person = person(role, state);
        String hash = service.getBean(Passwords.class).hash(PASSWORD);
        if (!service.getBean(PersonRepository.class).add(person, hash)) {
            throw new IllegalStateException("there is already somebody like " + person);
        }
        return new NewPerson(person.id(), person.email(), person.name(), PASSWORD);
    }

    /** Adds somebody to the database of a service that runs elsewhere. */
    public static NewPerson add(DataSource database, Role role) {
        Person person = person(role, PersonState.ACTIVE);
        String hash = new Passwords(new PasswordSettings(64, 1, 1)).hash(PASSWORD);
        if (!new PersonRepository(JdbcClient.create(database)).add(person, hash)) {
            throw new IllegalStateException("there is already somebody like " + person);
        }
        return new NewPerson(person.id(), person.email(), person.name(), PASSWORD);
    }

    /** The value of an {@code Authorization} header for programs of such a person, for everything the role may do. */
    public static String bearer(DataSource database, NewPerson person, Role role) {
        String secret = AccessTokens.PREFIX + new Secrets().next();
        Instant now = Instant.now().truncatedTo(ChronoUnit.MICROS);
        AccessToken token = new AccessToken(
                UUID.randomUUID().toString(),
                person.id(),
                "Test",
                TokenScope.of(role),
                now,
                now.plusSeconds(86_400),
                null);
        new AccessTokenRepository(JdbcClient.create(database)).add(token, Secrets.hash(secret));
        return "Bearer " + secret;
    }

    static Person person(Role role, PersonState state) {
        int number = COUNT.incrementAndGet();
        String id = UUID.randomUUID().toString();
        return new Person(
                id,
                role.name().toLowerCase(Locale.ROOT) + "." + id.substring(0, 8) + "@club.example",
                role.label() + " " + number,
                role,
                state,
                null,
                1,
                Instant.now().truncatedTo(ChronoUnit.MICROS),
                null);
    }
}
