package org.vanewright.catalogue.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.roaringbitmap.FastAggregation;
import org.roaringbitmap.RoaringBitmap;
import org.springframework.stereotype.Service;
import org.vanewright.catalogue.FacetValue;
import org.vanewright.catalogue.search.WordIndexRepository.Near;

/** Finds what is published. A search takes {@value #MOST_STATEMENTS} statements at most, whatever is found. */
@Service
public class SearchService {
    /** Results on a page, unless somebody asks for another number. */
    public static final int PER_PAGE = 12;

    /** Most results that a page may have. */
    public static final int LARGEST_PAGE = 100;

    /** Most statements for one search, four of them only after something has changed. */
    static final int MOST_STATEMENTS = 9;

    /** Of so many of the newest the words are weighed; where more fit, the words say little. */
    static final int WEIGHED = 1000;

    private static final int MOST_CORRECTED = 3;
    private static final int CANDIDATES = 40;

    private final SearchRepository entries;
    private final WordIndexRepository words;
    private final EntryIndex index;
    private final TermIndex terms;

    SearchService(SearchRepository entries, WordIndexRepository words) {
        this.entries = entries;
        this.words = words;
        this.index = new EntryIndex(entries);
        this.terms = new TermIndex(words);
    }

    /** What is looked for, where the words that nothing has are put right. */
    private record Wording(
            List<Term> terms, @Nullable RoaringBitmap entries, List<SearchResult.Correction> corrections) {
        /** Entries that fit. */
        RoaringBitmap fit(FacetIndex index) {
            return entries == null ? index.all().clone() : RoaringBitmap.and(entries, index.all());
        }
    }

    /** What was counted, and the first entries in the order asked for. */
    private record Counted(FacetCounts counts, List<SearchResult.FacetGroup> groups, List<Integer> first) {}

    /** Reads what is kept of all entries, so that nobody who searches has to wait for it. */
    void prepare() {
        index.at(entries.changes(), FacetIndex::all);
    }

    /** @param limit results on a page, from 1 to {@value #LARGEST_PAGE} */
    public SearchResult search(SearchQuery query, int limit) {
        long changes = entries.changes();
        Wording wording =
                query.wordless() ? new Wording(List.of(), new RoaringBitmap(), List.of()) : wording(query, changes);
        SearchSort sort =
                wording.terms().isEmpty() && query.sort() == SearchSort.RELEVANCE ? SearchSort.DATE : query.sort();
        List<FacetValue> names = names(query, changes);
        Counted counted = index.at(changes, all -> {
            FacetCounts counts = new FacetCounts(wording.fit(all), all, query.choices());
            List<Integer> first = sort == SearchSort.RELEVANCE
                    ? all.first(counts.found(), sort, null, WEIGHED)
                    : all.first(counts.found(), sort, query.after(), limit + 1);
            return new Counted(counts, counts.groups(names), first);
        });
        return result(query, limit, sort, wording, counted);
    }

    private Wording wording(SearchQuery query, long changes) {
        List<String> typed = query.words();
        if (typed.isEmpty()) {
            return new Wording(List.of(), null, List.of());
        }
        List<Term> asked = typed.stream().map(Term::of).toList();
        List<RoaringBitmap> each = terms.each(asked, changes);
        RoaringBitmap found = FastAggregation.and(each.iterator());
        List<String> unknown = index.at(
                changes,
                all -> IntStream.range(0, typed.size())
                        .filter(i -> !RoaringBitmap.intersects(each.get(i), all.all()))
                        .mapToObj(typed::get)
                        .toList());
        List<SearchResult.Correction> corrections = corrections(unknown);
        if (corrections.isEmpty()) {
            return new Wording(asked, found, corrections);
        }
        List<Term> instead = corrected(typed, corrections);
        return new Wording(
                instead, FastAggregation.and(terms.each(instead, changes).iterator()), corrections);
    }

    private SearchResult result(SearchQuery query, int limit, SearchSort sort, Wording wording, Counted counted) {
        FacetCounts counts = counted.counts();
        List<SearchHit> hits = hits(query, limit, sort, wording, counted);
        boolean more = hits.size() > limit;
        List<SearchHit> shown = more ? hits.subList(0, limit) : hits;
        return new SearchResult(
                query,
                counts.total(),
                List.copyOf(shown),
                counted.groups(),
                counts.withoutAny() == 0 ? List.of() : wording.corrections(),
                counts.total() == 0 ? counts.loosened() : List.of(),
                counts.withoutAny(),
                more ? shown.get(limit - 1).cursor().encode() : null,
                sort == SearchSort.RELEVANCE && counts.total() > WEIGHED ? WEIGHED : null);
    }

    private List<SearchHit> hits(SearchQuery query, int limit, SearchSort sort, Wording wording, Counted counted) {
        List<Integer> first = counted.first();
        if (first.isEmpty()) {
            return List.of();
        }
        if (sort == SearchSort.RELEVANCE) {
            return entries.best(first, words.weights(wording.terms()), query.after(), limit + 1);
        }
        Map<Long, SearchHit> hits =
                entries.hits(first, sort).stream().collect(Collectors.toMap(SearchHit::id, Function.identity()));
        return first.stream()
                .map(id -> hits.get(id.longValue()))
                // One may have gone since.
                .filter(Objects::nonNull)
                .toList();
    }

    /** Values that were chosen and that nothing has now are called by the names they had. */
    private List<FacetValue> names(SearchQuery query, long changes) {
        List<String> missing = index.at(
                changes,
                all -> query.choices().entrySet().stream()
                        .flatMap(e -> e.getValue().stream().filter(choice -> all.value(e.getKey(), choice) == null))
                        .toList());
        return missing.isEmpty() ? List.of() : entries.valuesOf(missing);
    }

    /** Other spellings of the words that nothing has; empty where one of them has none. */
    private List<SearchResult.Correction> corrections(List<String> unknown) {
        if (unknown.isEmpty()
                || unknown.size() > MOST_CORRECTED
                || unknown.stream().anyMatch(Words::hasDigit)) {
            return List.of();
        }
        Map<String, List<String>> near = words.near(unknown, CANDIDATES).stream()
                .collect(Collectors.groupingBy(Near::typed, Collectors.mapping(Near::word, Collectors.toList())));
        List<SearchResult.Correction> corrections = new ArrayList<>();
        for (String word : unknown) {
            List<String> nearest = Spelling.nearest(word, near.getOrDefault(word, List.of()));
            if (nearest.isEmpty()) {
                return List.of();
            }
            corrections.add(new SearchResult.Correction(word, nearest));
        }
        return List.copyOf(corrections);
    }

    private static List<Term> corrected(List<String> typed, List<SearchResult.Correction> corrections) {
        return typed.stream()
                .map(word -> corrections.stream()
                        .filter(c -> c.typed().equals(word))
                        .findFirst()
                        .map(c -> Term.instead(word, c.near()))
                        .orElseGet(() -> Term.of(word)))
                .toList();
    }
}
