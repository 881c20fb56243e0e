package org.vanewright.review;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.springframework.stereotype.Service;
import org.vanewright.platform.page.Units;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordNotFoundException;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** The history of a record of any kind, as far as the reader may see it. */
@Service
public class Histories {
    private final Records records;
    private final Views views;

    Histories(Records records, Views views) {
        this.records = records;
        this.views = views;
    }

    /**
     * @param plural of its kind, as in addresses
     * @param label of its kind
     * @param revisions newest first, at least one
     * @param hidden numbers below the newest that the reader does not see
     * @param lineage the tree it stands in
     */
    public record History(
            String plural, String label, List<Revision<?>> revisions, List<Integer> hidden, Lineage lineage) {
        public Revision<?> newest() {
            return revisions.get(0);
        }
    }

    /** @throws RecordNotFoundException if the reader may see no revision of it */
    public History of(String plural, String slug) {
        return history(service(plural, slug), slug);
    }

    private RecordService<?> service(String plural, String slug) {
        return records.ofPlural(plural).orElseThrow(() -> new RecordNotFoundException("record", slug, null));
    }

    private <T extends RecordContent> History history(RecordService<T> service, String slug) {
        List<Revision<T>> revisions = service.history(slug);
        if (revisions.isEmpty()) {
            throw new RecordNotFoundException(service.kind(), slug, null);
        }
        Set<Integer> shown = revisions.stream().map(Revision::number).collect(Collectors.toSet());
        List<Integer> hidden = IntStream.range(1, revisions.get(0).number())
                .boxed()
                .filter(n -> !shown.contains(n))
                .toList();
        Revision<T> newest = revisions.stream()
                .filter(Revision::isPublic)
                .findFirst()
                .orElse(revisions.get(0));
        return new History(
                service.plural(),
                views.label(service.kind()),
                List.copyOf(revisions),
                hidden,
                Lineage.of(service, newest));
    }

    /** Two revisions of one record side by side. */
    public Comparison compare(String plural, String slug, int from, int to, Units units) {
        return compare(service(plural, slug), new RevisionRef(slug, from), new RevisionRef(slug, to), units);
    }

    private <T extends RecordContent> Comparison compare(
            RecordService<T> service, RevisionRef from, RevisionRef to, Units units) {
        return views.compare(service, service.exactly(from), service.exactly(to), units);
    }
}
