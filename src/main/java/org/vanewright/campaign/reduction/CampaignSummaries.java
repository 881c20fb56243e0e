package org.vanewright.campaign.reduction;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.campaign.Measure;
import org.vanewright.catalogue.MeasuredEffects.Effect;
import org.vanewright.engineering.inference.Comparison;
import org.vanewright.engineering.inference.RelativeChange;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.Summaries;

/** Says what published campaigns came to. Each is reduced for it once, and its test points are not read again. */
@Service
public class CampaignSummaries {
    private static final Summaries.Kind<CampaignSummary> KIND =
            new Summaries.Kind<>("campaign", 2, CampaignSummary.class);

    private final CampaignService campaigns;
    private final Reductions reductions;
    private final Summaries kept;

    CampaignSummaries(CampaignService campaigns, Reductions reductions, Summaries kept) {
        this.campaigns = campaigns;
        this.reductions = reductions;
        this.kept = kept;
    }

    /** Of public revisions; what is none is left out. */
    public Map<RevisionRef, CampaignSummary> of(Collection<RevisionRef> refs) {
        return kept.of(KIND, refs, missing -> {
            Map<RevisionRef, CampaignSummary> made = new HashMap<>();
            // One after the other, since each may hold thousands of test points.
            missing.forEach(ref -> campaigns.allPublic(List.of(ref)).forEach(r -> made.put(ref, summary(r))));
            return made;
        });
    }

    private CampaignSummary summary(Revision<CampaignDocument> revision) {
        CampaignDocument campaign = revision.content();
        Measure measure = campaign.plan().measure();
        int count = measure == null ? 0 : campaign.points(measure.kind()).size();
        Optional<ReducedCampaign> reduced = reductions.of(revision);
        return new CampaignSummary(
                campaign.name(),
                campaign.invented(),
                revision.createdAt().toString(),
                campaigns.airframe(campaign).map(a -> a.content().name()).orElse("an unknown airframe"),
                measure == null || count == 0 ? "not flown yet" : measure.counted(count),
                !campaign.points().isEmpty(),
                reduced.map(r -> r.conclusions().stream().map(c -> line(r, c)).toList())
                        .orElse(List.of()));
    }

    private static CampaignSummary.Line line(ReducedCampaign reduced, Conclusion conclusion) {
        ReducedConfiguration configuration = conclusion.configuration();
        return new CampaignSummary.Line(
                Objects.requireNonNullElse(configuration.configuration().key(), ""),
                configuration.label(),
                configuration.configuration().layout(),
                conclusion.sentence(reduced.measure()),
                conclusion.claim() != null,
                !configuration.points().isEmpty(),
                effect(reduced, conclusion));
    }

    private static @Nullable Effect effect(ReducedCampaign reduced, Conclusion conclusion) {
        Comparison comparison = conclusion.comparison();
        RelativeChange change = Outcome.relativeChange(reduced.baseline(), comparison);
        if (comparison == null || change == null) {
            return null;
        }
        return new Effect(
                conclusion.sentence(reduced.measure()),
                change.ratio(),
                change.interval().halfWidth(),
                !comparison.interval().contains(0));
    }
}
