package org.vanewright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.vanewright.record.Actors;
import org.vanewright.record.People;
import org.vanewright.record.PersonRef;
import org.vanewright.record.Power;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;

/** Who has published what. Everybody sees those who have; members see each other. */
@Service
public class Contributions {
    private final Records records;
    private final People people;
    private final Actors actors;

    Contributions(Records records, People people, Actors actors) {
        this.records = records;
        this.people = people;
        this.actors = actors;
    }

    /** A public revision with the address of its kind. */
    public record Item(String plural, Revision<?> revision) {}

    /** A person with what they have published, newest first. */
    public record Contributor(PersonRef person, List<Item> items) {}

    /** By name. */
    public List<Contributor> everybody() {
        Map<String, List<Item>> byPerson = new LinkedHashMap<>();
        Map<String, String> names = new LinkedHashMap<>();
        published().forEach(item -> {
            String id = String.valueOf(item.revision().standing().contributorId());
            byPerson.computeIfAbsent(id, i -> new ArrayList<>()).add(item);
            names.putIfAbsent(id, item.revision().contributor());
        });
        if (actors.current().may(Power.READ_OWN)) {
            people.members().forEach(p -> {
                byPerson.computeIfAbsent(p.id(), i -> new ArrayList<>());
                names.putIfAbsent(p.id(), p.name());
            });
        }
        return byPerson.entrySet().stream()
                .map(e -> new Contributor(person(e.getKey(), names), List.copyOf(e.getValue())))
                .sorted(Comparator.comparing((Contributor c) -> c.person().name(), String.CASE_INSENSITIVE_ORDER))
                .toList();
    }

    /** One of those whom the reader may see. */
    public Optional<Contributor> of(String personId) {
        return everybody().stream()
                .filter(c -> c.person().id().equals(personId))
                .findFirst();
    }

    private PersonRef person(String id, Map<String, String> names) {
        return people.find(id).orElseGet(() -> new PersonRef(id, String.valueOf(names.get(id))));
    }

    private List<Item> published() {
        return records.services().stream()
                .flatMap(s -> of(s).stream())
                .sorted(Comparator.comparing((Item i) -> i.revision().shownAt()).reversed())
                .toList();
    }

    private static <T extends RecordContent> List<Item> of(RecordService<T> service) {
        return service.contributed().stream()
                .map(r -> new Item(service.plural(), r))
                .toList();
    }
}
