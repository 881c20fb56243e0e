package org.vanewright.review;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
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
     * Those whom the reader may see, by name.
     *
     * @param after id of the last one of the page before; null, or one who is not in the list, begins at the start
     * @param limit most of them on a page
     */
    public RecordPage<Contributor> page(@Nullable String after, int limit) {
        List<Contributor> all = everybody();
        int from = 0;
        for (int i = 0; after != null && i < all.size(); i++) {
            if (all.get(i).person().id().equals(after)) {
                from = i + 1;
            }
        }
        int to = Math.min(all.size(), from + limit);
        List<Contributor> page = List.copyOf(all.subList(from, to));
        return new RecordPage<>(page, to < all.size() ? all.get(to - 1).person().id() : null);
    }

    private List<Contributor> everybody() {
        Map<String, Integer> counts = new HashMap<>();
        records.services().forEach(s -> s.contributors().forEach((id, n) -> counts.merge(id, n, Integer::sum)));
        Map<String, PersonRef> known = new LinkedHashMap<>();
        people.find(counts.keySet()).forEach(p -> known.put(p.id(), p));
        if (actors.current().may(Power.READ_OWN)) {
            people.members().forEach(p -> known.put(p.id(), p));
        }
        return known.values().stream()
                .map(p -> new Contributor(p, counts.getOrDefault(p.id(), 0)))
                .sorted(Comparator.comparing((Contributor c) -> c.person().name(), String.CASE_INSENSITIVE_ORDER)
                        .thenComparing(c -> c.person().id()))
                .toList();
    }

    /** One of those whom the reader may see. */
    public Optional<Work> of(String personId) {
        List<Item> items = records.services().stream()
                .flatMap(s -> of(s, personId).stream())
                .sorted(Comparator.comparing((Item i) -> i.revision().shownAt()).reversed())
                .toList();
        boolean member = actors.current().may(Power.READ_OWN)
                && people.members().stream().anyMatch(p -> p.id().equals(personId));
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
