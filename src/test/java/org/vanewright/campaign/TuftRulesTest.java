package org.vanewright.campaign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.tuft.Wings;
import org.vanewright.record.photograph.PhotographUse;

class TuftRulesTest {
    private static final String HASH = "0".repeat(64);

    private static TuftSurveyDocument survey(
            @Nullable String id,
            String key,
            @Nullable Double knots,
            @Nullable String states,
            List<String> photographs) {
        return new TuftSurveyDocument(id, key, knots, null, null, null, states, photographs, null, null);
    }

    private static TuftGridDocument grid(List<TuftSurveyDocument> surveys) {
        return new TuftGridDocument(
                "g", "Wing", SurfaceSide.UPPER, Wings.BOTH, List.of(800.0, 1600.0), List.of(0.5), surveys);
    }

    private static List<String> fields(TuftGridDocument... grids) {
        CampaignDocument campaign = Campaigns.campaign(Measure.STALL_SPEED, FlyingOrder.INTERLEAVED, List.of())
                .withTufts(List.of(grids))
                .withPhotographs(List.of(new PhotographUse(HASH, null, "Tufts")));
        return CampaignRules.check(campaign).stream().map(FieldProblem::field).toList();
    }

    @Test
    void aSurveyWithEverythingPasses() {
        assertThat(fields(grid(List.of(survey("s", "B", 48.0, "SU-R", List.of(HASH))))))
                .isEmpty();
    }

    @Test
    void aSurveyNamesWhatIsWrongWithIt() {
        assertThat(fields(grid(List.of(
                        survey(null, "Z", 900.0, "SUR", List.of()),
                        survey("s", "A", null, "SURX", List.of(HASH, HASH)),
                        survey("s", "A", 48.0, null, List.of("1".repeat(64)))))))
                .containsExactlyInAnyOrder(
                        "tufts[0].surveys[0].id",
                        "tufts[0].surveys[0].configuration",
                        "tufts[0].surveys[0].indicatedAirspeedKt",
                        "tufts[0].surveys[0].states",
                        "tufts[0].surveys[1].indicatedAirspeedKt",
                        "tufts[0].surveys[1].states",
                        "tufts[0].surveys[1].photographs[1]",
                        "tufts[0].surveys[2].id",
                        "tufts[0].surveys[2].states",
                        "tufts[0].surveys[2].photographs[0]");
    }

    @Test
    void aGridNamesWhatIsWrongWithIt() {
        List<Double> many =
                IntStream.rangeClosed(1, 21).mapToObj(i -> i * 100.0).toList();
        assertThat(fields(
                        new TuftGridDocument(null, " ", null, null, many, List.of(0.6, 0.5, 1.2), List.of()),
                        new TuftGridDocument(
                                "g", "Wing", SurfaceSide.LOWER, Wings.LEFT, List.of(Double.NaN), List.of(), List.of())))
                .containsExactlyInAnyOrder(
                        "tufts[0].id",
                        "tufts[0].surface",
                        "tufts[0].side",
                        "tufts[0].wings",
                        "tufts[0].stationsMm",
                        "tufts[0].chordFractions[1]",
                        "tufts[0].chordFractions[2]",
                        "tufts[1].stationsMm[0]",
                        "tufts[1].chordFractions");
    }

    @Test
    void thereIsAMostOfEverything() {
        TuftGridDocument grid = grid(List.of());
        assertThat(fields(grid, grid, grid, grid, grid))
                .contains("tufts", "tufts[3].id")
                .doesNotContain("tufts[4].id");
        assertThat(fields(grid(Collections.nCopies(31, survey("s", "A", 48.0, "SSSS", List.of())))))
                .contains("tufts[0].surveys");
    }
}
