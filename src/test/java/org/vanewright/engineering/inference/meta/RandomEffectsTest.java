package org.vanewright.engineering.inference.meta;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Worked examples beside an independent implementation: R 4.2.2 with metafor 3.8-1 and metadat 1.2-0 of Debian 12. The
 * numbers below are what it printed for
 *
 * <pre>
 * d &lt;- escalc(measure="RR", ai=tpos, bi=tneg, ci=cpos, di=cneg, data=dat.bcg)
 * r &lt;- rma(d$yi, d$vi, method="DL" or "REML", control=list(threshold=1e-12, maxiter=1000)); rma(…, test="knha")
 * confint(r, control=list(tol=1e-13, tau2.max=1e6))
 * n &lt;- escalc(measure="MD", m1i=m1i, sd1i=sd1i, n1i=n1i, m2i=m2i, sd2i=sd2i, n2i=n2i, data=dat.normand1999)
 * </pre>
 */
class RandomEffectsTest {
    private static void isInterval(Interval interval, double low, double high, double tolerance) {
        assertThat(interval.low()).isCloseTo(low, within(tolerance));
        assertThat(interval.high()).isCloseTo(high, within(tolerance));
    }

    /** Colditz et al. report 0.49 (0.34 to 0.70) as the risk ratio of the 13 trials (from memory). */
    @Test
    void theVaccineTrialsByMomentsAgreeWithThePaper() {
        RandomEffects summary = RandomEffects.of(WorkedExamples.vaccine(), TauEstimator.DERSIMONIAN_LAIRD, 0.95);
        assertThat(Math.exp(summary.mean())).isCloseTo(0.49, within(0.005));
        assertThat(Math.exp(summary.normalInterval().low())).isCloseTo(0.34, within(0.006));
        assertThat(Math.exp(summary.normalInterval().high())).isCloseTo(0.70, within(0.006));
    }

    @Test
    void theVaccineTrialsByMoments() {
        RandomEffects summary = RandomEffects.of(WorkedExamples.vaccine(), TauEstimator.DERSIMONIAN_LAIRD, 0.95);
        assertThat(summary.count()).isEqualTo(13);
        assertThat(summary.fixedMean()).isCloseTo(-0.4302851637, within(1e-9));
        assertThat(summary.fixedError()).isCloseTo(0.0404987517, within(1e-9));
        assertThat(summary.mean()).isCloseTo(-0.7141172221, within(1e-9));
        assertThat(summary.standardError()).isCloseTo(0.1787420895, within(1e-9));
        isInterval(summary.normalInterval(), -1.0644452801, -0.3637891641, 1e-9);
        assertThat(summary.adjustedError()).isCloseTo(0.1806966283, within(1e-9));
        isInterval(summary.interval(), -1.1078213542, -0.3204130900, 1e-8);
        Heterogeneity between = summary.heterogeneity();
        assertThat(between.q()).isCloseTo(152.2330080824, within(1e-8));
        assertThat(between.degreesOfFreedom()).isEqualTo(12);
        assertThat(between.pValue()).isBetween(0.0, 1e-14);
        assertThat(between.iSquared()).isCloseTo(0.9211734685, within(1e-9));
        assertThat(between.tauSquared()).isCloseTo(0.3087602629, within(1e-9));
        isInterval(between.tauSquaredInterval(), 0.119718361, 1.111479084, 1e-8);
        // r$beta ± qt(.975, k - 2) * sqrt(r$tau2 + r$se^2)
        isInterval(Objects.requireNonNull(summary.prediction()), -1.99883850, 0.57060405, 1e-7);
    }

    @Test
    void theVaccineTrialsByLikelihood() {
        RandomEffects summary = RandomEffects.of(WorkedExamples.vaccine(), TauEstimator.REML, 0.95);
        assertThat(summary.heterogeneity().tauSquared()).isCloseTo(0.3132432581, within(1e-8));
        assertThat(summary.mean()).isCloseTo(-0.7145323422, within(1e-8));
        assertThat(summary.standardError()).isCloseTo(0.1797815161, within(1e-8));
        assertThat(summary.adjustedError()).isCloseTo(0.1807917441, within(1e-8));
        isInterval(summary.interval(), -1.1084437137, -0.3206209706, 1e-7);
        isInterval(Objects.requireNonNull(summary.prediction()), -2.00837591, 0.57931122, 1e-7);
    }

    /** Without tau2.max metafor's search ends at 2054 for moments. */
    @Test
    void staysThatDifferGreatly() {
        RandomEffects moments = RandomEffects.of(WorkedExamples.stays(), TauEstimator.DERSIMONIAN_LAIRD, 0.95);
        assertThat(moments.heterogeneity().tauSquared()).isCloseTo(205.4093754679, within(1e-7));
        assertThat(moments.mean()).isCloseTo(-13.9817218170, within(1e-8));
        isInterval(moments.interval(), -34.1288341149, 6.1653904809, 1e-6);
        isInterval(moments.heterogeneity().tauSquaredInterval(), 292.918121657, 2889.451349122, 1e-6);
        RandomEffects likelihood = RandomEffects.of(WorkedExamples.stays(), TauEstimator.REML, 0.95);
        assertThat(likelihood.heterogeneity().tauSquared()).isCloseTo(684.6461519297, within(1e-5));
        assertThat(likelihood.mean()).isCloseTo(-15.1060274735, within(1e-7));
        isInterval(likelihood.interval(), -36.3187490826, 6.1066941356, 1e-6);
        isInterval(likelihood.normalInterval(), -32.6409488252, 2.4288938782, 1e-6);
    }

    @Test
    void whatIsNoEffectIsNamed() {
        List<Effect> bad = List.of(new Effect(Double.NaN, 1), new Effect(1, 0));
        assertThatThrownBy(() -> RandomEffects.of(bad, TauEstimator.REML, 0.95))
                .isInstanceOfSatisfying(
                        InvalidInputException.class,
                        e -> assertThat(e.problems())
                                .extracting(p -> p.field())
                                .containsExactly("effects[0].value", "effects[1].standardError"));
        assertThatThrownBy(() -> RandomEffects.of(List.of(new Effect(1, 1)), TauEstimator.REML, 0.95))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("two effects");
    }

    @Test
    void theFunnelIsAsWideAsTheScatterOfOneTrueEffect() {
        Funnel funnel = Funnel.around(-0.4, 0.95);
        // 97.5 % point of the standard normal: 1.959964, NIST/SEMATECH e-Handbook, section 1.3.6.7.1 (1.96 there)
        isInterval(funnel.at(0.5), -0.4 - 0.979982, -0.4 + 0.979982, 1e-6);
        assertThat(funnel.outside(List.of(new Effect(0.5, 0.5), new Effect(0.7, 0.5))))
                .containsExactly(new Effect(0.7, 0.5));
    }
}
