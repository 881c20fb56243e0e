package org.vanewright.airframe;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.vanewright.catalogue.Bands;
import org.vanewright.catalogue.Facet;
import org.vanewright.catalogue.FacetValue;
import org.vanewright.engineering.section.SectionSpec;

/** What an airframe, and whatever is made for it, is found by. */
public final class AirframeFacets {
    private AirframeFacets() {}

    /** Operating basis, mean chord of the wing and its sections. */
    public static List<FacetValue> of(AirframeDocument airframe) {
        List<FacetValue> facets = new ArrayList<>();
        OperatingBasis basis = airframe.operatingBasis();
        if (basis != null) {
            facets.add(FacetValue.of(Facet.BASIS, basis, basis.label()));
        }
        meanChordMm(airframe).ifPresent(chord -> facets.add(Bands.CHORD.of(chord)));
        wings(airframe)
                .flatMap(s -> s.panels().stream())
                .flatMap(p -> Stream.of(p.innerSection(), p.outerSection()).flatMap(Stream::ofNullable))
                .map(AirframeFacets::designation)
                .distinct()
                .forEach(name -> facets.add(FacetValue.named(Facet.SECTION, name)));
        return List.copyOf(facets);
    }

    /** Area of one half of the wing over its span. */
    static OptionalDouble meanChordMm(AirframeDocument airframe) {
        double span = 0;
        double area = 0;
        for (PanelDocument p : wings(airframe).flatMap(s -> s.panels().stream()).toList()) {
            double length = or(p.outerStationMm()) - or(p.innerStationMm());
            span += length;
            area += length * (or(p.innerChordMm()) + or(p.outerChordMm())) / 2;
        }
        return span > 0 && area > 0 ? OptionalDouble.of(area / span) : OptionalDouble.empty();
    }

    private static Stream<SurfaceDocument> wings(AirframeDocument airframe) {
        return airframe.surfaces().stream().filter(s -> s.kind() == SurfaceDocument.Kind.WING);
    }

    private static String designation(SectionSpec section) {
        if (section.naca() != null) {
            return "NACA " + section.naca().replaceAll("[^0-9]", "");
        }
        String title = section.title();
        return title == null || title.isBlank() ? "Given by coordinates" : title.strip();
    }

    private static double or(@Nullable Double number) {
        return number == null || !Double.isFinite(number) ? 0 : number;
    }
}
