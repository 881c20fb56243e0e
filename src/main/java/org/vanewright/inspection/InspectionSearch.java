package org.vanewright.inspection;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.vanewright.catalogue.SearchDescription;
import org.vanewright.catalogue.SearchSource;
import org.vanewright.installation.InstallationDocument;
import org.vanewright.installation.InstallationFacets;
import org.vanewright.installation.InstallationService;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.platform.RevisionDrawings;
import org.vanewright.platform.page.Numbers;
import org.vanewright.record.Revision;

@Component
class InspectionSearch implements SearchSource<InspectionDocument> {
    private final InstallationService installations;
    private final InstallationFacets facets;

    InspectionSearch(InstallationService installations, InstallationFacets facets) {
        this.installations = installations;
        this.facets = facets;
    }

    @Override
    public String kind() {
        return "inspection";
    }

    @Override
    public String label() {
        return "Inspection";
    }

    @Override
    public List<String> otherWords() {
        return List.of("retention", "losses");
    }

    @Override
    public int prominence() {
        return 40;
    }

    @Override
    public SearchDescription describe(Revision<InspectionDocument> revision) {
        InspectionDocument inspection = revision.content();
        Optional<InstallationDocument> installation = Optional.ofNullable(inspection.installation())
                .flatMap(installations::find)
                .map(Revision::content);
        Optional<Revision<LayoutDocument>> layout = installation.flatMap(installations::layout);
        List<String> subjects = new ArrayList<>();
        installation.ifPresent(i -> subjects.add(i.name()));
        layout.ifPresent(l -> subjects.add(l.content().name()));
        return new SearchDescription(
                summary(inspection),
                layout.map(l -> RevisionDrawings.thumbnail("layouts", l)).orElse(null),
                subjects,
                Stream.ofNullable(inspection.description()).toList(),
                installation.map(facets::of).orElse(List.of()));
    }

    private static String summary(InspectionDocument inspection) {
        Double hours = inspection.hoursFlown();
        int missing = inspection.count(LossState.MISSING);
        int loose = inspection.count(LossState.LOOSE);
        return (hours == null ? "Looked at" : "After " + Numbers.trimmed(hours, 1) + " hours") + ": "
                + (missing + loose == 0 ? "all in place" : missing + " missing, " + loose + " loose");
    }
}
