package org.vanewright.evidence.web;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.context.request.WebRequest;
import org.vanewright.evidence.EvidenceQuery;
import org.vanewright.evidence.EvidenceService;
import org.vanewright.evidence.EvidenceStudy;
import org.vanewright.evidence.Summary;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.GeneratedFile;
import org.vanewright.platform.form.Form;

/** What published campaigns have shown, all together. */
@Controller
class EvidencePages {
    private final EvidenceService evidence;
    private final Downloads downloads;

    /** As long as the service keeps the study. */
    private final Cache<EvidenceStudy, EvidenceView> views =
            Caffeine.newBuilder().weakKeys().maximumSize(20).build();

    EvidencePages(EvidenceService evidence, Downloads downloads) {
        this.evidence = evidence;
        this.downloads = downloads;
    }

    @GetMapping("/evidence")
    String show(HttpServletRequest asked, HttpServletResponse response, Model model) {
        Form form = EvidenceAsked.form(asked);
        EvidenceQuery query = EvidenceAsked.quiet(form);
        if (query == null) {
            response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
        } else {
            EvidenceStudy study = evidence.study(query);
            EvidenceView view = views.get(study, EvidenceView::of);
            if (study.group() != null) {
                form.put("group", (Object) study.group().alike().key());
            }
            model.addAttribute("study", study);
            model.addAttribute("view", view);
            model.addAttribute("parameters", EvidenceAsked.parameters(query));
        }
        model.addAttribute("form", form);
        model.addAttribute("quantities", EvidenceAsked.QUANTITIES);
        model.addAttribute("scales", EvidenceAsked.SCALES);
        model.addAttribute("methods", EvidenceAsked.METHODS);
        model.addAttribute("method", Summary.METHOD);
        model.addAttribute("sources", Summary.SOURCES);
        model.addAttribute("validity", Summary.VALIDITY);
        return "evidence/show";
    }

    /** Every comparison, one a line. */
    @GetMapping("/evidence.csv")
    ResponseEntity<byte[]> table(HttpServletRequest asked, WebRequest request) {
        EvidenceStudy study = evidence.study(EvidenceAsked.query(EvidenceAsked.form(asked)));
        return downloads.send(request, GeneratedFile.csv("evidence.csv", EvidenceCsv.write(study)), false);
    }
}
