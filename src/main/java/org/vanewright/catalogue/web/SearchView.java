package org.vanewright.catalogue.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.vanewright.catalogue.search.SearchHit;

/**
 * A search as its page shows it. Every address holds the whole query.
 *
 * @param heading how much was found, in words
 * @param cards results of this page
 * @param chosen values that narrow it, each with the address without it
 * @param facets with the values there are
 * @param sorts orders to choose from
 * @param corrections what was taken for words that nothing has
 * @param offers where nothing was found: what would be found with one facet less, or none
 * @param first whether this is the first page
 * @param start address of the first page
 * @param next address of the next page; null on the last
 * @param clear address of the same words without any facet
 * @param weighed how many of the newest were ordered by relevance; null where all were
 */
public record SearchView(
        String heading,
        List<Card> cards,
        List<Link> chosen,
        List<FacetView> facets,
        List<Link> sorts,
        List<String> corrections,
        List<Link> offers,
        boolean first,
        String start,
        @Nullable String next,
        String clear,
        @Nullable String weighed) {
    /**
     * One result.
     *
     * @param kind what it is, in words
     * @param address of its page
     */
    public record Card(SearchHit hit, String kind, String address) {}

    /**
     * Somewhere to go.
     *
     * @param label what it is
     * @param count how much would be found there; null where that is not said
     * @param address of it
     * @param current whether it is chosen
     */
    public record Link(String label, @Nullable Integer count, String address, boolean current) {}

    /**
     * A facet with its values.
     *
     * @param key as in addresses
     * @param open whether its values are shown from the start
     */
    public record FacetView(String key, String label, List<Link> values, boolean open) {}

    static String address(Map<String, List<String>> parameters, @Nullable String after) {
        String query = parameters.entrySet().stream()
                .flatMap(e -> e.getValue().stream().map(v -> e.getKey() + "=" + encoded(v)))
                .collect(Collectors.joining("&"));
        String more = after == null ? "" : (query.isEmpty() ? "" : "&") + "after=" + encoded(after);
        return query.isEmpty() && more.isEmpty() ? "/search" : "/search?" + query + more;
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
