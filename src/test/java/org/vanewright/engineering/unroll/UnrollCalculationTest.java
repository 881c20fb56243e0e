package org.vanewright.engineering.unroll;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.section.SectionSpec;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.section.SurfaceSide;

class UnrollCalculationTest {
    private static final SectionSpec NACA_2412 = SectionSpec.naca("2412");

    private static UnrollRequest request(double tipChord, double twist, SectionSpec tip) {
        return new UnrollRequest(
                new UnrollRequest.Panel(3000.0, 1500.0, tipChord, 0.0, NACA_2412, tip, twist),
                SurfaceSide.UPPER,
                List.of(place(0.0, 0.0), place(0.5, 0.1), place(1.0, 0.1)));
    }

    private static UnrollRequest.Place place(@Nullable Double span, @Nullable Double chord) {
        return new UnrollRequest.Place(span, chord);
    }

    @Test
    void constantChordPanelGivesArcAndSpan() {
        UnrollResult result = UnrollCalculation.run(request(1500, 0, NACA_2412));
        double arc = 1500 * Sections.naca("2412").atX(SurfaceSide.UPPER, 0.1).arcLength();
        assertThat(result.points()).hasSize(3);
        assertThat(result.points().get(0).norm()).isZero();
        assertThat(result.points().get(1).x()).isCloseTo(arc, within(1e-7));
        assertThat(result.points().get(1).y()).isCloseTo(1500, within(1e-9));
        assertThat(result.points().get(2).y()).isCloseTo(3000, within(1e-9));
        assertThat(result.maximumStrain()).isZero();
        assertThat(result.validity()).isEmpty();
        assertThat(result.method()).contains("cylinder");
        assertThat(result.sources()).isNotEmpty();
    }

    @Test
    void strongBlendWarnsOfItsStrain() {
        UnrollResult result = UnrollCalculation.run(request(900, -12, SectionSpec.naca("0018")));
        assertThat(result.maximumStrain()).isGreaterThan(0.001);
        assertThat(result.validity()).singleElement().asString().contains("%");
        assertThat(result.method()).contains("triangulated strips");
    }

    @Test
    void everyUnusableFieldIsNamed() {
        UnrollRequest bad = new UnrollRequest(
                new UnrollRequest.Panel(
                        Double.NaN, -1.0, null, Double.POSITIVE_INFINITY, SectionSpec.naca("nonsense"), null, 400.0),
                null,
                Arrays.asList(place(0.5, 0.5), place(1.5, Double.NaN), null, place(null, -0.1)));
        assertThat(fields(bad))
                .contains(
                        "panel.spanMm",
                        "panel.rootChordMm",
                        "panel.tipChordMm",
                        "panel.tipLeadingEdgeOffsetMm",
                        "panel.twistDeg",
                        "panel.rootSection.naca",
                        "panel.tipSection",
                        "side",
                        "points[1].spanFraction",
                        "points[1].chordFraction",
                        "points[2]",
                        "points[3].spanFraction",
                        "points[3].chordFraction")
                .hasSize(13);
        assertThat(fields(new UnrollRequest(null, SurfaceSide.LOWER, List.of())))
                .containsExactly("panel", "points");
    }

    private static List<String> fields(UnrollRequest request) {
        InvalidInputException refused =
                catchThrowableOfType(InvalidInputException.class, () -> UnrollCalculation.run(request));
        return refused.problems().stream().map(FieldProblem::field).toList();
    }

    @Test
    void sectionInPercentIsPointedOut() {
        List<List<Double>> loop = new ArrayList<>();
        for (int i = 0; i <= 40; i++) {
            double angle = Math.PI * 2 * i / 40;
            loop.add(List.of(50 + 50 * Math.cos(angle), 8 * Math.sin(angle)));
        }
        SectionSpec percent = new SectionSpec(null, null, loop, "percent");
        UnrollResult result = UnrollCalculation.run(new UnrollRequest(
                new UnrollRequest.Panel(3000.0, 15.0, 15.0, 0.0, percent, percent, 0.0),
                SurfaceSide.UPPER,
                List.of(place(0.5, 0.5))));
        assertThat(result.validity()).hasSize(2).allMatch(w -> w.contains("in chords"));
    }
}
