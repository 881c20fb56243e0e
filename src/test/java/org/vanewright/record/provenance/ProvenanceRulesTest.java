package org.vanewright.record.provenance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.engineering.input.FieldProblem;

class ProvenanceRulesTest {
    record Part(double lengthMm, @Nullable Double widthMm) {}

    record Thing(
            String name,
            Part part,
            List<Part> parts,
            @Nullable Double massKg) {}

    private static final Thing THING = new Thing("Thing", new Part(1, null), List.of(new Part(2, 3.0)), 4.0);

    private static List<String> problems(FigureOrigin... stated) {
        return ProvenanceRules.check(THING, List.of(stated)).stream()
                .map(FieldProblem::field)
                .toList();
    }

    private static FigureOrigin bare(String figures, Origin origin) {
        return new FigureOrigin(figures, origin, null, null, null, null, null);
    }

    @ParameterizedTest
    @ValueSource(strings = {"part", "part.lengthMm", "parts", "parts[0]", "parts[0].widthMm", "massKg"})
    void figuresThatTheDocumentHasMayBeNamed(String path) {
        assertThat(problems(bare(path, Origin.ESTIMATED))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "name",
                "nothing",
                "part.widthMm",
                "part.",
                ".part",
                "parts[1]",
                "parts[-1]",
                "parts[0",
                "parts[99999999999]",
                "massKg.class",
                "massKg[0]",
                "part..lengthMm",
                "class",
                "part.lengthMm\n"
            })
    void anythingElseMayNot(String path) {
        assertThat(problems(bare(path, Origin.ESTIMATED))).containsExactly("provenance[0].figures");
    }

    @Test
    void whatIsMeasuredNeedsWhoWhenAndWithWhat() {
        assertThat(problems(bare("part", Origin.MEASURED)))
                .containsExactly("provenance[0].by", "provenance[0].on", "provenance[0].instrument");
        assertThat(problems(new FigureOrigin("part", Origin.MEASURED, "Club", "2026-05-17", "Rule", null, null)))
                .isEmpty();
    }

    @Test
    void literatureNeedsItsSourceAndACalculationItsMethod() {
        assertThat(problems(bare("part", Origin.LITERATURE))).containsExactly("provenance[0].citation");
        assertThat(problems(bare("part", Origin.CALCULATED))).containsExactly("provenance[0].note");
        assertThat(problems(new FigureOrigin("part", Origin.CALCULATED, null, null, null, null, " ")))
                .containsExactly("provenance[0].note");
        assertThat(problems(new FigureOrigin("part", Origin.LITERATURE, null, null, null, "Book", null)))
                .isEmpty();
        assertThat(problems(new FigureOrigin("part", Origin.CALCULATED, null, null, null, null, "Sum")))
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource(names = {"FROM_MAKER", "ESTIMATED"})
    void theOthersNeedNothingMore(Origin origin) {
        assertThat(problems(bare("part", origin))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"17.5.2026", "2026-02-30", "2026-5-17", "+2026-05-17", "1800-01-01", "yesterday", "2026-05"})
    void aDayIsADayOfTheCalendar(String day) {
        assertThat(problems(new FigureOrigin("part", Origin.ESTIMATED, null, day, null, null, null)))
                .containsExactly("provenance[0].on");
    }

    @Test
    void anOriginIsNeededAndFiguresAreNamedOnce() {
        assertThat(problems(
                        new FigureOrigin("part", null, null, null, null, null, null),
                        bare("part", Origin.ESTIMATED),
                        bare("part.lengthMm", Origin.ESTIMATED)))
                .containsExactly("provenance[0].origin", "provenance[1].figures");
    }

    @Test
    void longListsAndLongTextsAreRefused() {
        assertThat(ProvenanceRules.check(THING, Collections.nCopies(61, bare("part", Origin.ESTIMATED))))
                .extracting(FieldProblem::field)
                .containsExactly("provenance");
        String longText = "x".repeat(1001);
        assertThat(problems(new FigureOrigin("part", Origin.ESTIMATED, longText, null, longText, longText, longText)))
                .containsExactly(
                        "provenance[0].by", "provenance[0].instrument", "provenance[0].citation", "provenance[0].note");
    }
}
