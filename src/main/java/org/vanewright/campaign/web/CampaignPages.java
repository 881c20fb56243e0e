package org.vanewright.campaign.web;

import java.util.ArrayList;
import java.util.List;
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
import org.vanewright.campaign.reduction.ReducedCampaign;
import org.vanewright.campaign.reduction.Reductions;
import org.vanewright.platform.page.Units;
import org.vanewright.record.RecordPage;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;

/** Browsing and reading campaigns. */
@Controller
class CampaignPages {
    private static final int PER_PAGE = 12;

    private final CampaignService campaigns;
    private final Reductions reductions;

    CampaignPages(CampaignService campaigns, Reductions reductions) {
        this.campaigns = campaigns;
        this.reductions = reductions;
    }

    /**
     * A campaign in the list.
     *
     * @param airframeName whose it is
     * @param flown how many test points there are, in words
     * @param claims what it says so far
     */
    public record Card(
            Revision<CampaignDocument> revision,
            String airframeName,
            String flown,
            List<ResultView.ClaimLine> claims) {}

    @GetMapping("/campaigns")
    String browse(@RequestParam(name = "cursor", required = false) @Nullable String cursor, Model model) {
        RecordPage<Revision<CampaignDocument>> page = campaigns.list(cursor, PER_PAGE);
        model.addAttribute("cards", page.items().stream().map(this::card).toList());
        model.addAttribute("first", cursor == null);
        model.addAttribute("nextCursor", page.nextCursor());
        return "campaign/browse";
    }

    private Card card(Revision<CampaignDocument> revision) {
        CampaignDocument campaign = revision.content();
        Measure measure = campaign.plan().measure();
        int count = measure == null ? 0 : campaign.points(measure.kind()).size();
        return new Card(
                revision,
                campaigns.airframe(campaign).map(a -> a.content().name()).orElse("an unknown airframe"),
                measure == null || count == 0 ? "not flown yet" : measure.counted(count),
                reductions.of(revision).map(ResultView::claims).orElse(List.of()));
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
                "result", reduced.map(r -> ResultView.of(r, "result-")).orElse(null));
        model.addAttribute(
                "tufts", TuftsView.of(campaign, airframe.map(Revision::content).orElse(null), units));
        model.addAttribute("handling", HandlingView.of(campaign));
        model.addAttribute("history", campaigns.history(revision.slug()));
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
