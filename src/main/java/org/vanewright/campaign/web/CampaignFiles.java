package org.vanewright.campaign.web;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.context.request.WebRequest;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.campaign.Schedule;
import org.vanewright.campaign.reduction.Reductions;
import org.vanewright.campaign.reduction.ResultsCsv;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.GeneratedFile;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.Cautions;
import org.vanewright.platform.plot.CurvePlot;
import org.vanewright.platform.plot.PlotFiles;
import org.vanewright.record.RecordNotFoundException;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;

/** Files of one campaign revision: test cards to fly by, and its results as a table. */
@Controller
@RequestMapping("/campaigns/" + RecordPaths.SLUG)
class CampaignFiles {
    private final CampaignService campaigns;
    private final Reductions reductions;
    private final Downloads downloads;
    private final Cautions cautions;

    CampaignFiles(CampaignService campaigns, Reductions reductions, Downloads downloads, Cautions cautions) {
        this.campaigns = campaigns;
        this.reductions = reductions;
        this.downloads = downloads;
        this.cautions = cautions;
    }

    /** The cards of all flights, or of one. */
    @GetMapping("/test-card.pdf")
    ResponseEntity<byte[]> testCard(@PathVariable("slug") String slug, HttpServletRequest asked, WebRequest request) {
        Query query = Query.of(asked);
        Revision<CampaignDocument> revision = revision(slug, query);
        List<Schedule.Sortie> all = TestCards.sorties(revision.content().plan());
        Integer sortie = query.sortie();
        List<Schedule.Sortie> chosen = sortie == null
                ? all
                : all.stream().filter(s -> s.number() == sortie).toList();
        if (chosen.isEmpty()) {
            throw new InvalidInputException(new FieldProblem(
                    "sortie", String.valueOf(sortie), "the number of a flight of the plan, 1 to " + all.size()));
        }
        return send(
                revision,
                query,
                "-test-card" + (sortie == null ? "s" : "-" + sortie) + ".pdf",
                MediaType.APPLICATION_PDF,
                request,
                () -> TestCardSheet.pdf(
                        revision,
                        campaigns
                                .airframe(revision.content())
                                .map(Revision::content)
                                .orElse(null),
                        chosen,
                        all.size(),
                        cautions.all(revision.content().invented())));
    }

    /** Every test point, as read and reduced. */
    @GetMapping("/results.csv")
    ResponseEntity<byte[]> results(@PathVariable("slug") String slug, HttpServletRequest asked, WebRequest request) {
        Query query = Query.of(asked);
        Revision<CampaignDocument> revision = revision(slug, query);
        return send(
                revision,
                query,
                "-results.csv",
                new MediaType("text", "csv", StandardCharsets.UTF_8),
                request,
                () -> ResultsCsv.write(
                                revision.content(), reductions.of(revision).orElse(null))
                        .getBytes(StandardCharsets.UTF_8));
    }

    /** One plot of an exact revision. */
    @GetMapping("/revisions/{number:[0-9]{1,6}}/plots/{key:[a-z]{1,20}}.svg")
    ResponseEntity<byte[]> plot(
            @PathVariable("slug") String slug,
            @PathVariable("number") int number,
            @PathVariable("key") String key,
            WebRequest request) {
        Revision<CampaignDocument> revision = campaigns.exactly(new RevisionRef(slug, number));
        GeneratedFile file = new GeneratedFile(
                slug + "-r" + number + "-" + key + ".svg",
                MediaType.parseMediaType("image/svg+xml"),
                "plot " + key,
                true,
                () -> PlotFiles.svg(plot(revision, key)).getBytes(StandardCharsets.UTF_8));
        return downloads.send(request, file, true, revision);
    }

    private CurvePlot plot(Revision<CampaignDocument> revision, String key) {
        return reductions.of(revision).stream()
                .flatMap(reduced -> ResultPlots.of(reduced).stream())
                .filter(named -> named.key().equals(key))
                .findFirst()
                .map(ResultPlots.Named::plot)
                .orElseThrow(() -> new RecordNotFoundException("campaign", revision.slug(), revision.number()));
    }

    private Revision<CampaignDocument> revision(String slug, Query query) {
        Integer number = query.revision();
        return number == null ? campaigns.published(slug) : campaigns.exactly(new RevisionRef(slug, number));
    }

    private ResponseEntity<byte[]> send(
            Revision<CampaignDocument> revision,
            Query query,
            String suffix,
            MediaType type,
            WebRequest request,
            Supplier<byte[]> bytes) {
        String name = revision.slug() + "-r" + revision.number() + suffix;
        boolean shown = type.equals(MediaType.APPLICATION_PDF);
        return downloads.send(
                request, new GeneratedFile(name, type, suffix, shown, bytes), query.revision() != null, revision);
    }

    /** What an address asks for. */
    private record Query(
            @Nullable Integer revision, @Nullable Integer sortie) {
        static Query of(HttpServletRequest request) {
            Form form = Form.posted(request.getParameterMap());
            Checks checks = new Checks();
            Query query = new Query(whole(form, "revision", checks), whole(form, "sortie", checks));
            checks.throwIfAny();
            return query;
        }

        private static @Nullable Integer whole(Form form, String field, Checks checks) {
            String typed = form.text(field);
            boolean ok = typed == null || typed.matches("[1-9][0-9]{0,5}");
            checks.require(ok, field, typed, "a whole number from 1 to 999999");
            return typed == null || !ok ? null : Integer.valueOf(typed);
        }
    }
}
