package org.vanewright.engineering.inference.survival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.engineering.inference.Interval;

class BinomialTest {
    /**
     * 4 of 20 at 90 %: NIST/SEMATECH e-Handbook 7.2.4.1 (from memory, worked out again); at 95 %: a statistics package's
     * example (read in a copy); 29 of 30: a reliability library's documentation (read in a copy).
     */
    @ParameterizedTest
    @CsvSource({
        "4, 20, .90, .071354, .401029, 1e-5",
        "4, 20, .95, .057334, .436614, 1e-6",
        "29, 30, .95, .8278305443665873, .9991564290733695, 1e-9"
    })
    void exactLimitsAgainstPublishedOnes(
            int counted, int of, double confidence, double low, double high, double tolerance) {
        Interval interval = Binomial.clopperPearson(counted, of, confidence);
        assertThat(interval.low()).isCloseTo(low, within(tolerance));
        assertThat(interval.high()).isCloseTo(high, within(tolerance));
    }

    /** Hanley and Lippman-Hand, JAMA 249, 1983 (from memory, worked out again). */
    @ParameterizedTest
    @CsvSource({"30, .1, .095034", "60, .05, .048703", "100, .03, .029513", "120, .025, .024655"})
    void noneLostIsNoProofThatNoneWillBe(int of, double rule, double exact) {
        assertThat(Binomial.ruleOfThree(of)).isCloseTo(rule, within(1e-9));
        assertThat(Binomial.upperLimitOfNone(of, 0.95)).isCloseTo(exact, within(1e-6));
        assertThat(Binomial.clopperPearson(0, of, 0.90).high())
                .as("one-sided 95 % is the upper end of two-sided 90 %")
                .isCloseTo(exact, within(1e-6));
    }

    @Test
    void endsAndSenselessCounts() {
        assertThat(Binomial.clopperPearson(0, 5, 0.95).low()).isZero();
        assertThat(Binomial.clopperPearson(5, 5, 0.95).high()).isEqualTo(1);
        assertThat(Binomial.ruleOfThree(1)).isEqualTo(1);
        assertThatIllegalArgumentException().isThrownBy(() -> Binomial.clopperPearson(6, 5, 0.95));
        assertThatIllegalArgumentException().isThrownBy(() -> Binomial.upperLimitOfNone(0, 0.95));
    }
}
