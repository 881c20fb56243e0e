package org.vanewright.method.web;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.vanewright.engineering.flow.PublishedCheck.HowKnown;
import org.vanewright.method.ComputedCheck;
import org.vanewright.method.ComputedChecks;

/** What is computed, beside what was published. */
@Controller
class MethodPages {
    private final ComputedChecks checks;

    MethodPages(ComputedChecks checks) {
        this.checks = checks;
    }

    /** Words for the page. */
    public static final class Words {
        /** As many digits as a comparison needs. */
        public String figure(double value) {
            String text = String.format(Locale.ROOT, "%.5g", value);
            return text.contains("e") || !text.contains(".") ? text : text.replaceAll("0+$", "").replaceAll("\\.$", "");
        }

        public String known(HowKnown known) {
            return switch (known) {
                case READ -> "read in the source";
                case SECOND_HAND -> "quoted second-hand";
                case FROM_MEMORY -> "from memory, not read again";
                case DERIVED -> "follows from the source’s formula";
            };
        }
    }

    @GetMapping("/about/method")
    String method(Model model) {
        Map<String, List<ComputedCheck>> groups = checks.byGroup();
        List<ComputedCheck> all = groups.values().stream().flatMap(List::stream).toList();
        model.addAttribute("groups", groups);
        model.addAttribute("count", all.size());
        model.addAttribute("agreeing", all.stream().filter(ComputedCheck::agrees).count());
        model.addAttribute("words", new Words());
        return "method/method";
    }
}
