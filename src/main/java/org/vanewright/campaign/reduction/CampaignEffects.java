package org.vanewright.campaign.reduction;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.campaign.ConfigurationDocument;
import org.vanewright.catalogue.MeasuredEffects;
import org.vanewright.engineering.inference.Comparison;
import org.vanewright.engineering.inference.RelativeChange;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** What published campaigns have measured, of themselves and of the layouts they flew in any revision. */
@Component
class CampaignEffects implements MeasuredEffects {
    private static final String CAMPAIGN = "campaign";
    private static final String LAYOUT = "layout";

    private final CampaignService campaigns;
    private final Outcomes outcomes;

    CampaignEffects(CampaignService campaigns, Outcomes outcomes) {
        this.campaigns = campaigns;
        this.outcomes = outcomes;
    }

    @Override
    public Optional<Flights> of(String kind, String slug) {
        return switch (kind) {
            case LAYOUT -> Optional.of(flights(outcomes.ofLayout(slug)));
            case CAMPAIGN ->
                campaigns
                        .latest(slug)
                        .map(r -> new Flights(
                                !r.content().points().isEmpty(),
                                flights(outcomes.of(r)).effects()));
            default -> Optional.empty();
        };
    }

    private static Flights flights(List<Outcome> outcomes) {
        return new Flights(
                !outcomes.isEmpty(),
                outcomes.stream().flatMap(o -> effect(o).stream()).toList());
    }

    private static Optional<Effect> effect(Outcome outcome) {
        Comparison comparison = outcome.conclusion().comparison();
        RelativeChange change = outcome.relativeChange();
        if (comparison == null || change == null) {
            return Optional.empty();
        }
        return Optional.of(new Effect(
                outcome.conclusion().sentence(outcome.reduced().measure()),
                change.ratio(),
                change.interval().halfWidth(),
                !comparison.interval().contains(0)));
    }

    /** Layouts that any public revision of a campaign names: what it said before counts no more. */
    @Override
    public List<Concerned> concernedBy(String kind, String slug) {
        if (!kind.equals(CAMPAIGN)) {
            return List.of();
        }
        return campaigns.history(slug).stream()
                .filter(Revision::isPublic)
                .flatMap(CampaignEffects::layouts)
                .distinct()
                .sorted()
                .map(layout -> new Concerned(LAYOUT, layout))
                .toList();
    }

    private static Stream<String> layouts(Revision<CampaignDocument> revision) {
        return revision.content().plan().configurations().stream()
                .map(ConfigurationDocument::layout)
                .filter(Objects::nonNull)
                .map(RevisionRef::slug);
    }
}
