package org.vanewright.catalogue.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.vanewright.catalogue.Facet;
import org.vanewright.catalogue.FacetValue;
import org.vanewright.engineering.input.Checks;

/**
 * What was asked for.
 *
 * @param text as typed, without blanks around it
 * @param choices values by facet: of one facet any will do, of each facet one must be there
 * @param sort order
 * @param after where the page before ended; null for the first
 */
public record SearchQuery(
        String text,
        Map<Facet, Set<String>> choices,
        SearchSort sort,
        @Nullable SearchCursor after) {
    /** Characters that may be typed. */
    public static final int LONGEST_TEXT = 200;

    /** Words that are looked for at a time. */
    static final int MOST_WORDS = 12;

    private static final int MOST_CHOICES = 40;

    /**
     * From the parameters of an address. Problems are named as the parameters are; what has one is left out.
     *
     * @param facets such as {@code chord:1200-1500}
     */
    public static SearchQuery read(
            @Nullable String q,
            @Nullable List<String> facets,
            @Nullable String sort,
            @Nullable String after,
            Checks checks) {
        return new SearchQuery(
                text(q, checks),
                choices(facets == null ? List.of() : facets, checks),
                sort == null || sort.isEmpty() ? SearchSort.RELEVANCE : sort(sort, checks),
                after == null || after.isEmpty() ? null : cursor(after, checks));
    }

    private static String text(@Nullable String q, Checks checks) {
        String text = q == null ? "" : q.strip();
        if (text.isEmpty()) {
            return "";
        }
        boolean ok = checks.text("q", text, LONGEST_TEXT)
                && checks.require(looked(text).size() <= MOST_WORDS, "q", text, "at most " + MOST_WORDS + " words");
        return ok ? text : "";
    }

    private static Map<Facet, Set<String>> choices(List<String> facets, Checks checks) {
        Map<Facet, Set<String>> choices = new EnumMap<>(Facet.class);
        if (!checks.require(
                facets.size() <= MOST_CHOICES,
                "facet",
                facets.size() + " times",
                "at most " + MOST_CHOICES + " times")) {
            return choices;
        }
        for (String text : facets) {
            int colon = text.indexOf(':');
            Optional<Facet> facet = colon < 0 ? Optional.empty() : Facet.of(text.substring(0, colon));
            boolean ok = facet.isPresent() && FacetValue.isChoice(text.substring(colon + 1));
            if (checks.require(ok, "facet", text, "a facet and its value, such as kind:layout")) {
                choices.computeIfAbsent(facet.orElseThrow(), f -> new LinkedHashSet<>())
                        .add(text.substring(colon + 1));
            }
        }
        return choices;
    }

    private static SearchSort sort(String key, Checks checks) {
        Optional<SearchSort> sort = SearchSort.of(key);
        checks.require(sort.isPresent(), "sort", key, "relevance, date or effect");
        return sort.orElse(SearchSort.RELEVANCE);
    }

    private static @Nullable SearchCursor cursor(String text, Checks checks) {
        Optional<SearchCursor> cursor = SearchCursor.decode(text);
        checks.require(cursor.isPresent(), "after", text, "what an earlier page gave, unchanged");
        return cursor.orElse(null);
    }

    /** The words that are looked for: fillers only where there is nothing else. */
    List<String> words() {
        return looked(text);
    }

    private static List<String> looked(String text) {
        List<String> all = Words.of(text).stream().distinct().toList();
        List<String> telling = all.stream().filter(w -> !Words.isFiller(w)).toList();
        return telling.isEmpty() ? all : telling;
    }

    /** Whether something was typed in which there is no word. */
    public boolean wordless() {
        return !text.isEmpty() && words().isEmpty();
    }

    /** The values chosen, as in addresses, in the order of the facets. */
    public List<String> facetKeys() {
        List<String> keys = new ArrayList<>();
        choices.forEach((facet, values) -> values.forEach(v -> keys.add(facet.key() + ":" + v)));
        return List.copyOf(keys);
    }

    public boolean has(Facet facet, String choice) {
        return choices.getOrDefault(facet, Set.of()).contains(choice);
    }

    /** The same from its first page, with a value more or less. */
    public SearchQuery toggled(Facet facet, String choice) {
        Map<Facet, Set<String>> changed = copied();
        Set<String> values = changed.computeIfAbsent(facet, f -> new LinkedHashSet<>());
        if (!values.remove(choice)) {
            values.add(choice);
        }
        if (values.isEmpty()) {
            changed.remove(facet);
        }
        return new SearchQuery(text, changed, sort, null);
    }

    /** The same from its first page without a facet. */
    public SearchQuery without(Facet facet) {
        Map<Facet, Set<String>> changed = copied();
        changed.remove(facet);
        return new SearchQuery(text, changed, sort, null);
    }

    /** The same from its first page with another text. */
    public SearchQuery withText(String other) {
        return new SearchQuery(other, choices, sort, null);
    }

    private Map<Facet, Set<String>> copied() {
        Map<Facet, Set<String>> copy = new EnumMap<>(Facet.class);
        choices.forEach((facet, values) -> copy.put(facet, new LinkedHashSet<>(values)));
        return copy;
    }

    /** Parameters of the address that asks for it, without the page; absent where they are as usual. */
    public Map<String, List<String>> parameters() {
        Map<String, List<String>> parameters = new LinkedHashMap<>();
        if (!text.isEmpty()) {
            parameters.put("q", List.of(text));
        }
        if (!choices.isEmpty()) {
            parameters.put("facet", facetKeys());
        }
        if (sort != SearchSort.RELEVANCE) {
            parameters.put("sort", List.of(sort.key()));
        }
        return Collections.unmodifiableMap(parameters);
    }
}
