package org.vanewright.engineering.inference;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ClaimTest {
    private static Comparison comparison(double difference, double standardError) {
        return Comparison.of(Comparison.Design.INDEPENDENT, difference, standardError, 14, 0.95, 8, 8);
    }

    @Test
    void aChangeIsSaidWithItsIntervalAndItsRepeats() {
        // t of 14 degrees of freedom is 2.145: 1.8 ± 0.9
        Claim claim = Claim.of(comparison(-1.8, 0.42), "kt", "stalls");
        assertThat(claim.changeSeen()).isTrue();
        assertThat(claim.words()).isEqualTo("lower by 1.8 kt (95 % interval 0.9 to 2.7, 8 and 8 stalls)");
        assertThat(Claim.of(comparison(1.8, 0.42), "kt", "stalls").words()).startsWith("higher by 1.8 kt");
        assertThat(claim.basis()).contains("Difference −1.8 kt", "−2.7 to −0.9", "p below 0.001");
    }

    @Test
    void withoutAChangeItSaysWhatWouldHaveBeenMissed() {
        // power 0.8 at 14 degrees of freedom: about 3.0 standard errors
        Claim claim = Claim.of(comparison(0.3, 0.467), "kt", "stalls");
        assertThat(claim.changeSeen()).isFalse();
        assertThat(claim.words()).isEqualTo("no change seen; a change under 1.4 kt would have been missed");
    }

    @Test
    void anIntervalThatExcludesZeroIsNotRoundedToIt() {
        Claim claim = Claim.of(comparison(-1.92, 0.88), "kt", "stalls");
        assertThat(claim.words()).isEqualTo("lower by 1.92 kt (95 % interval 0.03 to 3.81, 8 and 8 stalls)");
    }

    @Test
    void oneOfSeveralIsJudgedByHolmsValue() {
        Comparison c = comparison(-1.0, 0.44);
        assertThat(c.pValue()).isBetween(0.03, 0.05);
        assertThat(Claim.of(c, "kt", "stalls").changeSeen()).isTrue();
        Claim corrected = Claim.of(new Holm.Adjusted(c, 2 * c.pValue(), c.interval()), 2, "kt", "stalls");
        assertThat(corrected.changeSeen()).isFalse();
        assertThat(corrected.basis()).contains("Holm's correction for 2 comparisons");
    }

    @ParameterizedTest
    @CsvSource({"0.9, 1", "1.4, 1", "2.99, 1", "3.01, 0", "12, 0", "350, 0", "0.042, 2", "0.0149, 3", "0, 0", "NaN, 0"})
    void digitsFollowTheUncertainty(double uncertainty, int decimals) {
        assertThat(Rounding.decimals(uncertainty)).isEqualTo(decimals);
    }

    @Test
    void confidenceIsPrintedWithoutIdleDigits() {
        assertThat(Claim.of(comparison(-1.8, 0.42).at(0.9), "kt", "stalls").words())
                .contains("(90 % interval");
        assertThat(Claim.of(comparison(-1.8, 0.42).at(0.995), "kt", "stalls").words())
                .contains("(99.5 % interval");
    }
}
