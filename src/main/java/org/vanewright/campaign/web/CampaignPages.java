package org.vanewright.campaign.web;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.campaign.ConfigurationDocument;
import org.vanewright.campaign.Measure;
import org.vanewright.campaign.reduction.CampaignSummaries;
import org.vanewright.campaign.reduction.CampaignSummary;
import org.vanewright.campaign.reduction.ReducedCampaign;
import org.vanewright.campaign.reduction.Reductions;
import org.vanewright.platform.page.Units;
import org.vanewright.record.RecordPage;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionHead;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;

/** Browsing and reading campaigns. */
@Controller
class CampaignPages {
    private static final int PER_PAGE = 12;

    private final CampaignService campaigns;
    private final Reductions reductions;
    private final CampaignSummaries summaries;

    CampaignPages(CampaignService campaigns, Reductions reductions, CampaignSummaries summaries) {
        this.campaigns = campaigns;
        this.reductions = reductions;
        this.summaries = summaries;
    }

    /** A campaign in the list. */
    public record Card(RevisionRef ref, CampaignSummary summary, Instant createdAt) {}

    @GetMapping("/campaigns")
    String browse(@RequestParam(name = "cursor", required = false) @Nullable String cursor, Model model) {
        RecordPage<RevisionHead> page = campaigns.listHeads(cursor, PER_PAGE);
        List<RevisionRef> refs = page.items().stream().map(RevisionHead::ref).toList();
        Map<RevisionRef, CampaignSummary> known = summaries.of(refs);
        model.addAttribute(
                "cards",
                refs.stream()
                        .flatMap(ref -> Stream.ofNullable(known.get(ref))
                                .map(s -> new Card(ref, s, Instant.parse(s.createdAt()))))
                        .toList());
        model.addAttribute("first", cursor == null);
        model.addAttribute("nextCursor", page.nextCursor());
        return "campaign/browse";
    }

    @GetMapping("/campaigns/" + RecordPaths.SLUG)
    String latest(@PathVariable("slug") String slug, @RequestAttribute("units") Units units, Model model) {
        return show(campaigns.shown(slug), units, model);
    }

    @GetMapping("/campaigns/" + RecordPaths.REVISION)
    String revision(
            @PathVariable("slug") String slug,
            @PathVariable("number") int number,
            @RequestAttribute("units") Units units,
            Model model) {
        return show(campaigns.exactly(new RevisionRef(slug, number)), units, model);
    }

    /** Every test point of a campaign that has too many of them for its own page. */
    @GetMapping("/campaigns/" + RecordPaths.REVISION + "/test-points")
    String testPoints(@PathVariable("slug") String slug, @PathVariable("number") int number, Model model) {
        Revision<CampaignDocument> revision = campaigns.exactly(new RevisionRef(slug, number));
        model.addAttribute("revision", revision);
        model.addAttribute("points", reductions.of(revision).map(PointRow::of).orElse(List.of()));
        return "campaign/test-points";
    }

    /** A configuration with how much of it is flown. */
    public record Progress(
            ConfigurationDocument configuration,
            int flown,
            @Nullable Integer planned) {}

    private String show(Revision<CampaignDocument> revision, Units units, Model model) {
        CampaignDocument campaign = revision.content();
        Optional<Revision<AirframeDocument>> airframe = campaigns.airframe(campaign);
        Optional<ReducedCampaign> reduced = reductions.of(revision);
        model.addAttribute("revision", revision);
        model.addAttribute("campaign", campaign);
        model.addAttribute("plan", campaign.plan());
        model.addAttribute("airframe", airframe.orElse(null));
        model.addAttribute("planView", PlanView.of(campaign.plan(), "plan-"));
        model.addAttribute("progress", progress(campaign));
        model.addAttribute("sorties", TestCards.sorties(campaign.plan()));
        model.addAttribute(
                "result",
                reduced.map(r -> ResultView.of(revision.ref(), r, "result-")).orElse(null));
        model.addAttribute(
                "tufts", TuftsView.of(campaign, airframe.map(Revision::content).orElse(null), units));
        model.addAttribute("handling", HandlingView.of(campaign));
        model.addAttribute("history", campaigns.listedHistory(revision.slug()));
        return "campaign/show";
    }

    private static List<Progress> progress(CampaignDocument campaign) {
        Measure measure = campaign.plan().measure();
        List<Progress> progress = new ArrayList<>();
        for (ConfigurationDocument each : campaign.plan().configurations()) {
            long flown = Stream.ofNullable(measure)
                    .flatMap(m -> campaign.points(m.kind()).stream())
                    .filter(p -> p.configuration() != null && p.configuration().equals(each.key()))
                    .count();
            progress.add(
                    new Progress(each, (int) flown, campaign.plan().repeats().perConfiguration()));
        }
        return progress;
    }
}
