package org.vanewright.catalogue.search;

import java.time.Duration;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.awaitility.Awaitility;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.vanewright.catalogue.FacetValue;
import org.vanewright.catalogue.MeasuredEffects;
import org.vanewright.catalogue.SearchSource;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordPage;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;

/**
 * Fills the index for everything published that has no entry yet: what the service itself would write, in batches, since
 * it makes one entry after another under a lock.
 */
public final class BulkEntries {
    private static final int READ_AT_ONCE = 200;

    /** Words go into the table of H2 in their order, so that more at once touch fewer pages of its index. */
    private static final int WRITTEN_AT_ONCE = 2000;

    private final Records records;
    private final Map<String, SearchSource<?>> sources;
    private final List<MeasuredEffects> effects;
    private final SearchIndexRepository index;
    private final JdbcTemplate batches;
    private final TransactionTemplate together;
    private final boolean postgres;
    private final Map<String, Long> signatures = new HashMap<>();
    private final Set<String> vocabulary = new HashSet<>();
    private long change;
    private long lastEntry;
    private long lastSignature;

    public BulkEntries(ApplicationContext service) {
        records = service.getBean(Records.class);
        sources = service.getBeansOfType(SearchSource.class).values().stream()
                .map(s -> (SearchSource<?>) s)
                .collect(Collectors.toMap(SearchSource::kind, Function.identity()));
        effects = List.copyOf(service.getBeansOfType(MeasuredEffects.class).values());
        index = service.getBean(SearchIndexRepository.class);
        batches = service.getBean(JdbcTemplate.class);
        together = new TransactionTemplate(service.getBean(PlatformTransactionManager.class));
        postgres = service.getBean(WordIndexRepository.class) instanceof PostgresWordIndexRepository;
    }

    /** Waits until the service has its own index in order, which it makes in the background after a first start. */
    public void awaitOwn() {
        Awaitility.await().atMost(Duration.ofMinutes(1)).until(() -> !index.isOlderThan(SearchIndexer.VERSION));
    }

    /** @return how many entries were made */
    public long fill() {
        lastEntry = last("search_entry");
        lastSignature = last("search_signature");
        long before = lastEntry;
        batches.query("select id, sha256 from search_signature", row -> {
            signatures.put(row.getString("sha256"), row.getLong("id"));
        });
        batches.query("select word from search_vocabulary", row -> {
            vocabulary.add(row.getString("word"));
        });
        Long changes = batches.queryForObject("select changes from search_index", Long.class);
        change = changes == null ? 0 : changes + 1;
        records.services().forEach(this::fill);
        restart("search_entry", lastEntry);
        restart("search_signature", lastSignature);
        batches.update("update search_index set changes = ?, version = ?", change, SearchIndexer.VERSION);
        return lastEntry - before;
    }

    private long last(String table) {
        Long id = batches.queryForObject("select coalesce(max(id), 0) from " + table, Long.class);
        return id == null ? 0 : id;
    }

    private void restart(String table, long last) {
        batches.execute("alter table " + table + " alter column id restart with " + (last + 1));
    }

    private <T extends RecordContent> void fill(RecordService<T> service) {
        String cursor = null;
        List<SearchEntry> made = new ArrayList<>();
        do {
            RecordPage<Revision<T>> page = service.list(cursor, READ_AT_ONCE);
            Map<String, Integer> there = index.current(
                    service.kind(), page.items().stream().map(r -> r.slug()).toList(), SearchIndexer.VERSION);
            page.items().parallelStream()
                    .filter(r -> !there.containsKey(r.slug()))
                    .map(r -> entry(service, r))
                    .forEachOrdered(made::add);
            cursor = page.nextCursor();
            if (cursor == null || made.size() >= WRITTEN_AT_ONCE) {
                together.executeWithoutResult(status -> write(made));
                made.clear();
            }
        } while (cursor != null);
    }

    private <T extends RecordContent> SearchEntry entry(RecordService<T> service, Revision<T> revision) {
        @SuppressWarnings("unchecked") // the kind names the type
        SearchSource<T> source = (SearchSource<T>) sources.get(service.kind());
        List<MeasuredEffects.Flights> flights = new ArrayList<>();
        effects.forEach(e -> e.of(service.kind(), revision.slug()).ifPresent(flights::add));
        return EntryMaker.entry(service, revision, source, flights);
    }

    private void write(List<SearchEntry> entries) {
        List<Object[]> rows = new ArrayList<>();
        List<Object[]> fresh = new ArrayList<>();
        List<Object[]> facets = new ArrayList<>();
        List<Object[]> marks = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (SearchEntry entry : entries) {
            long id = ++lastEntry;
            rows.add(row(id, entry, signature(entry.facets(), fresh, facets)));
            if (!postgres) {
                entry.words()
                        .marks()
                        .forEach((mark, at) -> marks.add(new Object[] {mark, id, H2WordIndexRepository.points(at)}));
            }
            entry.words().words().stream().filter(vocabulary::add).forEach(words::add);
        }
        batches.batchUpdate("insert into search_signature (id, sha256) values (?, ?)", fresh);
        batches.batchUpdate(
                "insert into search_facet (signature_id, facet, choice, label, place) values (?, ?, ?, ?, ?)", facets);
        batches.batchUpdate(
                "insert into search_entry (id, kind, slug, revision, name, summary, picture, invented, contributor,"
                        + " published_at, effect_ppm, effect, prominence, signature_id, version, change_number"
                        + (postgres ? ", words" : "") + ") values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?"
                        + (postgres ? ", cast(? as tsvector)" : "") + ")",
                rows);
        batches.batchUpdate(
                "insert into search_vocabulary (word, stem) values (?, ?)",
                words.stream().map(w -> new Object[] {w, Words.stem(w)}).toList());
        if (!postgres) {
            marks.sort(Comparator.comparing(mark -> (String) mark[0]));
            batches.batchUpdate("insert into search_word (word, entry_id, weight) values (?, ?, ?)", marks);
            batches.batchUpdate(
                    "insert into search_trigram (trigram, word) values (?, ?)",
                    words.stream()
                            .filter(w -> !Words.hasDigit(w))
                            .flatMap(w ->
                                    H2WordIndexRepository.trigrams(w).stream().map(t -> new Object[] {t, w}))
                            .toList());
        }
    }

    private long signature(List<FacetValue> values, List<Object[]> fresh, List<Object[]> facets) {
        return signatures.computeIfAbsent(SearchIndexRepository.sha256(values), sha256 -> {
            long id = ++lastSignature;
            fresh.add(new Object[] {id, sha256});
            values.forEach(v -> facets.add(new Object[] {id, v.facet().key(), v.choice(), v.label(), v.place()}));
            return id;
        });
    }

    private Object[] row(long id, SearchEntry e, long signature) {
        List<Object> row = new ArrayList<>();
        row.add(id);
        row.add(e.kind());
        row.add(e.slug());
        row.add(e.revision());
        row.add(e.name());
        row.add(e.summary());
        row.add(e.picture());
        row.add(e.invented());
        row.add(e.contributor());
        row.add(e.publishedAt().atOffset(ZoneOffset.UTC));
        row.add(e.effectPpm());
        row.add(e.effect());
        row.add(e.prominence());
        row.add(signature);
        row.add(SearchIndexer.VERSION);
        row.add(change);
        if (postgres) {
            row.add(PostgresWordIndexRepository.vector(e.words()));
        }
        return row.toArray();
    }
}
