package org.vanewright.installation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.vanewright.catalogue.SearchDescription;
import org.vanewright.catalogue.SearchSource;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.platform.RevisionDrawings;
import org.vanewright.record.Revision;

@Component
class InstallationSearch implements SearchSource<InstallationDocument> {
    private final InstallationService installations;
    private final InstallationFacets facets;

    InstallationSearch(InstallationService installations, InstallationFacets facets) {
        this.installations = installations;
        this.facets = facets;
    }

    @Override
    public String kind() {
        return "installation";
    }

    @Override
    public String label() {
        return "Installation";
    }

    @Override
    public List<String> otherWords() {
        return List.of("fitted", "stuck on", "put on", "retention");
    }

    @Override
    public int prominence() {
        return 70;
    }

    @Override
    public SearchDescription describe(Revision<InstallationDocument> revision) {
        InstallationDocument installation = revision.content();
        Optional<Revision<LayoutDocument>> layout = installations.layout(installation);
        List<String> subjects = new ArrayList<>();
        layout.ifPresent(l -> subjects.add(l.content().name()));
        installations
                .adhesiveRecord(installation)
                .ifPresent(a -> subjects.add(a.content().name()));
        Stream.ofNullable(installation.adhesiveClass()).forEach(subjects::add);
        String held = subjects.size() > 1 ? ", held by " + subjects.get(subjects.size() - 1) : "";
        return new SearchDescription(
                layout.map(l -> l.content().name()).orElse("A layout") + held,
                layout.map(l -> RevisionDrawings.thumbnail("layouts", l)).orElse(null),
                subjects,
                Stream.ofNullable(installation.description()).toList(),
                facets.of(installation));
    }
}
