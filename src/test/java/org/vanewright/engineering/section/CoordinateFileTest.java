package org.vanewright.engineering.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.engineering.input.InvalidInputException;

/** What plain coordinate files in the trade look like: common practice, no source. */
class CoordinateFileTest {
    private static final int HALF = 40;
    private static final List<List<Double>> LOOP = SplinedSectionTest.sampled("2412", HALF);
    private static final List<List<Double>> UPPER = reversed(LOOP.subList(0, HALF + 1));
    private static final List<List<Double>> LOWER = LOOP.subList(HALF, 2 * HALF + 1);
    private static final Section EXPECTED = Sections.of(CoordinateFile.parse(lines(LOOP, 1, " ")));

    @Test
    void theResultIsNormalised() {
        List<List<Double>> points = points("Title\n" + lines(LOOP, 1, " "));
        assertThat(points).hasSameSizeAs(LOOP);
        List<Double> first = points.get(0);
        List<Double> last = points.get(points.size() - 1);
        assertThat(0.5 * (first.get(0) + last.get(0))).isCloseTo(1, within(1e-12));
        assertThat(0.5 * (first.get(1) + last.get(1))).isCloseTo(0, within(1e-12));
        SkinPoint nose = EXPECTED.atArcLength(SurfaceSide.UPPER, 0);
        assertThat(nose.x()).isCloseTo(0, within(1e-12));
        assertThat(nose.y()).isCloseTo(0, within(1e-12));
        // NACA TR-460 (1933): 12 % thick, 2 % camber; the foremost point lies a little off the start of the mean line
        assertThat(EXPECTED.maximumThickness()).isCloseTo(0.12, within(5e-4));
        assertThat(EXPECTED.maximumCamber()).isCloseTo(0.02, within(1e-3));
    }

