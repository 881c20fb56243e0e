package org.vanewright.campaign.reduction;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.vanewright.campaign.CampaignService;
import org.vanewright.layout.FlightEvidence;
import org.vanewright.record.RevisionRef;

/** What published campaigns say of layouts. */
@Component
class CampaignEvidence implements FlightEvidence {
    private final CampaignService campaigns;
    private final CampaignSummaries summaries;

    CampaignEvidence(CampaignService campaigns, CampaignSummaries summaries) {
        this.campaigns = campaigns;
        this.summaries = summaries;
    }

    @Override
    public Map<String, List<FlownResult>> of(Collection<String> layoutSlugs) {
        Map<String, List<RevisionRef>> flying = campaigns.refsOfLayouts(layoutSlugs);
        Map<RevisionRef, CampaignSummary> known = summaries.of(
                flying.values().stream().flatMap(List::stream).distinct().toList());
        Map<String, List<FlownResult>> results = new HashMap<>();
        flying.forEach((slug, refs) -> results.put(
                slug,
                refs.stream()
                        .flatMap(ref ->
                                Stream.ofNullable(known.get(ref)).flatMap(summary -> results(ref, summary, slug)))
                        .toList()));
        return results;
    }

    private static Stream<FlownResult> results(RevisionRef ref, CampaignSummary campaign, String layoutSlug) {
        return campaign.lines().stream()
                .filter(line -> line.claimed() && line.isOf(layoutSlug))
                .flatMap(line -> Stream.ofNullable(line.layout())
                        .map(layout -> new FlownResult(
                                campaign.name(),
                                "/campaigns/" + ref.slug() + "/revisions/" + ref.revision(),
                                layout.revision(),
                                line.sentence(),
                                campaign.invented())));
    }
}
