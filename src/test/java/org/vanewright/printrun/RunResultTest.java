package org.vanewright.printrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class RunResultTest {
    @Test
    void sharesTimeAndMaterialAmongThePieces() {
        RunResult result = RunResult.of(
                PrintRuns.run(
                        "Sixteen",
                        PrintRuns.outcome(
                                16,
                                new DefectDocument(DefectKind.WARPED, 1),
                                new DefectDocument(DefectKind.LAYER_SPLIT, 2)),
                        List.of()),
                8.0,
                1.2);
        assertThat(result.usable()).isEqualTo(13);
        assertThat(result.minutesPerPiece()).isEqualTo(15);
        assertThat(result.gramsPerPiece()).isEqualTo(1.5);
        assertThat(result.height()).isNull();
    }

    /** Mean, scatter and interval of 9, 10 and 11: t(0.975; 2) = 4.30265 (NIST/SEMATECH e-Handbook, 1.3.6.7.2). */
    @Test
    void comparesTheSampleWithTheDrawing() {
        RunResult.Measured height = Objects.requireNonNull(RunResult.of(
                        PrintRuns.run("Three", PrintRuns.outcome(3), PrintRuns.heights(9, 10, 11)), 10.5, null)
                .height());
        assertThat(height.meanMm()).isEqualTo(10);
        assertThat(height.deviationMm()).isEqualTo(-0.5);
        assertThat(height.standardDeviationMm()).isCloseTo(1, within(1e-12));
        double reach = 4.30265 / Math.sqrt(3);
        assertThat(Objects.requireNonNull(height.meanIntervalMm()).low()).isCloseTo(10 - reach, within(1e-4));
        assertThat(height.outside()).isEqualTo(3);
    }

    @Test
    void onePieceHasNoScatterAndABoundReadingIsWithinTolerance() {
        RunResult result =
                RunResult.of(PrintRuns.run("One", PrintRuns.outcome(1), PrintRuns.heights(8.3)), 8.0, 1.2);
        RunResult.Measured height = Objects.requireNonNull(result.height());
        assertThat(height.standardDeviationMm()).isNull();
        assertThat(height.meanIntervalMm()).isNull();
        assertThat(height.outside()).as("0.3 off with a tolerance of 0.3").isZero();
        assertThat(result.thickness()).isNull();
    }
}
