package org.vanewright.printrun;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.FieldProblem;

class PrintRunRulesTest {
    private static List<String> fields(PrintRunDocument run) {
        return PrintRunRules.check(run).stream().map(FieldProblem::field).toList();
    }

    @Test
    void aSoundRunPasses() {
        assertThat(PrintRunRules.check(PrintRuns.run("Sound", PrintRuns.outcome(16), PrintRuns.heights(8, 8.1))))
                .isEmpty();
    }

    @Test
    void everyFaultIsNamed() {
        PrintRunDocument bad = new PrintRunDocument(
                " ",
                null,
                null,
                null,
                new PrintingDocument("11.4.2026", null, ""),
                List.of(new SettingDocument("", null)),
                new OutcomeDocument(
                        0,
                        -1.0,
                        Double.NaN,
                        1e9,
                        0.0,
                        List.of(
                                new DefectDocument(null, 1),
                                new DefectDocument(DefectKind.WARPED, -1),
                                new DefectDocument(DefectKind.WARPED, null))),
                List.of(new SampleDocument(null, 900.0)),
                false,
                List.of(),
                List.of());
        assertThat(fields(bad))
                .containsExactlyInAnyOrder(
                        "name",
                        "device",
                        "printing.on",
                        "printing.material",
                        "printing.machineClass",
                        "settings[0].name",
                        "settings[0].value",
                        "outcome.pieces",
                        "outcome.minutes",
                        "outcome.materialG",
                        "outcome.energyKWh",
                        "outcome.toleranceMm",
                        "outcome.defects[0].kind",
                        "outcome.defects[1].count",
                        "outcome.defects[2].kind",
                        "outcome.defects[2].count",
                        "sample[0].heightMm",
                        "sample[0].thicknessMm");
    }

    @Test
    void noMoreFaultyPiecesThanPrinted() {
        assertThat(fields(PrintRuns.run(
                        "Too many",
                        PrintRuns.outcome(2, new DefectDocument(DefectKind.OTHER, 3)),
                        List.of())))
                .containsExactly("outcome.defects");
    }

    @Test
    void listsAreBounded() {
        PrintRunDocument long_ = PrintRuns.run(
                "Long",
                PrintRuns.outcome(16),
                Collections.nCopies(PrintRunRules.MAX_SAMPLE + 1, new SampleDocument(8.0, 1.0)));
        assertThat(fields(long_)).containsExactly("sample");
    }
}