    @ParameterizedTest
    @ValueSource(strings = {" ", "\t", ",", ", ", ";", " ; ", "    "})
    void anySeparatorWillDo(String separator) {
        same("NACA 2412\n" + lines(LOOP, 1, separator));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 100, 1000, 1473.5})
    void anyUnitOfChordWillDo(double chord) {
        same("NACA 2412\n" + lines(LOOP, chord, " "));
        same("NACA 2412\n" + lines(UPPER, chord, " ") + "\n" + lines(LOWER, chord, " "));
    }

    @Test
    void oneLoopMayStartAnywhereAndRunEitherWay() {
        same(lines(reversed(LOOP), 1, " "));
        List<List<Double>> fromNose = new ArrayList<>(LOWER);
        fromNose.addAll(LOOP.subList(0, HALF));
        same(lines(fromNose, 1, " "));
        same(lines(reversed(fromNose), 1, " "));
        fromNose.add(LOOP.get(HALF));
        same(lines(fromNose, 1, " "));
    }

    @Test
    void aClosedLoopFromTheNoseStartsAndEndsAtItsOneTrailingEdge() {
        List<List<Double>> closed = new ArrayList<>(LOOP);
        closed.set(0, List.of(1.0, 0.0));
        closed.set(2 * HALF, List.of(1.0, 0.0));
        Section expected = Sections.of(CoordinateFile.parse(lines(closed, 1, " ")));
        List<List<Double>> fromNose = new ArrayList<>(closed.subList(HALF, 2 * HALF));
        fromNose.addAll(closed.subList(0, HALF));
        Section turned = Sections.of(CoordinateFile.parse(lines(fromNose, 1, " ")));
        assertThat(turned.closedTrailingEdge()).isTrue();
        assertThat(turned.sameShapeAs(expected)).isTrue();
    }

    @Test
    void twoListsMayComeWithCountsBlankLinesAndInEitherOrder() {
        String upper = lines(UPPER, 1, " ");
        String lower = lines(LOWER, 1, " ");
        String counts = " 41.0   41.0\n";
        same("Title\n" + counts + "\n" + upper + "\n" + lower);
        same("Title\n" + counts + upper + lower);
        same(counts + upper + lower);
        same("Title\n\n\n" + upper + "\n\n\n" + lower + "\n\n");
        same("Title\n" + upper + lower);
        same("Title\n" + lower + "\n" + upper);
        same("Title\n" + lines(reversed(UPPER), 1, " ") + "\n" + lines(reversed(LOWER), 1, " "));
        same("Title\n" + lines(reversed(UPPER), 1, " ") + "\n" + lower);
        same("Title\n41 41\n" + lines(UPPER, 100, " ") + lines(LOWER, 100, " "));
    }

    @Test
    void marksCommentsLineEndsAndRepeatsDoNotMatter() {
        String text = "# measured in the hangar\nTitle of it\n" + lines(LOOP, 1, " ");
        same("\uFEFF" + text);
        same(text.replace("\n", "\r\n"));
        same(text.replace("\n", "\r"));
        same(text.replace("\n", "   # note\n"));
        same(text.replace("\n", "\n# note\n"));
        same(text.lines()
                .map(l -> l + "\n" + l)
                .collect(Collectors.joining("\n"))
                .replaceFirst("Title of it\n", ""));
        assertThat(CoordinateFile.parse(("\uFEFF" + text).getBytes(StandardCharsets.UTF_8))
                        .title())
                .isEqualTo("Title of it");
        assertThat(CoordinateFile.parse(lines(LOOP, 1, " ")).title()).isNull();
        assertThat(CoordinateFile.parse("2412 as\u0007 built\n".replace("\u0007", "") + lines(LOOP, 1, " "))
                        .title())
                .isEqualTo("2412 as built");
    }

    @Test
    void aTurnedAndMovedSectionComesOutLevel() {
        List<List<Double>> moved = LOOP.stream()
                .map(p -> List.of(
                        12 + 3 * (0.96 * p.get(0) + 0.28 * p.get(1)), -7 + 3 * (0.96 * p.get(1) - 0.28 * p.get(0))))
                .toList();
        Section level = Sections.of(CoordinateFile.parse(
                moved.stream().map(p -> p.get(0) + " " + p.get(1)).collect(Collectors.joining("\n"))));
        assertThat(level.sameShapeAs(EXPECTED)).isTrue();
    }

    @Test
    void whatWasReadOnceReadsTheSameAgain() {
        List<List<Double>> once = points(lines(LOOP, 1, " "));
        List<List<Double>> twice =
                points(once.stream().map(p -> p.get(0) + "," + p.get(1)).collect(Collectors.joining("\n")));
        for (int i = 0; i < once.size(); i++) {
            assertThat(twice.get(i).get(0)).isCloseTo(once.get(i).get(0), within(1e-12));
            assertThat(twice.get(i).get(1)).isCloseTo(once.get(i).get(1), within(1e-12));
        }
    }

    @Test
    void aBadLineIsNamedByNumberAndReason() {
        String good = lines(LOOP, 1, " ");
        assertRefused(replaceLine(good, 17, "0.5 NaN"), "0.5 NaN", "line 17: two numbers", "\"NaN\" is not a number");
        assertRefused(replaceLine(good, 1, "NaN 0"), "NaN 0", "line 1: ");
        assertRefused(replaceLine(good, 3, "0,5 0,1"), "0,5 0,1", "line 3: ", "decimal points");
        assertRefused(replaceLine(good, 9, "0.5"), "0.5", "line 9: ", "holds 1 item");
        assertRefused(replaceLine(good, 9, "0.5 0.1 0.2"), "0.5 0.1 0.2", "line 9: ");
        assertRefused(replaceLine(good, 4, "1e400 0"), "1e400 0", "line 4: ", "beyond any chord");
        assertRefused(replaceLine(good, 4, "0x1p3 0"), "0x1p3 0", "line 4: ", "is not a number");
        assertRefused("Title\n" + replaceLine(good, 8, "x".repeat(500)), "x".repeat(59) + "…", "line 9: ");
        assertRefused("Title\n41 40\n" + lines(UPPER, 1, " ") + lines(LOWER, 1, " "), "41 40", "line 2: ", "81", "82");
        String three = good + "\n" + good + "\n" + good;
        assertRefused(three, firstLine(good), "line 165: ", "third list");
    }

    @Test
    void everyBadLineIsListedUpToTen() {
        String text = "Title\n" + "a b\n".repeat(30);
        assertThat(refused(text).problems()).hasSize(10);
        assertThat(refused(text).problems().get(1).allowed()).startsWith("line 3: ");
    }

    @Test
    void anOutlineThatCrossesItselfIsNamedByItsLines() {
        List<List<Double>> crossing = new ArrayList<>(LOOP);
        crossing.set(20, List.of(LOOP.get(20).get(0), -0.2));
        InvalidInputException refused = refused("Title\n" + lines(crossing, 1, " "));
        assertThat(refused.problems()).singleElement().satisfies(p -> {
            assertThat(p.field()).isEqualTo("coordinates");
            assertThat(p.allowed()).matches("line (2[0-3]|5[0-9]|6[0-9]): the outline must not cross .*");
        });
    }

    @Test
    void sizesAreBounded() {
        assertRefused(lines(LOOP.subList(0, 10), 1, " "), "10 points", "file: at least 11 points");
        assertRefused("Title only", "0 points", "file: at least 11 points");
        assertRefused("", "0 points", "file: at least 11 points");
        assertRefused("0.1 0.2\n".repeat(12), "every x the same", "file: ");
        String many = lines(SplinedSectionTest.sampled("0012", 1001), 1, " ");
        assertThat(refused(many).problems().get(0).allowed()).isEqualTo("line 2001: at most 2,000 points");
        String most = lines(SplinedSectionTest.sampled("0012", 999), 1, " ");
        assertRefused("1000 1000\n" + most, "1000 1000", "line 1: ", "2000", "1999");
        assertThat(points(most)).hasSize(1999);
        assertRefused("0 0\n".repeat(3000), "0 0", "line 2001: at most 2,000 points");
        byte[] big = " ".repeat(65_537).getBytes(StandardCharsets.UTF_8);
        InvalidInputException refused =
                catchThrowableOfType(InvalidInputException.class, () -> CoordinateFile.parse(big));
        assertThat(refused.problems().get(0).allowed()).contains("64 KiB");
    }

    @Test
    void elevenPointsAreEnough() {
        Section coarse = Sections.of(CoordinateFile.parse(lines(SplinedSectionTest.sampled("0012", 5), 1, " ")));
        assertThat(coarse.arcLength(SurfaceSide.UPPER)).isCloseTo(EXPECTED.arcLength(SurfaceSide.UPPER), within(0.02));
        assertThat(coarse.maximumThickness()).isCloseTo(0.12, within(2e-3));
    }

    @Test
    void halfASectionIsNoOutline() {
        assertThat(refused(lines(UPPER, 1, " ")).problems().get(0).allowed()).startsWith("line 41: ");
        assertThat(refused(lines(reversed(UPPER), 1, " ")).problems().get(0).allowed())
                .startsWith("line 41: ");
    }

    private static List<List<Double>> points(String text) {
        return Objects.requireNonNull(CoordinateFile.parse(text).coordinates());
    }

    private static void same(String text) {
        Section section = Sections.of(CoordinateFile.parse(text));
        for (SurfaceSide side : SurfaceSide.values()) {
            assertThat(section.arcLength(side)).isCloseTo(EXPECTED.arcLength(side), within(1e-8));
            for (double x : new double[] {0.01, 0.1, 0.5, 0.95}) {
                assertThat(section.atX(side, x).y())
                        .isCloseTo(EXPECTED.atX(side, x).y(), within(1e-8));
            }
        }
    }

    private static void assertRefused(String text, String value, String start, String... parts) {
        assertThat(refused(text).problems()).singleElement().satisfies(p -> {
            assertThat(p.field()).isEqualTo("coordinates");
            assertThat(p.value()).isEqualTo(value);
            assertThat(p.allowed()).startsWith(start);
            assertThat(List.of(parts))
                    .allSatisfy(part -> assertThat(p.allowed()).contains(part));
        });
    }

    private static InvalidInputException refused(String text) {
        InvalidInputException refused =
                catchThrowableOfType(InvalidInputException.class, () -> CoordinateFile.parse(text));
        assertThat(refused).isNotNull();
        return refused;
    }

    private static String replaceLine(String text, int number, String line) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        lines.set(number - 1, line);
        return String.join("\n", lines);
    }

    private static String firstLine(String text) {
        return text.lines().findFirst().orElseThrow();
    }

    static String lines(List<List<Double>> points, double chord, String separator) {
        return points.stream()
                .map(p -> String.format(Locale.ROOT, "%.11f%s%.11f", chord * p.get(0), separator, chord * p.get(1)))
                .collect(Collectors.joining("\n", "", "\n"));
    }

    static List<List<Double>> reversed(List<List<Double>> points) {
        List<List<Double>> copy = new ArrayList<>(points);
        Collections.reverse(copy);
        return copy;
    }
}
