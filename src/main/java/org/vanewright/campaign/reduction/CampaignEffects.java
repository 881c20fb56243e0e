package org.vanewright.campaign.reduction;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignService;
import org.vanewright.campaign.ConfigurationDocument;
import org.vanewright.catalogue.MeasuredEffects;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** What published campaigns have measured, of themselves and of the layouts they flew in any revision. */
@Component
class CampaignEffects implements MeasuredEffects {
    private static final String CAMPAIGN = "campaign";
    private static final String LAYOUT = "layout";

    private final CampaignService campaigns;
    private final CampaignSummaries summaries;

    CampaignEffects(CampaignService campaigns, CampaignSummaries summaries) {
        this.campaigns = campaigns;
        this.summaries = summaries;
    }

    @Override
    public Optional<Flights> of(String kind, String slug) {
        return switch (kind) {
            case LAYOUT -> Optional.of(ofLayout(slug));
            case CAMPAIGN ->
                campaigns
                        .latestRef(slug)
                        .flatMap(ref -> summaries.of(List.of(ref)).values().stream()
                                .findFirst()
                                .map(s -> new Flights(s.pointed(), effects(s.lines().stream()))));
            default -> Optional.empty();
        };
    }

    private Flights ofLayout(String slug) {
        List<RevisionRef> flying = campaigns.refsOfLayouts(List.of(slug)).getOrDefault(slug, List.of());
        Map<RevisionRef, CampaignSummary> known = summaries.of(flying);
        List<CampaignSummary.Line> lines = flying.stream()
                .flatMap(ref -> Stream.ofNullable(known.get(ref)))
                .flatMap(s -> s.lines().stream())
                .filter(line -> line.flown() && line.isOf(slug))
                .toList();
        return new Flights(!lines.isEmpty(), effects(lines.stream()));
    }

    private static List<Effect> effects(Stream<CampaignSummary.Line> lines) {
        return lines.filter(CampaignSummary.Line::flown)
                .map(CampaignSummary.Line::effect)
                .flatMap(Stream::ofNullable)
                .toList();
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
