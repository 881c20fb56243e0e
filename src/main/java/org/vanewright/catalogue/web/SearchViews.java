package org.vanewright.catalogue.web;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.vanewright.catalogue.Bands;
import org.vanewright.catalogue.Facet;
import org.vanewright.catalogue.FacetValue;
import org.vanewright.catalogue.SearchSource;
import org.vanewright.catalogue.search.SearchHit;
import org.vanewright.catalogue.search.SearchQuery;
import org.vanewright.catalogue.search.SearchResult;
import org.vanewright.catalogue.search.SearchSort;
import org.vanewright.platform.page.Units;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;

/** Puts what was found into words and addresses. */
@Component
class SearchViews {
    /** Facets that most people narrow by are open from the start. */
    private static final Set<Facet> OPEN = Set.of(Facet.KIND, Facet.BASIS, Facet.FLOWN);

    private final Records records;
    private final List<SearchSource<?>> sources;

    SearchViews(Records records, List<SearchSource<?>> sources) {
        this.records = records;
        this.sources = List.copyOf(sources);
    }

    SearchView of(SearchResult result, Units units) {
        SearchQuery query = result.query();
        return new SearchView(
                heading(result),
                result.hits().stream().map(this::card).toList(),
                chosen(result, units),
                result.facets().stream().map(g -> facet(g, query, units)).toList(),
                sorts(query),
                result.corrections().stream()
                        .map(c -> "Nothing has the word “" + c.typed() + "”; shown is what has "
                                + String.join(" or ", quoted(c.near())) + ".")
                        .toList(),
                offers(result),
                query.after() == null,
                address(query),
                result.next() == null ? null : SearchView.address(query.parameters(), result.next()),
                address(new SearchQuery(query.text(), Map.of(), query.sort(), null)),
                result.weighed() == null
                        ? null
                        : "More fit than can be weighed: of the newest " + number(result.weighed())
                                + ", those that fit best come first.");
    }

    private static List<String> quoted(List<String> words) {
        return words.stream().map(w -> "“" + w + "”").toList();
    }

    private static String heading(SearchResult result) {
        String text = result.query().text();
        String count = switch (result.total()) {
            case 0 -> "Nothing found";
            case 1 -> "One result";
            default -> number(result.total()) + " results";
        };
        return text.isEmpty() ? count : count + " for “" + text + "”";
    }

    private static String number(int count) {
        return String.format(Locale.ENGLISH, "%,d", count);
    }

    private SearchView.Card card(SearchHit hit) {
        String plural = records.ofKind(hit.kind()).map(RecordService::plural).orElse(hit.kind());
        return new SearchView.Card(hit, label(hit.kind()), "/" + plural + "/" + hit.slug());
    }

    /** What people call the kind. */
    String label(String kind) {
        return sources.stream()
                .filter(s -> s.kind().equals(kind))
                .findFirst()
                .map(SearchSource::label)
                .orElse(kind);
    }

    /** The address of the record's page. */
    String address(SearchHit hit) {
        return card(hit).address();
    }

    private static List<SearchView.Link> chosen(SearchResult result, Units units) {
        return result.facets().stream()
                .flatMap(g -> g.values().stream()
                        .filter(SearchResult.ValueCount::chosen)
                        .map(v -> new SearchView.Link(
                                g.facet().label() + ": " + label(v.value(), units),
                                null,
                                toggled(result.query(), v.value()),
                                true)))
                .toList();
    }

    private static SearchView.FacetView facet(SearchResult.FacetGroup group, SearchQuery query, Units units) {
        List<SearchView.Link> values = group.values().stream()
                .map(v ->
                        new SearchView.Link(label(v.value(), units), v.count(), toggled(query, v.value()), v.chosen()))
                .toList();
        boolean open = OPEN.contains(group.facet()) || values.stream().anyMatch(SearchView.Link::current);
        return new SearchView.FacetView(group.facet().key(), group.facet().label(), values, open);
    }

    /** Chords in the reader's units; whatever else has a unit is written in it everywhere. */
    private static String label(FacetValue value, Units units) {
        return value.facet() == Facet.CHORD && !units.metric()
                ? Bands.CHORD.words(value.place(), units::length)
                : value.label();
    }

    private static String toggled(SearchQuery query, FacetValue value) {
        return address(query.toggled(value.facet(), value.choice()));
    }

    private static List<SearchView.Link> sorts(SearchQuery query) {
        return Arrays.stream(SearchSort.values())
                .map(s -> new SearchView.Link(
                        s.label(),
                        null,
                        address(new SearchQuery(query.text(), query.choices(), s, null)),
                        s == query.sort()))
                .toList();
    }

    private static List<SearchView.Link> offers(SearchResult result) {
        SearchQuery query = result.query();
        List<SearchView.Link> one = result.loosened().stream()
                .map(l -> new SearchView.Link(
                        "Without “" + l.facet().label() + "”", l.total(), address(query.without(l.facet())), false))
                .toList();
        boolean several = query.choices().size() > 1 || one.isEmpty();
        boolean any = result.total() == 0 && result.withoutFacets() > 0 && several;
        SearchQuery bare = new SearchQuery(query.text(), Map.of(), query.sort(), null);
        return Stream.concat(
                        one.stream(),
                        any
                                ? Stream.of(new SearchView.Link(
                                        "Without any of them", result.withoutFacets(), address(bare), false))
                                : Stream.empty())
                .toList();
    }

    private static String address(SearchQuery query) {
        return SearchView.address(query.parameters(), null);
    }
}
