package org.vanewright.retention.web;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.context.request.WebRequest;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.GeneratedFile;
import org.vanewright.platform.form.Form;
import org.vanewright.retention.RetentionQuery;
import org.vanewright.retention.RetentionService;
import org.vanewright.retention.RetentionStudy;

/** How long devices stay on, across the club. */
@Controller
class RetentionPages {
    private final RetentionService retention;
    private final Downloads downloads;

    /** As long as the service keeps the study. */
    private final Cache<RetentionStudy, RetentionView> views =
            Caffeine.newBuilder().weakKeys().maximumSize(20).build();

    RetentionPages(RetentionService retention, Downloads downloads) {
        this.retention = retention;
        this.downloads = downloads;
    }

    @GetMapping("/retention")
    String show(HttpServletRequest asked, HttpServletResponse response, Model model) {
        Form form = RetentionAsked.form(asked);
        RetentionQuery query = RetentionAsked.quiet(form);
        if (query == null) {
            response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
        } else {
            RetentionStudy study = retention.study(query);
            model.addAttribute("study", study);
            model.addAttribute("view", views.get(study, RetentionView::of));
            model.addAttribute("parameters", RetentionAsked.parameters(query));
        }
        model.addAttribute("form", form);
        model.addAttribute("byOptions", RetentionAsked.BY);
        model.addAttribute("countOptions", RetentionAsked.COUNT);
        model.addAttribute("method", RetentionStudy.METHOD);
        model.addAttribute("sources", RetentionStudy.SOURCES);
        model.addAttribute("validity", RetentionStudy.VALIDITY);
        return "retention/show";
    }

    /** Every device behind it, one a line. */
    @GetMapping("/retention.csv")
    ResponseEntity<byte[]> table(HttpServletRequest asked, WebRequest request) {
        RetentionStudy study = retention.study(RetentionAsked.query(RetentionAsked.form(asked)));
        return downloads.send(request, GeneratedFile.csv("retention.csv", RetentionCsv.write(study)), false);
    }
}
