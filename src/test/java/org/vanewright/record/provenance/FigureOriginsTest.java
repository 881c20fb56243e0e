package org.vanewright.record.provenance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FigureOriginsTest {
    private static final List<FigureGroup> GROUPS = List.of(
            new FigureGroup("speeds", "Airspeeds"),
            new FigureGroup("speeds.vs1Kt", "Vs1"),
            new FigureGroup("speeds.vneKt", "Vne"),
            new FigureGroup("surfaces[1]", "Wing"),
            new FigureGroup("surfaces[1].panels[0]", "Wing, panel 1"),
            new FigureGroup("massKg", "Mass"));

    private static FigureOrigin stated(String figures, Origin origin) {
        return new FigureOrigin(figures, origin, null, null, null, null, null);
    }

    private static FigureOrigins origins(FigureOrigin... stated) {
        return new FigureOrigins(List.of(stated), GROUPS);
    }

    @Test
    void theMostExactStatementCounts() {
        FigureOrigins origins = origins(stated("speeds", Origin.FROM_MAKER), stated("speeds.vs1Kt", Origin.MEASURED));

        assertThat(origins.label("speeds.vs1Kt")).isEqualTo("measured");
        assertThat(origins.label("speeds.vneKt")).isEqualTo("from the maker");
    }

    @Test
    void aStatementCoversWhatLiesBeneathAndNotWhatSoundsLikeIt() {
        FigureOrigins origins = origins(stated("surfaces[1]", Origin.MEASURED));

        assertThat(origins.of("surfaces[1].panels[0].innerChordMm")).isPresent();
        assertThat(origins.of("surfaces[10]")).isEqualTo(Optional.empty());
        assertThat(origins.of("surfaces")).isEqualTo(Optional.empty());
        assertThat(origins(stated("mass", Origin.MEASURED)).of("massKg")).isEqualTo(Optional.empty());
    }

    @Test
    void whatNobodyStatedIsSaidToBeSo() {
        assertThat(origins().label("speeds")).isEqualTo("origin not stated");
        assertThat(origins().notStated()).extracting(FigureGroup::words).containsExactly("Airspeeds", "Wing", "Mass");
        assertThat(origins(
                                stated("speeds.vs1Kt", Origin.MEASURED),
                                stated("surfaces[1].panels[0].innerChordMm", Origin.MEASURED),
                                stated("massKg", Origin.MEASURED))
                        .notStated())
                .extracting(FigureGroup::words)
                .containsExactly("Vne", "Wing, panel 1");
    }

    @Test
    void groupsAreCalledByTheirWords() {
        assertThat(origins().words("speeds.vneKt")).isEqualTo("Vne");
        assertThat(origins().words("rows[0].pitchMm")).isEqualTo("rows[0].pitchMm");
    }
}
