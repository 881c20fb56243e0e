package org.vanewright.catalogue.search;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.vanewright.catalogue.search.SearchRepository.Group;
import org.vanewright.catalogue.search.WordIndexRepository.Match;
import org.vanewright.catalogue.search.WordIndexRepository.Near;

/** Finds what is published. A search takes {@value #MOST_STATEMENTS} statements at most, whatever is found. */
@Service
public class SearchService {
    /** Results on a page, unless somebody asks for another number. */
    public static final int PER_PAGE = 12;

    /** Most results that a page may have. */
    public static final int LARGEST_PAGE = 100;

    /** Most statements for one search. */
    static final int MOST_STATEMENTS = 8;

    /** Of so many of the newest the words are weighed; where more fit, the words say little. */
    static final int WEIGHED = 2000;

    private static final int MOST_CORRECTED = 3;
    private static final int CANDIDATES = 40;
    private static final long KEPT_GROUPS = 400_000;
    private static final long KEPT_SIGNATURES = 200_000;

    private final SearchRepository entries;
    private final WordIndexRepository words;

    private final FacetRegister register = new FacetRegister();

    /** Groups by words, until any entry changes. */
    private final Cache<String, List<FacetCounts.Group>> groups = Caffeine.newBuilder()
            .maximumWeight(KEPT_GROUPS)
            .weigher((String key, List<FacetCounts.Group> found) -> 10 + found.size())
            .build();

    /** A signature never changes. */
    private final Cache<Long, int[]> signatures =
            Caffeine.newBuilder().maximumSize(KEPT_SIGNATURES).build();

    SearchService(SearchRepository entries, WordIndexRepository words) {
        this.entries = entries;
        this.words = words;
    }

    /** @param limit results on a page, from 1 to {@value #LARGEST_PAGE} */
    public SearchResult search(SearchQuery query, int limit) {
        if (query.wordless()) {
            return nothing(query);
        }
        long changes = entries.changes();
        List<String> typed = query.words();
        List<Term> terms = typed.stream().map(Term::of).toList();
        Match match = terms.isEmpty() ? Match.ANYTHING : words.match(terms);
        List<FacetCounts.Group> found = groups(changes, terms, match);
        List<SearchResult.Correction> corrections = List.of();
        if (found.isEmpty() && !terms.isEmpty()) {
            corrections = corrections(typed);
            if (!corrections.isEmpty()) {
                terms = corrected(typed, corrections);
                match = words.match(terms);
                found = groups(changes, terms, match);
            }
        }
        nameChoices(query);
        FacetCounts counts = FacetCounts.of(found, register.values(), query.choices());
        return result(query, limit, match, terms.isEmpty(), counts, corrections);
    }

    private SearchResult nothing(SearchQuery query) {
        FacetCounts counts = FacetCounts.of(List.of(), List.of(), query.choices());
        return new SearchResult(query, 0, List.of(), counts.groups(), List.of(), List.of(), 0, null, null);
    }

    private SearchResult result(
            SearchQuery query,
            int limit,
            Match match,
            boolean everything,
            FacetCounts counts,
            List<SearchResult.Correction> corrections) {
        int total = counts.total();
        SearchSort sort = everything && query.sort() == SearchSort.RELEVANCE ? SearchSort.DATE : query.sort();
        List<SearchHit> hits = total == 0 ? List.of() : entries.page(match, query, sort, WEIGHED, limit + 1);
        boolean more = hits.size() > limit;
        List<SearchHit> shown = more ? hits.subList(0, limit) : hits;
        return new SearchResult(
                query,
                total,
                List.copyOf(shown),
                counts.groups(),
                counts.withoutAny() == 0 ? List.of() : corrections,
                total == 0 ? counts.loosened() : List.of(),
                counts.withoutAny(),
                more ? shown.get(limit - 1).cursor().encode() : null,
                sort == SearchSort.RELEVANCE && total > WEIGHED ? WEIGHED : null);
    }

    private List<FacetCounts.Group> groups(long changes, List<Term> terms, Match match) {
        return groups.get(changes + " " + Term.key(terms), key -> counted(entries.groups(match)));
    }

    private List<FacetCounts.Group> counted(List<Group> found) {
        Map<Long, int[]> known = known(found.stream().map(Group::signature).toList());
        return found.stream()
                .map(g -> new FacetCounts.Group(known.getOrDefault(g.signature(), new int[0]), g.entries()))
                .toList();
    }

    private Map<Long, int[]> known(List<Long> ids) {
        Map<Long, int[]> known = new HashMap<>(signatures.getAllPresent(ids));
        if (known.size() == ids.size()) {
            return known;
        }
        // One at a time: after a start they may be a hundred thousand, and whoever waits finds them here.
        synchronized (signatures) {
            known.putAll(signatures.getAllPresent(ids));
            List<Long> missing =
                    ids.stream().filter(id -> !known.containsKey(id)).toList();
            if (!missing.isEmpty()) {
                Set<Long> wanted = Set.copyOf(missing);
                entries.signatures(missing, (id, values) -> {
                    int[] numbers = register.numbers(values);
                    signatures.put(id, numbers);
                    if (wanted.contains(id)) {
                        known.put(id, numbers);
                    }
                });
            }
        }
        return known;
    }

    /** Values that were chosen are called by their names even where nothing that was found has them. */
    private void nameChoices(SearchQuery query) {
        List<String> missing = query.facetKeys().stream()
                .filter(key -> !register.knows(key))
                .map(key -> key.substring(key.indexOf(':') + 1))
                .toList();
        if (!missing.isEmpty()) {
            register.numbers(entries.valuesOf(missing));
        }
    }

    /** Other spellings of the words that nothing has; empty where one of them has none. */
    private List<SearchResult.Correction> corrections(List<String> typed) {
        Set<String> known = entries.known(typed);
        List<String> unknown = typed.stream().filter(w -> !known.contains(w)).toList();
        if (unknown.isEmpty() || unknown.size() > MOST_CORRECTED) {
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
