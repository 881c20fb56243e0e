package org.vanewright.bench;

import java.util.List;

/**
 * Modified against baseline.
 *
 * @param difference mean of the modified less that of the baseline
 * @param t difference over its standard error
 * @param degreesOfFreedom by Satterthwaite
 * @param pValue two-sided
 * @param interval of the difference, low and high
 * @param equalVarianceAssumed always false
 * @param method how it was computed
 * @param sources citations
 * @param validity warnings
 */
public record ComparisonResult(
        double difference,
        double t,
        double degreesOfFreedom,
        double pValue,
        List<Double> interval,
        boolean equalVarianceAssumed,
        String method,
        List<String> sources,
        List<String> validity) {}
