package org.vanewright.engineering.inference;

/**
 * A modified configuration against the baseline.
 *
 * @param design how the values belong together
 * @param difference mean of the modified less that of the baseline
 * @param standardError of the difference
 * @param t difference over its standard error
 * @param degreesOfFreedom of the standard error, not always whole
 * @param pValue two-sided
 * @param confidence of the interval, between 0 and 1
 * @param interval of the difference
 * @param baselineCount values of the baseline
 * @param modifiedCount values of the modified configuration
 */
public record Comparison(
        Design design,
        double difference,
        double standardError,
        double t,
        double degreesOfFreedom,
        double pValue,
        double confidence,
        Interval interval,
        int baselineCount,
        int modifiedCount) {
    /** The power at which a change counts as one that could have been seen. */
    public static final double USUAL_POWER = 0.8;

    /** How values of the two configurations belong together. */
    public enum Design {
        INDEPENDENT,
        PAIRED,
        BLOCKED
    }

    /** From a difference and its standard error, however they were estimated; the error is above 0. */
    public static Comparison of(
            Design design,
            double difference,
            double standardError,
            double degreesOfFreedom,
            double confidence,
            int baselineCount,
            int modifiedCount) {
        double t = difference / standardError;
        double reach = StudentT.twoSided(confidence, degreesOfFreedom) * standardError;
        return new Comparison(
                design,
                difference,
                standardError,
                t,
                degreesOfFreedom,
                StudentT.twoSidedProbability(t, degreesOfFreedom),
                confidence,
                new Interval(difference - reach, difference + reach),
                baselineCount,
                modifiedCount);
    }

    /**
     * The smallest true change that such a campaign, with the scatter it had, sees with the given probability; the test is
     * two-sided at one less the confidence.
     *
     * @param power above 1 − confidence, below 1
     */
    public double smallestVisibleChange(double power) {
        return standardError * Power.visibleChangeInErrors(degreesOfFreedom, 1 - confidence, power);
    }

    /** The same difference with an interval of another confidence. */
    Comparison at(double otherConfidence) {
        return of(design, difference, standardError, degreesOfFreedom, otherConfidence, baselineCount, modifiedCount);
    }
}
