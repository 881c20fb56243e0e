package org.vanewright.layout;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.vanewright.airframe.AirframeService;
import org.vanewright.catalogue.SearchDescription;
import org.vanewright.catalogue.SearchSource;
import org.vanewright.device.DeviceService;
import org.vanewright.platform.RevisionDrawings;
import org.vanewright.record.Revision;

@Component
class LayoutSearch implements SearchSource<LayoutDocument> {
    private final LayoutFacets facets;
    private final AirframeService airframes;
    private final DeviceService devices;
    private final LayoutFigures figures;

    LayoutSearch(LayoutFacets facets, AirframeService airframes, DeviceService devices, LayoutFigures figures) {
        this.facets = facets;
        this.airframes = airframes;
        this.devices = devices;
        this.figures = figures;
    }

    @Override
    public String kind() {
        return "layout";
    }

    @Override
    public String label() {
        return "Layout";
    }

    @Override
    public List<String> otherWords() {
        return List.of("placement", "vanes", "vortex generators");
    }

    @Override
    public SearchDescription describe(Revision<LayoutDocument> revision) {
        LayoutDocument layout = revision.content();
        // Whatever is published is asked for in a list soon.
        figures.of(List.of(revision));
        String airframe =
                airframes.find(layout.airframe()).map(a -> a.content().name()).orElse("an airframe");
        Set<String> carried = new LinkedHashSet<>();
        layout.rows().stream()
                .map(RowDocument::device)
                .flatMap(Stream::ofNullable)
                .distinct()
                .forEach(ref ->
                        devices.find(ref).ifPresent(d -> carried.add(d.content().name())));
        List<String> subjects = new ArrayList<>(carried);
        subjects.add(airframe);
        layout.rows().forEach(row -> {
            Stream.of(row.name(), row.surface()).flatMap(Stream::ofNullable).forEach(subjects::add);
        });
        int rows = layout.rows().size();
        return new SearchDescription(
                (rows == 1 ? "One row" : rows + " rows") + " of " + String.join(", ", carried) + " on " + airframe,
                RevisionDrawings.thumbnail("layouts", revision),
                List.copyOf(subjects),
                Stream.ofNullable(layout.description()).toList(),
                facets.of(layout));
    }
}
