package org.vanewright.campaign;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.AirframeFacets;
import org.vanewright.catalogue.FacetValue;
import org.vanewright.catalogue.SearchDescription;
import org.vanewright.catalogue.SearchSource;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutFacets;
import org.vanewright.layout.LayoutService;
import org.vanewright.platform.RevisionDrawings;
import org.vanewright.record.Revision;

@Component
class CampaignSearch implements SearchSource<CampaignDocument> {
    private final CampaignService campaigns;
    private final LayoutService layouts;
    private final LayoutFacets facets;

    CampaignSearch(CampaignService campaigns, LayoutService layouts, LayoutFacets facets) {
        this.campaigns = campaigns;
        this.layouts = layouts;
        this.facets = facets;
    }

    @Override
    public String kind() {
        return "campaign";
    }

    @Override
    public String label() {
        return "Campaign";
    }

    @Override
    public List<String> otherWords() {
        return List.of("flights", "flight test", "flown", "results");
    }

    @Override
    public SearchDescription describe(Revision<CampaignDocument> revision) {
        CampaignDocument campaign = revision.content();
        Optional<Revision<AirframeDocument>> airframe = campaigns.airframe(campaign);
        List<Revision<LayoutDocument>> flown = campaign.plan().configurations().stream()
                .map(ConfigurationDocument::layout)
                .flatMap(Stream::ofNullable)
                .distinct()
                .flatMap(ref -> layouts.find(ref).stream())
                .toList();
        List<String> subjects = new ArrayList<>();
        airframe.ifPresent(a -> subjects.add(a.content().name()));
        flown.forEach(l -> subjects.add(l.content().name()));
        campaign.plan().configurations().stream()
                .map(ConfigurationDocument::name)
                .flatMap(Stream::ofNullable)
                .forEach(subjects::add);
        Set<FacetValue> values = new LinkedHashSet<>();
        airframe.ifPresent(a -> values.addAll(AirframeFacets.of(a.content())));
        flown.forEach(l -> values.addAll(facets.of(l.content())));
        return new SearchDescription(
                summary(campaign, airframe.map(a -> a.content().name()).orElse("an aircraft")),
                flown.stream()
                        .findFirst()
                        .map(l -> RevisionDrawings.thumbnail("layouts", l))
                        .orElse(null),
                subjects,
                Stream.ofNullable(campaign.description()).toList(),
                List.copyOf(values));
    }

    private static String summary(CampaignDocument campaign, String airframe) {
        Measure measure = campaign.plan().measure();
        String compared = measure == null ? "Test points" : measure.label();
        long counted = campaign.points().stream()
                .filter(p -> measure != null && p.kind() == measure.kind())
                .count();
        return compared + " of " + airframe
                + (measure == null || counted == 0 ? ", not flown yet" : ", " + measure.counted((int) counted));
    }
}
