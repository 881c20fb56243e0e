package org.vanewright.method;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.vanewright.engineering.flow.PublishedCheck;
import org.vanewright.engineering.flow.PublishedCheck.HowKnown;
import org.vanewright.engineering.inference.meta.RandomEffects;
import org.vanewright.engineering.inference.meta.TauEstimator;
import org.vanewright.engineering.inference.meta.WorkedExamples;

/** Random-effects summaries beside published figures. */
final class MetaChecks {
    private static final String COLDITZ = "G. A. Colditz et al., JAMA 271, 1994";
    private static final String METAFOR = "R package metafor 3.8-1 on the data of " + COLDITZ;
    private static final String TRIALS = "13 trials of a vaccine";

    private MetaChecks() {}

    static List<PublishedCheck> list() {
        return List.of(
                trials(
                        "Risk ratio, moments",
                        TauEstimator.DERSIMONIAN_LAIRD,
                        r -> Math.exp(r.mean()),
                        0.49,
                        0.005,
                        COLDITZ,
                        HowKnown.FROM_MEMORY),
                trials("Cochran's Q", TauEstimator.REML, r -> r.heterogeneity().q(), 152.2330, 1e-4),
                trials(
                        "Variance between trials, moments",
                        TauEstimator.DERSIMONIAN_LAIRD,
                        r -> r.heterogeneity().tauSquared(),
                        0.308760,
                        1e-6),
                trials(
                        "Variance between trials, REML",
                        TauEstimator.REML,
                        r -> r.heterogeneity().tauSquared(),
                        0.313243,
                        1e-6),
                trials("Logarithm of the risk ratio, REML", TauEstimator.REML, RandomEffects::mean, -0.714532, 1e-6),
                trials(
                        "Its lower 95 % limit by Hartung and Knapp",
                        TauEstimator.REML, r -> r.interval().low(), -1.108444, 1e-6));
    }

    private static PublishedCheck trials(
            String quantity,
            TauEstimator estimator,
            ToDoubleFunction<RandomEffects> figure,
            double published,
            double tolerance) {
        return trials(quantity, estimator, figure, published, tolerance, METAFOR, HowKnown.READ);
    }

    private static PublishedCheck trials(
            String quantity,
            TauEstimator estimator,
            ToDoubleFunction<RandomEffects> figure,
            double published,
            double tolerance,
            String source,
            HowKnown howKnown) {
        return StatisticsChecks.check(
                quantity,
                TRIALS,
                () -> figure.applyAsDouble(RandomEffects.of(WorkedExamples.vaccine(), estimator, 0.95)),
                published,
                tolerance,
                source,
                howKnown);
    }
}
