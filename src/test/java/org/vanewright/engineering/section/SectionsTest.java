package org.vanewright.engineering.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.section.SectionSpec.TrailingEdge;

class SectionsTest {
    private static final List<List<Double>> LOOP = SplinedSectionTest.sampled("2412", 40);

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "241",
                "241200",
                "24a2",
                "2400",
                "2441",
                "0412",
                "2012",
                "20012",
                "26012",
                "22212",
                "21112",
                "03012",
                "73012",
                "9140",
                "-2412",
                "NACA",
                "٢٤١٢",
                "2412; drop table"
            })
    void numbersThatNameNoSectionAreRefusedByField(String digits) {
        assertThat(problems(SectionSpec.naca(digits)))
                .singleElement()
                .satisfies(p -> assertThat(p.field()).isEqualTo("naca"))
                .satisfies(p -> assertThat(p.allowed()).isNotBlank());
    }

    @ParameterizedTest
    @ValueSource(strings = {"2412", " 2412 ", "NACA 2412", "naca2412", "NACA-2412"})
    void aNumberMayBeWrittenAsPeopleDo(String written) {
        assertThat(Sections.naca(written).designation()).isEqualTo("NACA 2412");
    }

    @Test
    void exactlyOneOfNumberAndCoordinatesIsNeeded() {
        assertThat(problems(new SectionSpec(null, null, null, null)))
                .extracting(FieldProblem::field)
                .containsExactly("naca");
        assertThat(problems(new SectionSpec("2412", null, LOOP, null)))
                .extracting(FieldProblem::field)
                .containsExactly("coordinates");
        assertThat(problems(new SectionSpec(null, TrailingEdge.CLOSED, LOOP, "x".repeat(200))))
                .extracting(FieldProblem::field)
                .containsExactly("trailingEdge", "title");
    }

    @Test
    void everyUnusableNumberIsNamedByItsPlace() {
        List<List<Double>> loop = new ArrayList<>(LOOP);
        loop.set(3, List.of(0.5, Double.NaN));
        loop.set(5, Arrays.asList((Double) null, 0.1));
        loop.set(7, List.of(0.1));
        loop.set(9, null);
        loop.set(11, List.of(1e300, 0.0));
        assertThat(problems(coordinates(loop)))
                .extracting(FieldProblem::field)
                .containsExactly(
                        "coordinates[3][1]",
                        "coordinates[5][0]",
                        "coordinates[7]",
                        "coordinates[9]",
                        "coordinates[11][0]");
    }

    @Test
    void tooFewAndTooManyPointsAreRefused() {
        assertThat(problems(coordinates(LOOP.subList(0, 10)))).singleElement().satisfies(p -> {
            assertThat(p.value()).isEqualTo("10 points");
            assertThat(p.allowed()).isEqualTo("11 to 2000 points");
        });
        assertThat(problems(coordinates(SplinedSectionTest.sampled("2412", 1000))))
                .singleElement()
                .satisfies(p -> assertThat(p.value()).isEqualTo("2001 points"));
        assertThat(problems(coordinates(List.of()))).hasSize(1);
    }

    @Test
    void outlinesThatAreNoSectionAreRefused() {
        List<List<Double>> clockwise = new ArrayList<>(LOOP);
        Collections.reverse(clockwise);
        assertThat(problems(coordinates(clockwise)))
                .singleElement()
                .satisfies(p -> assertThat(p.allowed()).contains("trailing edge, upper side"));
        List<List<Double>> crossing = new ArrayList<>(LOOP);
        Collections.swap(crossing, 20, 60);
        assertThat(problems(coordinates(crossing)))
                .singleElement()
                .satisfies(p -> assertThat(p.field()).startsWith("coordinates["));
        assertThat(problems(coordinates(LOOP.subList(0, 41)))).isNotEmpty();
        List<List<Double>> twice = new ArrayList<>(LOOP);
        twice.add(8, LOOP.get(7));
        assertThat(problems(coordinates(twice))).extracting(FieldProblem::field).containsExactly("coordinates[8]");
        assertThat(problems(coordinates(Collections.nCopies(30, List.of(0.0, 0.0)))))
                .isNotEmpty();
    }

    @Test
    void hostileCoordinatesGiveASectionOrAFieldNeverAnythingElse() {
        Random random = new Random(20260101);
        int refused = 0;
        for (int round = 0; round < 400; round++) {
            List<List<Double>> loop = new ArrayList<>(LOOP);
            int changes = 1 + random.nextInt(4);
            for (int i = 0; i < changes; i++) {
                loop.set(random.nextInt(loop.size()), List.of(wild(random), wild(random)));
            }
            try {
                Section section = Sections.of(coordinates(loop));
                assertThat(section.arcLength(SurfaceSide.UPPER)).isFinite().isPositive();
                assertThat(section.maximumThickness()).isFinite();
                assertThat(section.leadingEdgeRadius()).isNotNaN();
            } catch (InvalidInputException e) {
                refused++;
                assertThat(e.problems()).allSatisfy(p -> assertThat(p.field()).startsWith("coordinates"));
            }
        }
        assertThat(refused).isBetween(50, 399);
    }

    @Test
    void sectionsAreTheSameOnlyWhenTheirSkinsAre() {
        assertThat(Sections.naca("2412").sameShapeAs(Sections.naca("2412"))).isTrue();
        assertThat(Sections.naca("2412").sameShapeAs(Sections.naca("2413"))).isFalse();
        assertThat(Sections.naca("23012").sameShapeAs(Sections.naca("24012"))).isFalse();
        assertThat(Sections.naca("2412")).isNotEqualTo(Sections.naca("4412")).hasToString("NACA 2412");
    }

    @Test
    void theMessageNamesTheField() {
        assertThatThrownBy(() -> Sections.naca("2x12"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("naca = 2x12");
    }

    private static double wild(Random random) {
        return switch (random.nextInt(6)) {
            case 0 -> 1e4 * (random.nextDouble() - 0.5);
            case 1 -> Double.MIN_VALUE;
            case 2 -> random.nextInt(3) - 1;
            case 3 -> random.nextInt(10) == 0 ? Double.NaN : 0.02;
            default -> random.nextDouble() * 1.2 - 0.1;
        };
    }

    private static SectionSpec coordinates(List<List<Double>> loop) {
        return new SectionSpec(null, null, loop, null);
    }

    private static List<FieldProblem> problems(SectionSpec spec) {
        InvalidInputException refused = catchThrowableOfType(InvalidInputException.class, () -> Sections.of(spec));
        assertThat(refused).isNotNull();
        return refused.problems();
    }
}
