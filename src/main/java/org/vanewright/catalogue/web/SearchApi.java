package org.vanewright.catalogue.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.tags.Tag;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.catalogue.search.SearchQuery;
import org.vanewright.catalogue.search.SearchService;
import org.vanewright.engineering.input.Checks;

/** The search as JSON. */
@RestController
@RequestMapping("/api/v1/search")
@Tag(name = "Search", description = "Everything published, by words and facets.")
class SearchApi {
    private final SearchService search;
    private final SearchViews views;

    SearchApi(SearchService search, SearchViews views) {
        this.search = search;
        this.views = views;
    }

    /** The same parameters as those of the page. */
    @Operation(summary = "Find published records by words and facets")
    @GetMapping
    SearchBody search(
            @Parameter(description = "Words, each of which must be there in any of its forms, or begin a word that is")
                    @RequestParam(name = "q", required = false)
                    @Nullable
                    String q,
            @Parameter(description = "A facet and its value, such as kind:layout; of one facet any value will do")
                    @RequestParam(name = "facet", required = false)
                    @Nullable
                    List<String> facet,
            @Parameter(description = "relevance, date or effect")
                    @RequestParam(name = "sort", required = false)
                    @Nullable
                    String sort,
            @Parameter(description = "The nextAfter of the page before")
                    @RequestParam(name = "after", required = false)
                    @Nullable
                    String after,
            @Parameter(description = "Most results wanted, 1 to 100")
                    @RequestParam(name = "limit", defaultValue = "" + SearchService.PER_PAGE)
                    int limit) {
        Checks checks = new Checks();
        SearchQuery query = SearchQuery.read(q, facet, sort, after, checks);
        checks.require(
                limit >= 1 && limit <= SearchService.LARGEST_PAGE,
                "limit",
                limit,
                "a whole number from 1 to " + SearchService.LARGEST_PAGE);
        checks.throwIfAny();
        return SearchBody.of(search.search(query, limit), views);
    }
}
