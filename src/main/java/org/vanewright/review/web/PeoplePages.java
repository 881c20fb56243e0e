package org.vanewright.review.web;

import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.vanewright.record.RecordPage;
import org.vanewright.review.Contributions;

/** Who has published what. */
@Controller
class PeoplePages {
    private static final int PER_PAGE = 100;

    private final Contributions contributions;

    PeoplePages(Contributions contributions) {
        this.contributions = contributions;
    }

    @GetMapping("/people")
    String people(@RequestParam(name = "cursor", required = false) @Nullable String cursor, Model model) {
        RecordPage<Contributions.Contributor> page = contributions.page(cursor, PER_PAGE);
        model.addAttribute("people", page.items());
        model.addAttribute("first", cursor == null);
        model.addAttribute("nextCursor", page.nextCursor());
        return "review/people";
    }

    @GetMapping("/people/{id:[0-9a-zA-Z-]{1,36}}")
    String person(@PathVariable("id") String id, Model model) {
        model.addAttribute(
                "p", contributions.of(id).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND)));
        return "review/person";
    }
}
