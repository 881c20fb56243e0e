package org.vanewright.catalogue.web;

import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.catalogue.search.SearchQuery;
import org.vanewright.catalogue.search.SearchService;
import org.vanewright.engineering.input.Checks;
import org.vanewright.platform.page.Units;

/** The search over everything published. */
@Controller
class SearchPages {
    private final SearchService search;
    private final SearchViews views;

    SearchPages(SearchService search, SearchViews views) {
        this.search = search;
        this.views = views;
    }

    /** What cannot be used is said beside the field; nothing is searched then. */
    @GetMapping("/search")
    String search(
            @RequestParam(name = "q", required = false) @Nullable String q,
            @RequestParam(name = "facet", required = false) @Nullable List<String> facets,
            @RequestParam(name = "sort", required = false) @Nullable String sort,
            @RequestParam(name = "after", required = false) @Nullable String after,
            @RequestAttribute("units") Units units,
            HttpServletResponse response,
            Model model) {
        Checks checks = new Checks();
        SearchQuery query = SearchQuery.read(q, facets, sort, after, checks);
        model.addAttribute("longest", SearchQuery.LONGEST_TEXT);
        model.addAttribute("query", query);
        model.addAttribute("problems", checks.problems());
        if (!checks.isClean()) {
            response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
            model.addAttribute("typed", shown(q));
            return "catalogue/search";
        }
        model.addAttribute("typed", query.text());
        model.addAttribute("wordless", query.wordless());
        model.addAttribute("found", views.of(search.search(query, SearchService.PER_PAGE), units));
        return "catalogue/search";
    }

    /** What was typed, to be put right, without what a page cannot hold. */
    private static String shown(@Nullable String q) {
        if (q == null) {
            return "";
        }
        String readable = q.codePoints()
                .filter(c -> !Character.isISOControl(c) && Character.getType(c) != Character.SURROGATE)
                .limit(2 * SearchQuery.LONGEST_TEXT)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
        return readable;
    }
}
