package org.vanewright.review;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.record.Actors;
import org.vanewright.record.People;
import org.vanewright.record.PersonRef;
import org.vanewright.record.Power;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordPage;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;

/** Who has published what. Everybody sees those who have; members see each other. */
@Service
public class Contributions {
    private static final int LOOKED_AT = 250;

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

    /** A person with the number of revisions that they have made public. */
    public record Contributor(PersonRef person, int revisions) {}

    /** What one person has made public, newest first. */
    public record Work(PersonRef person, List<Item> items) {}

    /**
     * Those whom the reader may see, by name: looks at so many at a time as a page may have, until it is full.
     *
     * @param after id of the last one of the page before; null, or one who is not known, begins at the start
     * @param limit most of them on a page
     */
    public RecordPage<Contributor> page(@Nullable String after, int limit) {
        boolean everybody = actors.current().may(Power.READ_OWN);
        List<Contributor> shown = new ArrayList<>();
        String last = after;
        List<People.Known> looked;
        do {
            looked = people.byName(last, LOOKED_AT);
            Map<String, Integer> counts =
                    counts(looked.stream().map(k -> k.person().id()).toList());
            looked.stream()
                    .filter(k -> everybody && k.member()
                            || counts.containsKey(k.person().id()))
                    .forEach(k -> shown.add(new Contributor(
                            k.person(), counts.getOrDefault(k.person().id(), 0))));
            last = looked.isEmpty()
                    ? last
                    : looked.get(looked.size() - 1).person().id();
        } while (shown.size() <= limit && looked.size() == LOOKED_AT);
        return shown.size() <= limit
                ? new RecordPage<>(List.copyOf(shown), null)
                : new RecordPage<>(
                        List.copyOf(shown.subList(0, limit)),
                        shown.get(limit - 1).person().id());
    }

    private Map<String, Integer> counts(List<String> ids) {
        Map<String, Integer> counts = new HashMap<>();
        records.services().forEach(s -> s.contributions(ids).forEach((id, n) -> counts.merge(id, n, Integer::sum)));
        return counts;
    }

    /** One of those whom the reader may see. */
    public Optional<Work> of(String personId) {
        List<Item> items = records.services().stream()
                .flatMap(s -> of(s, personId).stream())
                .sorted(Comparator.comparing((Item i) -> i.revision().shownAt()).reversed())
                .toList();
        boolean member = actors.current().may(Power.READ_OWN) && people.isMember(personId);
        return items.isEmpty() && !member
                ? Optional.empty()
                : people.find(personId).map(person -> new Work(person, items));
    }

    private static <T extends RecordContent> List<Item> of(RecordService<T> service, String personId) {
        return service.contributedBy(personId).stream()
                .map(r -> new Item(service.plural(), r))
                .toList();
    }
}
