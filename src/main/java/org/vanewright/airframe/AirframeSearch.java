package org.vanewright.airframe;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.vanewright.catalogue.SearchDescription;
import org.vanewright.catalogue.SearchSource;
import org.vanewright.platform.RevisionDrawings;
import org.vanewright.record.Revision;

@Component
class AirframeSearch implements SearchSource<AirframeDocument> {
    @Override
    public String kind() {
        return "airframe";
    }

    @Override
    public String label() {
        return "Airframe";
    }

    @Override
    public List<String> otherWords() {
        return List.of("aircraft", "aeroplane", "airplane");
    }

    @Override
    public SearchDescription describe(Revision<AirframeDocument> revision) {
        AirframeDocument airframe = revision.content();
        List<String> surfaces =
                airframe.surfaces().stream().map(SurfaceDocument::label).toList();
        List<String> notes = Stream.concat(
                        Stream.ofNullable(airframe.description()),
                        airframe.surfaces().stream()
                                .flatMap(s -> s.keepOuts().stream())
                                .map(KeepOutDocument::reason)
                                .filter(Objects::nonNull))
                .toList();
        boolean winged = airframe.surfaces().stream().anyMatch(s -> s.kind() == SurfaceDocument.Kind.WING);
        return new SearchDescription(
                summary(airframe),
                winged ? RevisionDrawings.thumbnail("airframes", revision) : null,
                surfaces,
                notes,
                AirframeFacets.of(airframe));
    }

    private static String summary(AirframeDocument airframe) {
        OperatingBasis basis = airframe.operatingBasis();
        String words = basis == null ? "Aircraft" : basis.label();
        AirframeDocument.Speeds speeds = airframe.speeds();
        Double stall = speeds == null ? null : speeds.vs1Kt();
        return stall == null ? words : words + String.format(Locale.ROOT, ", stalls clean at %.0f kt", stall);
    }
}
