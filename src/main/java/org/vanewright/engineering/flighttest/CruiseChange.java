package org.vanewright.engineering.flighttest;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.vanewright.engineering.inference.Comparison;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Change of true airspeed at equal power between two configurations. Through the reduced points of both runs
 *
 * <pre>
 * ln V_iw = a + c·(1 if modified) + b ln P_iw
 * </pre>
 *
 * by least squares: one slope b, which the powers of either decide together, and a change c. Where all powers are within
 * 5 % of each other there is no slope to find and b is ⅓, that of drag growing with the square of speed. The change is a ratio
 * of speeds, so it is the same for true airspeed at any density.
 *
 * @param logarithm the comparison of ln V_iw
 * @param slope b
 * @param powerKw P_iw for which speeds are given: the geometric mean of all points
 * @param baselineKt V_iw of the baseline at that power
 * @param powersOverlap whether the ranges of P_iw have something in common; else the change leans on the slope alone
 */
public record CruiseChange(
        Comparison logarithm, double slope, double powerKw, double baselineKt, boolean powersOverlap) {
    private static final double LEAST_LOG_SPREAD = 0.05;
    private static final double CUBE_LAW = 1.0 / 3;
    private static final int MOST_POINTS = 500;

    /**
     * @param baseline two or more points
     * @param modified two or more points
     * @throws InvalidInputException fields {@code baseline…}, {@code modified…}, {@code standardMassKg}: too few, out of range
     *     or without any scatter
     */
    public static CruiseChange of(
            List<CruisePoint> baseline, List<CruisePoint> modified, double standardMassKg, double confidence) {
        check(baseline, modified, standardMassKg);
        List<double[]> rows = new ArrayList<>();
        baseline.forEach(p -> rows.add(row(p, standardMassKg, 0)));
        modified.forEach(p -> rows.add(row(p, standardMassKg, 1)));
        double middle = rows.stream().mapToDouble(r -> r[0]).average().orElseThrow();
        double low = rows.stream().mapToDouble(r -> r[0]).min().orElseThrow();
        double high = rows.stream().mapToDouble(r -> r[0]).max().orElseThrow();
        boolean sloped = high - low >= LEAST_LOG_SPREAD && slopeCanBeFound(rows);
        OLSMultipleLinearRegression fit = new OLSMultipleLinearRegression();
        double fixed = sloped ? 0 : CUBE_LAW;
        fit.newSampleData(
                rows.stream().mapToDouble(r -> r[1] - fixed * (r[0] - middle)).toArray(),
                rows.stream()
                        .map(r -> sloped ? new double[] {r[2], r[0] - middle} : new double[] {r[2]})
                        .toArray(double[][]::new));
        double[] found = fit.estimateRegressionParameters();
        double error = fit.estimateRegressionParametersStandardErrors()[1];
        Checks checks = new Checks();
        checks.require(error > 0, "baseline", "points without any scatter", "points that scatter, here or in modified");
        checks.throwIfAny();
        int freedom = rows.size() - found.length;
        return new CruiseChange(
                Comparison.of(
                        Comparison.Design.INDEPENDENT,
                        found[1],
                        error,
                        freedom,
                        confidence,
                        baseline.size(),
                        modified.size()),
                sloped ? found[2] : CUBE_LAW,
                Math.exp(middle),
                Math.exp(found[0]),
                overlap(rows));
    }

    private static void check(List<CruisePoint> baseline, List<CruisePoint> modified, double standardMassKg) {
        Checks checks = new Checks();
        checks.range("standardMassKg", standardMassKg, 10, FuelMass.HEAVIEST_KG, "kg");
        check(checks, "baseline", baseline);
        check(checks, "modified", modified);
        checks.throwIfAny();
    }

    private static void check(Checks checks, String name, List<CruisePoint> points) {
        checks.require(
                points.size() >= 2 && points.size() <= MOST_POINTS,
                name,
                points.size() + " points",
                "2 to " + MOST_POINTS + " points");
        for (int i = 0; i < points.size(); i++) {
            points.get(i).check(checks, name + "[" + i + "]");
        }
    }

    /** ln P_iw, ln V_iw, configuration. */
    private static double[] row(CruisePoint point, double standardMassKg, int configuration) {
        return new double[] {
            Math.log(point.standardPowerKw(standardMassKg)),
            Math.log(point.standardAirspeedKt(standardMassKg)),
            configuration
        };
    }

    /** Powers must vary within a configuration, or slope and change cannot be told apart. */
    private static boolean slopeCanBeFound(List<double[]> rows) {
        return spread(rows, 0) >= LEAST_LOG_SPREAD || spread(rows, 1) >= LEAST_LOG_SPREAD;
    }

    private static double spread(List<double[]> rows, int configuration) {
        return high(rows, configuration) - low(rows, configuration);
    }

    private static double low(List<double[]> rows, int configuration) {
        return rows.stream()
                .filter(r -> r[2] == configuration)
                .mapToDouble(r -> r[0])
                .min()
                .orElseThrow();
    }

    private static double high(List<double[]> rows, int configuration) {
        return rows.stream()
                .filter(r -> r[2] == configuration)
                .mapToDouble(r -> r[0])
                .max()
                .orElseThrow();
    }

    private static boolean overlap(List<double[]> rows) {
        return low(rows, 0) <= high(rows, 1) && low(rows, 1) <= high(rows, 0);
    }

    /** Modified over baseline less 1, with its interval. */
    public double relativeChange() {
        return Math.expm1(logarithm.difference());
    }

    public Interval relativeInterval() {
        return new Interval(
                Math.expm1(logarithm.interval().low()),
                Math.expm1(logarithm.interval().high()));
    }

    /**
     * Change of true airspeed at a density, at the power P_iw/√σ.
     *
     * @param densityRatio σ, above 0
     */
    public double changeKt(double densityRatio) {
        return baselineKt * relativeChange() / Math.sqrt(densityRatio);
    }

    public Interval intervalKt(double densityRatio) {
        double speed = baselineKt / Math.sqrt(densityRatio);
        Interval relative = relativeInterval();
        return new Interval(speed * relative.low(), speed * relative.high());
    }
}
