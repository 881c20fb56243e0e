package org.vanewright.account;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import javax.sql.DataSource;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.record.PersonRef;

/** Many people with accounts; the first is a member, the second a maintainer, and every fortieth more. */
public final class BulkPeople {
    private static final int MAINTAINERS = 40;
    private static final Instant JOINED = Instant.parse("2016-01-01T08:00:00Z");

    private BulkPeople() {}

    /** Adds them where they are not there yet; all have {@link NewPeople#PASSWORD}. */
    public static List<PersonRef> add(DataSource database, int count, List<String> names) {
        PersonRepository people = new PersonRepository(JdbcClient.create(database));
        String hash = new Passwords(new PasswordSettings(64, 1, 1)).hash(NewPeople.PASSWORD);
        List<PersonRef> added = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Person person = new Person(
                    UUID.nameUUIDFromBytes(("invented " + i).getBytes(StandardCharsets.UTF_8))
                            .toString(),
                    email(i),
                    names.get(i),
                    i % MAINTAINERS == 1 ? Role.MAINTAINER : Role.MEMBER,
                    PersonState.ACTIVE,
                    "Invented.",
                    1,
                    JOINED,
                    null);
            people.add(person, hash);
            added.add(new PersonRef(person.id(), person.name()));
        }
        return added;
    }

    /** Where that one is reached; nobody is. */
    public static String email(int number) {
        return String.format(Locale.ROOT, "person.%05d@club.example", number + 1);
    }
}
