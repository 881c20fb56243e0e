package org.vanewright.kit.web;

import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.springframework.core.io.Resource;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.context.request.WebRequest;
import org.springframework.web.servlet.ModelAndView;
import org.vanewright.kit.KitPlan;
import org.vanewright.kit.Kits;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.job.JobProgress;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.record.web.RecordPaths;

/** The kit of a layout. */
@Controller
class KitDownloads {
    private static final MediaType ZIP = MediaType.parseMediaType("application/zip");

    private final Kits kits;
    private final Downloads downloads;

    KitDownloads(Kits kits, Downloads downloads) {
        this.kits = kits;
        this.downloads = downloads;
    }

    /**
     * {@code results} names the campaigns whose results are in it; {@code Content-Location} says the address that will name
     * the same ones for ever. Even there caches ask again, since a withdrawal is written into the kit.
     */
    @GetMapping("/layouts/" + RecordPaths.SLUG + "/kit.zip")
    ResponseEntity<Resource> kit(
            @PathVariable("slug") String slug,
            @RequestParam(name = "revision", required = false) @Nullable Integer revision,
            @RequestParam(name = "results", required = false) @Nullable String results,
            WebRequest request)
            throws IOException {
        KitPlan plan = kits.plan(slug, revision, results);
        Downloads.LargeFile file = new Downloads.LargeFile(
                Kits.fileName(plan),
                ZIP,
                "kit\n" + plan.contentKey(),
                path -> kits.write(plan, path, JobProgress.UNSEEN));
        ResponseEntity<Resource> response = downloads.send(request, file, plan.layout());
        return ResponseEntity.status(response.getStatusCode())
                .headers(response.getHeaders())
                .header(HttpHeaders.CONTENT_LOCATION, request.getContextPath() + path(plan))
                .body(response.getBody());
    }

    /** Has it made as a job, whose page shows how far it has come. */
    @PostMapping("/layouts/" + RecordPaths.SLUG + "/kit")
    ModelAndView start(
            @PathVariable("slug") String slug,
            @RequestParam(name = "revision", required = false) @Nullable Integer revision,
            @RequestParam(name = "results", required = false) @Nullable String results,
            WebRequest request) {
        String id = kits.start(kits.plan(slug, revision, results));
        downloads.admit(request);
        return SeeOther.to("/jobs/" + id);
    }

    private static String path(KitPlan plan) {
        return "/layouts/" + plan.layout().slug() + "/kit.zip?revision="
                + plan.layout().number() + "&results=" + plan.resultsParameter();
    }
}
