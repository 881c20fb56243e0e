package org.vanewright.engineering.flighttest;

import java.util.List;
import java.util.Objects;
import org.hipparchus.stat.regression.SimpleRegression;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.inference.Sample;
import org.vanewright.engineering.inference.StudentT;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Repeated stalls of one configuration at its standard mass.
 *
 * <p>A faster loss of speed delays the break. Where at least three stalls have their entry rate, all of them have it, and
 * the rates spread over 0.2 kt/s or more, a straight line through speed over rate is read at 1 kt/s, the rate above which
 * 14 CFR 23.201(b) as of 1996 (61 FR 5191) does not allow a stall to be demonstrated; reading the fairing of several rates
 * there follows AC 23-8C (from memory). Otherwise no slope is claimed and the mean stands.
 *
 * @param standardAirspeedsKt of each stall, at the standard mass and a load factor of 1
 * @param liftCoefficients of each stall; null without a wing area
 * @param meanKt of the standard airspeeds
 * @param standardDeviationKt of single stalls; null for one stall
 * @param standardErrorKt of the mean; null for one stall
 * @param entryRateSlope change of the standard airspeed with entry rate, kt per kt/s; null where rates do not vary enough
 * @param atOneKnotPerSecondKt read from that line, or the mean
 * @param atOneKnotPerSecondErrorKt its standard error; null for one stall
 * @param degreesOfFreedom of that error
 */
public record StallReduction(
        List<Double> standardAirspeedsKt,
        @Nullable List<Double> liftCoefficients,
        double meanKt,
        @Nullable Double standardDeviationKt,
        @Nullable Double standardErrorKt,
        @Nullable Double entryRateSlope,
        double atOneKnotPerSecondKt,
        @Nullable Double atOneKnotPerSecondErrorKt,
        int degreesOfFreedom) {
    public static final int MOST_POINTS = 1_000;

    /** Rates closer together say nothing about a slope. */
    public static final double LEAST_RATE_SPREAD_KT_PER_S = 0.2;

    /** Fewer points leave a line no scatter. */
    public static final int FEWEST_FOR_SLOPE = 3;

    private static final double STANDARD_RATE_KT_PER_S = 1;

    /**
     * @param wingAreaM2 reference area of lift coefficients; null for none
     * @throws InvalidInputException fields {@code standardMassKg}, {@code wingAreaM2}, {@code points…}: missing or out of
     *     range
     */
    public static StallReduction of(List<StallPoint> points, double standardMassKg, @Nullable Double wingAreaM2) {
        check(points, standardMassKg, wingAreaM2);
        List<Double> speeds =
                points.stream().map(p -> p.standardAirspeedKt(standardMassKg)).toList();
        List<Double> lift = wingAreaM2 == null
                ? null
                : points.stream().map(p -> p.liftCoefficient(wingAreaM2)).toList();
        if (speeds.size() == 1) {
            return new StallReduction(speeds, lift, speeds.get(0), null, null, null, speeds.get(0), null, 0);
        }
        Sample sample =
                Sample.of(speeds.stream().mapToDouble(Double::doubleValue).toArray());
        double[] rates = points.stream()
                .map(StallPoint::entryRateKtPerS)
                .filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .toArray();
        boolean line = rates.length == speeds.size() && varies(rates);
        SimpleRegression fit = new SimpleRegression();
        for (int i = 0; line && i < rates.length; i++) {
            fit.addData(rates[i], speeds.get(i));
        }
        return new StallReduction(
                speeds,
                lift,
                sample.mean(),
                sample.standardDeviation(),
                sample.standardError(),
                line ? (Double) fit.getSlope() : null,
                line ? fit.predict(STANDARD_RATE_KT_PER_S) : sample.mean(),
                line ? errorAtStandardRate(fit, rates) : sample.standardError(),
                speeds.size() - (line ? 2 : 1));
    }

    private static void check(List<StallPoint> points, double standardMassKg, @Nullable Double wingAreaM2) {
        Checks checks = new Checks();
        checks.range("standardMassKg", standardMassKg, 10, FuelMass.HEAVIEST_KG, "kg");
        checks.optionalRange("wingAreaM2", wingAreaM2, 0.1, 500, "m²");
        checks.require(
                !points.isEmpty() && points.size() <= MOST_POINTS,
                "points",
                points.size() + " points",
                "1 to " + MOST_POINTS + " points");
        for (int i = 0; i < points.size(); i++) {
            String point = "points[" + i + "].";
            StallPoint p = points.get(i);
            checks.range(point + "calibratedAirspeedKt", p.calibratedAirspeedKt(), 1, 400, "kt");
            checks.range(point + "massKg", p.massKg(), 10, FuelMass.HEAVIEST_KG, "kg");
            checks.range(point + "loadFactor", p.loadFactor(), 0.1, 10, "");
            checks.optionalRange(point + "entryRateKtPerS", p.entryRateKtPerS(), 0, 20, "kt/s");
        }
        checks.throwIfAny();
    }

    private static boolean varies(double[] rates) {
        if (rates.length < FEWEST_FOR_SLOPE) {
            return false;
        }
        double low = rates[0];
        double high = rates[0];
        for (double rate : rates) {
            low = Math.min(low, rate);
            high = Math.max(high, rate);
        }
        return high - low >= LEAST_RATE_SPREAD_KT_PER_S - 1e-12;
    }

    /** √(s² (1/n + (1 − x̄)²/Σ(x − x̄)²)). */
    private static double errorAtStandardRate(SimpleRegression fit, double[] rates) {
        double mean = Sample.of(rates).mean();
        double away = STANDARD_RATE_KT_PER_S - mean;
        double variance =
                Math.max(0, fit.getMeanSquareError()) * (1.0 / rates.length + away * away / fit.getXSumSquares());
        return Math.sqrt(variance);
    }

    /** Interval of the speed at 1 kt/s from the scatter alone; null for one stall. */
    public @Nullable Interval interval(double confidence) {
        if (atOneKnotPerSecondErrorKt == null) {
            return null;
        }
        double reach = StudentT.twoSided(confidence, degreesOfFreedom) * atOneKnotPerSecondErrorKt;
        return new Interval(atOneKnotPerSecondKt - reach, atOneKnotPerSecondKt + reach);
    }
}
