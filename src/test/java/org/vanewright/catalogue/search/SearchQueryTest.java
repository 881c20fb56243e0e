package org.vanewright.catalogue.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.catalogue.Facet;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;

class SearchQueryTest {
    private static List<String> refused(
            @Nullable String q, @Nullable List<String> facets, @Nullable String sort, @Nullable String after) {
        Checks checks = new Checks();
        SearchQuery.read(q, facets, sort, after, checks);
        return checks.problems().stream().map(FieldProblem::field).toList();
    }

    @Test
    void theAddressHoldsTheWholeQuery() {
        Checks checks = new Checks();
        SearchQuery query = SearchQuery.read(
                "  two words ", List.of("chord:900-1200", "kind:layout", "kind:device"), "effect", null, checks);
        assertThat(checks.problems()).isEmpty();
        assertThat(query.parameters())
                .containsExactly(
                        Map.entry("q", List.of("two words")),
                        Map.entry("facet", List.of("kind:layout", "kind:device", "chord:900-1200")),
                        Map.entry("sort", List.of("effect")));
        assertThat(query.toggled(Facet.KIND, "device").facetKeys()).containsExactly("kind:layout", "chord:900-1200");
        assertThat(query.toggled(Facet.FLOWN, "flown").facetKeys()).contains("flown:flown");
        assertThat(query.without(Facet.KIND).facetKeys()).containsExactly("chord:900-1200");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\u0000b", "a\nb", "a\u202eb", "a\u0007", "\ud800"})
    void controlCharactersAreRefused(String q) {
        assertThat(refused(q, null, null, null)).containsExactly("q");
    }

    @Test
    void tooMuchIsRefused() {
        assertThat(refused("x".repeat(201), null, null, null)).containsExactly("q");
        String words = IntStream.range(0, 13).mapToObj(i -> "w" + i).collect(Collectors.joining(" "));
        assertThat(refused(words, null, null, null)).containsExactly("q");
        assertThat(refused(null, Collections.nCopies(41, "kind:layout"), null, null))
                .containsExactly("facet");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "kind", "colour:red", "kind:", "kind:A B", "kind:'", "KIND:layout", ":", "kind:\u0000"})
    void unknownFacetsAreRefused(String facet) {
        assertThat(refused(null, List.of(facet), null, null)).containsExactly("facet");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"x", "!!", "MSAyIDM=", "MSAyIDM ", "LTk5OTk5OTk5OTk5OTkgMSAx", "MSA5OTk5OTk5OTk5OTk5OTk5OTkgMQ"})
    void aCursorOfOnesOwnMakingIsRefused(String after) {
        assertThat(refused(null, null, null, after)).containsExactly("after");
    }

    @Test
    void aCursorComesBackAsItWas() {
        SearchCursor cursor = new SearchCursor(-1, Instant.parse("2026-03-01T09:00:00.123456Z"), 17);
        assertThat(SearchCursor.decode(cursor.encode())).contains(cursor);
    }

    @Test
    void unknownOrdersAreRefused() {
        assertThat(refused(null, null, "random", null)).containsExactly("sort");
    }
}
