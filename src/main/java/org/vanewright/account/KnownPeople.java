package org.vanewright.account;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.record.People;
import org.vanewright.record.PersonRef;

/** People as other parts of the service see them. */
@Component
class KnownPeople implements People {
    private final PersonRepository people;

    KnownPeople(PersonRepository people) {
        this.people = people;
    }

    @Override
    public List<PersonRef> members() {
        return people.active().stream().map(KnownPeople::ref).toList();
    }

    @Override
    public List<Known> byName(@Nullable String after, int most) {
        Person last = after == null ? null : people.find(after).orElse(null);
        return people.byName(last, most).stream()
                .map(p -> new Known(ref(p), p.active()))
                .toList();
    }

    @Override
    public boolean isMember(String personId) {
        return people.find(personId).filter(Person::active).isPresent();
    }

    @Override
    public Optional<PersonRef> find(String personId) {
        return people.find(personId).map(KnownPeople::ref);
    }

    @Override
    public List<PersonRef> find(Collection<String> personIds) {
        return people.find(personIds).stream().map(KnownPeople::ref).toList();
    }

    @Override
    public boolean anotherReviewerThan(String personId) {
        return people.otherActive(List.of(Role.MAINTAINER, Role.STEWARD), personId);
    }

    private static PersonRef ref(Person person) {
        return new PersonRef(person.id(), person.name());
    }
}
