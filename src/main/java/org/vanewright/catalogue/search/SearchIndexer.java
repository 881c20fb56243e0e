package org.vanewright.catalogue.search;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.event.TransactionPhase;
import org.springframework.transaction.event.TransactionalEventListener;
import org.springframework.transaction.support.TransactionTemplate;
import org.vanewright.catalogue.MeasuredEffects;
import org.vanewright.catalogue.MeasuredEffects.Concerned;
import org.vanewright.catalogue.SearchSource;
import org.vanewright.record.PublicChange;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;

/**
 * Keeps the index as the published records are: in the transaction that changes one, as the last thing before it commits, so
 * that what is found and what is published are never two things.
 */
@Component
class SearchIndexer {
    /** Of the rules by which entries are made. Count it up with every change of them: entries are then made anew. */
    static final int VERSION = 1;

    private final Records records;
    private final Map<String, SearchSource<?>> sources;
    private final List<MeasuredEffects> effects;
    private final SearchIndexRepository index;
    private final TransactionTemplate together;

    SearchIndexer(
            Records records,
            List<SearchSource<?>> sources,
            List<MeasuredEffects> effects,
            SearchIndexRepository index,
            PlatformTransactionManager transactions) {
        this.records = records;
        this.sources = sources.stream().collect(Collectors.toMap(s -> s.kind(), Function.identity()));
        this.effects = List.copyOf(effects);
        this.index = index;
        this.together = new TransactionTemplate(transactions);
    }

    @TransactionalEventListener(phase = TransactionPhase.BEFORE_COMMIT, fallbackExecution = true)
    void changed(PublicChange change) {
        together.executeWithoutResult(status -> {
            index.hold();
            Set<Concerned> all = new LinkedHashSet<>();
            all.add(new Concerned(change.kind(), change.slug()));
            effects.forEach(e -> all.addAll(e.concernedBy(change.kind(), change.slug())));
            all.forEach(c -> refresh(c.kind(), c.slug()));
        });
    }

    /**
     * Makes the entries of published records anew, but for those that are as they should be.
     *
     * @return how many were made
     */
    int refreshAll(RecordService<?> service, List<? extends Revision<?>> published) {
        Integer made = together.execute(status -> {
            index.hold();
            Map<String, Integer> current = index.current(
                    service.kind(), published.stream().map(r -> r.slug()).toList(), VERSION);
            List<String> stale = published.stream()
                    .filter(r -> !Integer.valueOf(r.number()).equals(current.get(r.slug())))
                    .map(r -> r.slug())
                    .toList();
            stale.forEach(slug -> refresh(service.kind(), slug));
            return stale.size();
        });
        return made == null ? 0 : made;
    }

    /**
     * Makes some of the entries anew that older rules made; what is not published any more goes.
     *
     * @return whether there were any
     */
    boolean refreshOutdated(int most) {
        return Boolean.TRUE.equals(together.execute(status -> {
            index.hold();
            List<Concerned> outdated = index.outdated(VERSION, most);
            outdated.forEach(c -> refresh(c.kind(), c.slug()));
            return !outdated.isEmpty();
        }));
    }

    private void refresh(String kind, String slug) {
        records.ofKind(kind).ifPresentOrElse(service -> refresh(service, slug), () -> index.remove(kind, slug));
    }

    private <T extends RecordContent> void refresh(RecordService<T> service, String slug) {
        Optional<Revision<T>> published = service.latest(slug);
        if (published.isEmpty()) {
            index.remove(service.kind(), slug);
            return;
        }
        @SuppressWarnings("unchecked") // the kind names the type
        SearchSource<T> source = (SearchSource<T>) sources.get(service.kind());
        List<MeasuredEffects.Flights> flights = new ArrayList<>();
        effects.forEach(e -> e.of(service.kind(), slug).ifPresent(flights::add));
        index.put(EntryMaker.entry(service, published.get(), source, flights), VERSION);
    }
}
