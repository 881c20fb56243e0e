package org.vanewright.account;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.record.Actors;
import org.vanewright.record.Power;
import org.vanewright.record.RecordNotFoundException;
import org.vanewright.record.RecordPage;

/** People as stewards see them; everything here asks for {@link Power#RUN}. */
@Service
public class PeopleDesk {
    static final int PAGE = 50;
    private static final int LONGEST_WORDS = 100;

    private final PersonRepository people;
    private final SecondFactorCheck secondFactor;
    private final Actors actors;

    PeopleDesk(PersonRepository people, SecondFactorCheck secondFactor, Actors actors) {
        this.people = people;
        this.secondFactor = secondFactor;
        this.actors = actors;
    }

    /**
     * Somebody, and how they sign in.
     *
     * @param lastSteward whether nobody else could run the instance
     */
    public record Seen(Person person, boolean password, boolean secondFactor, boolean lastSteward) {}

    /**
     * A page of people, by name.
     *
     * @param state null for any
     * @param words part of a name or an e-mail address; null for any
     * @param cursor from the page before; null for the first
     */
    public RecordPage<Person> page(@Nullable PersonState state, @Nullable String words, @Nullable String cursor) {
        actors.current().require(Power.RUN);
        String looked = words == null ? "" : words.strip();
        if (looked.length() > LONGEST_WORDS || looked.indexOf(0) >= 0) {
            return new RecordPage<>(List.of(), null);
        }
        PersonCursor after = cursor == null ? null : PersonCursor.decode(cursor);
        List<Person> found = people.page(state, looked, after, PAGE + 1);
        if (found.size() <= PAGE) {
            return new RecordPage<>(found, null);
        }
        List<Person> shown = found.subList(0, PAGE);
        return new RecordPage<>(shown, PersonCursor.of(shown.get(PAGE - 1)).encode());
    }

    /** One of them. */
    public Seen one(String id) {
        actors.current().require(Power.RUN);
        Person person = people.find(id).orElseThrow(() -> new RecordNotFoundException("person", id, null));
        boolean steward = person.active() && person.role() == Role.STEWARD;
        Optional<String> hash = people.passwordHash(id);
        return new Seen(
                person,
                hash.isPresent(),
                secondFactor.needed(person),
                steward && !people.otherActive(List.of(Role.STEWARD), id));
    }
}
