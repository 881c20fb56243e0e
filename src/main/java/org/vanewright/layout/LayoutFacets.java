package org.vanewright.layout;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.vanewright.airframe.AirframeFacets;
import org.vanewright.airframe.AirframeService;
import org.vanewright.catalogue.Bands;
import org.vanewright.catalogue.Facet;
import org.vanewright.catalogue.FacetValue;
import org.vanewright.device.DeviceFacets;
import org.vanewright.device.DeviceService;
import org.vanewright.engineering.placement.Arrangement;

/** What a layout, and whatever is flown or put on by it, is found by. */
@Component
public class LayoutFacets {
    private final AirframeService airframes;
    private final DeviceService devices;
    private final LayoutPlanner planner;

    LayoutFacets(AirframeService airframes, DeviceService devices, LayoutPlanner planner) {
        this.airframes = airframes;
        this.devices = devices;
        this.planner = planner;
    }

    /** Those of its airframe and devices, with chord positions and arrangements of its rows. */
    public List<FacetValue> of(LayoutDocument layout) {
        Set<FacetValue> facets = new LinkedHashSet<>();
        airframes.find(layout.airframe()).ifPresent(a -> facets.addAll(AirframeFacets.of(a.content())));
        layout.rows().stream()
                .map(RowDocument::device)
                .flatMap(Stream::ofNullable)
                .distinct()
                .flatMap(ref -> devices.find(ref).stream())
                .forEach(d -> facets.addAll(DeviceFacets.of(d.content())));
        chordFractions(layout).forEach(x -> facets.add(Bands.POSITION.of(100 * x)));
        layout.rows().stream()
                .map(RowDocument::arrangement)
                .flatMap(Stream::ofNullable)
                .forEach(a -> facets.add(FacetValue.of(Facet.ARRANGEMENT, a, words(a))));
        return List.copyOf(facets);
    }

    /** As the rows say; where one is laid out along the skin, as its devices come to sit. */
    private List<Double> chordFractions(LayoutDocument layout) {
        List<Double> fractions = new ArrayList<>(layout.rows().stream()
                .map(RowDocument::chordFraction)
                .filter(Objects::nonNull)
                .toList());
        if (layout.rows().stream().anyMatch(r -> r.arcDistanceMm() != null)) {
            StationRow.of(layout, planner.plan(layout)).stream()
                    .filter(s -> layout.rows().get(s.row() - 1).arcDistanceMm() != null)
                    .forEach(s -> fractions.add(s.chordFraction()));
        }
        return fractions;
    }

    private static String words(Arrangement arrangement) {
        return switch (arrangement) {
            case CO_ROTATING -> "Co-rotating";
            case COMMON_FLOW_DOWN -> "Pairs, common flow down";
            case COMMON_FLOW_UP -> "Pairs, common flow up";
        };
    }
}
