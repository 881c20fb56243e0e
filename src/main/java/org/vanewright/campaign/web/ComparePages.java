package org.vanewright.campaign.web;

import jakarta.servlet.http.HttpServletResponse;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.campaign.reduction.Outcome;
import org.vanewright.campaign.reduction.Outcomes;
import org.vanewright.engineering.input.InvalidInputException;

/** Configurations side by side, of one aircraft or of several; what is compared stands in the address. */
@Controller
class ComparePages {
    private final Outcomes outcomes;

    ComparePages(Outcomes outcomes) {
        this.outcomes = outcomes;
    }

    /**
     * @param of references such as {@code clean-stall@2.B}
     * @param layout adds every result of a layout
     */
    @GetMapping("/compare")
    String compare(
            @RequestParam(name = "of", required = false) @Nullable List<String> of,
            @RequestParam(name = "layout", required = false) @Nullable String layout,
            HttpServletResponse response,
            Model model) {
        List<Outcome> chosen = List.of();
        try {
            chosen = chosen(of, layout);
        } catch (InvalidInputException e) {
            model.addAttribute("problems", e.problems());
            response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
        }
        model.addAttribute("offered", outcomes.offered());
        model.addAttribute("chosen", chosen.stream().map(Outcome::reference).toList());
        model.addAttribute("table", CompareView.of(chosen));
        model.addAttribute("most", Outcomes.MOST);
        return "campaign/compare";
    }

    private List<Outcome> chosen(@Nullable List<String> of, @Nullable String layout) {
        return layout == null ? outcomes.of(of == null ? List.of() : of) : outcomes.ofLayout(layout);
    }

    @GetMapping(path = "/compare.csv", produces = "text/csv")
    ResponseEntity<String> csv(@RequestParam(name = "of", required = false) @Nullable List<String> of) {
        return ResponseEntity.ok()
                .contentType(new MediaType("text", "csv", StandardCharsets.UTF_8))
                .header("Content-Disposition", "attachment; filename=\"comparison.csv\"")
                .body(CompareView.csv(outcomes.of(of == null ? List.of() : of)));
    }
}
