package org.vanewright.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.record.RecordContent;
import org.vanewright.record.check.CheckResult;
import org.vanewright.record.check.CheckResult.Outcome;
import org.vanewright.record.provenance.FigureGroup;
import org.vanewright.record.provenance.FigureOrigin;
import org.vanewright.record.provenance.Origin;

/** With a document that anybody can read, as those of the features are. */
public class GeneralChecksTest {
    public record Kite(String name, @Nullable String notes, List<FigureOrigin> provenance) implements RecordContent {
        @Override
        public boolean invented() {
            return false;
        }

        @Override
        public List<FigureGroup> figureGroups() {
            return List.of(
                    new FigureGroup("span", "Span"),
                    new FigureGroup("masses", "Masses"),
                    new FigureGroup("masses.empty", "Empty mass"),
                    new FigureGroup("masses.full", "Full mass"));
        }
    }

    private static FigureOrigin measured(String figures) {
        return new FigureOrigin(figures, Origin.MEASURED, "A member", "2026-05-17", "a tape", null, null);
    }

    @Test
    void contactDataIsNoticedWithItsPlace() {
        CheckResult result = GeneralChecks.texts(new Kite("Kite", "Write to me@example.org", List.of()));

        assertThat(result.outcome()).isEqualTo(Outcome.NOTICED);
        assertThat(result.detail()).contains("an e-mail address in notes", "me@example.org");
        assertThat(GeneralChecks.texts(new Kite("Kite", null, List.of())).outcome())
                .isEqualTo(Outcome.PASSED);
    }

    @Test
    void figuresWithoutAnOriginAreCountedAndNamed() {
        CheckResult half = GeneralChecks.origins(new Kite("Kite", null, List.of(measured("masses.empty"))));
        assertThat(half.outcome()).isEqualTo(Outcome.NOTICED);
        assertThat(half.detail()).startsWith("0 of 2 groups").endsWith("not stated: Span, Full mass.");

        CheckResult one = GeneralChecks.origins(new Kite("Kite", null, List.of(measured("masses"))));
        assertThat(one.detail()).startsWith("1 of 2 groups").endsWith("not stated: Span.");

        CheckResult all = GeneralChecks.origins(new Kite("Kite", null, List.of(measured("masses"), measured("span"))));
        assertThat(all.outcome()).isEqualTo(Outcome.PASSED);
    }

    @Test
    void brokenRulesAreNamed() {
        assertThat(GeneralChecks.rules(List.of()).outcome()).isEqualTo(Outcome.PASSED);
        assertThat(GeneralChecks.rules(List.of(new FieldProblem("span", "-1", "above 0")))
                        .detail())
                .isEqualTo("span must be above 0");
    }
}
