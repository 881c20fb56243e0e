package org.vanewright.campaign.reduction;

import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.layout.FlightEvidence;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** What published campaigns say of a layout. */
@Component
class CampaignEvidence implements FlightEvidence {
    private final CampaignService campaigns;
    private final Reductions reductions;

    CampaignEvidence(CampaignService campaigns, Reductions reductions) {
        this.campaigns = campaigns;
        this.reductions = reductions;
    }

    @Override
    public List<FlownResult> of(String layoutSlug) {
        return campaigns.withLayout(layoutSlug).stream()
                .flatMap(revision -> results(revision, layoutSlug))
                .toList();
    }

    private Stream<FlownResult> results(Revision<CampaignDocument> revision, String layoutSlug) {
        return reductions.of(revision).stream()
                .flatMap(reduced -> reduced.conclusions().stream()
                        .filter(c -> c.claim() != null)
                        .flatMap(c -> Stream.ofNullable(
                                        c.configuration().configuration().layout())
                                .filter(layout -> layout.slug().equals(layoutSlug))
                                .map(layout -> result(revision, layout, c.sentence(reduced.measure())))));
    }

    private static FlownResult result(Revision<CampaignDocument> revision, RevisionRef layout, String sentence) {
        return new FlownResult(
                revision.content().name(),
                "/campaigns/" + revision.slug() + "/revisions/" + revision.number(),
                layout.revision(),
                sentence,
                revision.content().invented());
    }
}
