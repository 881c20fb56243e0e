package org.vanewright.engineering.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitsTest {
    // by definition: 1 lb = 0.45359237 kg, 1 in = 25.4 mm, g = 9.80665 m/s²
    @ParameterizedTest
    @CsvSource({
        "N_PER_CM, 1",
        "LBF_PER_IN, 1.7512683524647636",
        "OZF_PER_IN, 0.10945427202904773",
        "N_PER_25_MM, 0.4",
        "KGF_PER_25_MM, 3.92266"
    })
    void lineLoads(LineLoadUnit unit, double nPerCm) {
        assertThat(unit.toNPerCm(1)).isCloseTo(nPerCm, within(1e-15 * 10));
    }

    @Test
    void backFromMetric() {
        assertThat(LineLoadUnit.LBF_PER_IN.fromNPerCm(1)).isCloseTo(0.571015, within(1e-6));
        assertThat(LineLoadUnit.OZF_PER_IN.fromNPerCm(1)).isCloseTo(9.13624, within(1e-5));
    }

    @ParameterizedTest
    @CsvSource({"KPA, 1, 1", "MPA, 1, 1000", "PSI, 1, 6.894757293168361", "PSI, 15, 103.42135939752542"})
    void stresses(StressUnit unit, double given, double kPa) {
        assertThat(unit.toKPa(given)).isCloseTo(kPa, within(1e-12));
    }

    @ParameterizedTest
    @EnumSource(LineLoadUnit.class)
    void thereAndBack(LineLoadUnit unit) {
        assertThat(unit.fromNPerCm(unit.toNPerCm(12.5))).isCloseTo(12.5, within(1e-12));
        assertThat(unit.symbol()).isNotBlank();
    }
}
