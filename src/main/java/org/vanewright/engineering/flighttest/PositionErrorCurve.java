package org.vanewright.engineering.flighttest;

import java.util.List;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.inference.StudentT;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Position error over indicated airspeed: a line or a parabola, whichever the person chose, through calibrated less indicated
 * airspeed by least squares. Its band holds the mean correction, not a single reading.
 *
 * <p>For the method of calibration W. B. Huston, Accuracy of Airspeed Measurements and Flight Calibration Procedures, NACA
 * Report 919, 1948; for the band N. R. Draper, H. Smith, Applied Regression Analysis, section "Confidence interval for the
 * mean" (from memory).
 */
public final class PositionErrorCurve {
    /** Form of the curve. */
    public enum Form {
        LINEAR(1),
        QUADRATIC(2);

        private final int degree;

        Form(int degree) {
            this.degree = degree;
        }
    }

    /**
     * An indicated airspeed put right.
     *
     * @param indicatedKt as read
     * @param calibratedKt by the curve
     * @param standardUncertaintyKt of the curve there
     * @param band of the calibrated airspeed
     * @param extrapolated whether it lies outside the speeds that were calibrated, as stalls usually do
     */
    public record Corrected(
            double indicatedKt,
            double calibratedKt,
            double standardUncertaintyKt,
            Interval band,
            boolean extrapolated) {}

    public static final int MOST_RUNS = 1_000;
    private static final double FASTEST_KT = 1_000;

    private final Form form;
    private final double lowestKt;
    private final double highestKt;
    private final RealVector coefficients;
    private final RealMatrix covariance;
    private final double residualKt;
    private final int degreesOfFreedom;

    private PositionErrorCurve(Form form, List<CalibrationRun> runs) {
        this.form = form;
        lowestKt = runs.stream().mapToDouble(CalibrationRun::indicatedKt).min().orElseThrow();
        highestKt = runs.stream().mapToDouble(CalibrationRun::indicatedKt).max().orElseThrow();
        double[][] rows = runs.stream().map(r -> powers(r.indicatedKt())).toArray(double[][]::new);
        OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
        regression.newSampleData(
                runs.stream().mapToDouble(CalibrationRun::correctionKt).toArray(), rows);
        coefficients = MatrixUtils.createRealVector(regression.estimateRegressionParameters());
        double variance = regression.estimateErrorVariance();
        covariance = MatrixUtils.createRealMatrix(regression.estimateRegressionParametersVariance())
                .scalarMultiply(variance);
        residualKt = Math.sqrt(variance);
        degreesOfFreedom = runs.size() - form.degree - 1;
    }

    /**
     * @param runs at least one more than the curve has coefficients, at as many different speeds as it has
     * @throws InvalidInputException field {@code runs…}: too few, out of range, or too few different speeds
     */
    public static PositionErrorCurve fit(Form form, List<CalibrationRun> runs) {
        Checks checks = new Checks();
        int fewest = form.degree + 2;
        checks.require(
                runs.size() >= fewest && runs.size() <= MOST_RUNS,
                "runs",
                runs.size() + " runs",
                fewest + " to " + MOST_RUNS + " runs");
        for (int i = 0; i < runs.size(); i++) {
            checks.range("runs[" + i + "].indicatedKt", runs.get(i).indicatedKt(), 1, FASTEST_KT, "kt");
            checks.range("runs[" + i + "].calibratedKt", runs.get(i).calibratedKt(), 1, FASTEST_KT, "kt");
        }
        checks.throwIfAny();
        long speeds =
                runs.stream().map(r -> Math.rint(r.indicatedKt())).distinct().count();
        if (speeds <= form.degree) {
            throw new InvalidInputException(new FieldProblem(
                    "runs", speeds + " different speeds", (form.degree + 1) + " speeds or more, a knot or more apart"));
        }
        return new PositionErrorCurve(form, runs);
    }

    /** Powers of the speed from the middle of the calibrated ones over half their span, without the constant. */
    private double[] powers(double indicatedKt) {
        double x = (2 * indicatedKt - lowestKt - highestKt) / (highestKt - lowestKt);
        return form == Form.LINEAR ? new double[] {x} : new double[] {x, x * x};
    }

    /**
     * @param indicatedKt above 0
     * @param confidence of the band, between 0 and 1
     */
    public Corrected at(double indicatedKt, double confidence) {
        RealVector row = MatrixUtils.createRealVector(new double[] {1})
                .append(MatrixUtils.createRealVector(powers(indicatedKt)));
        double calibrated = indicatedKt + coefficients.dotProduct(row);
        double uncertainty = Math.sqrt(Math.max(0, covariance.preMultiply(row).dotProduct(row)));
        double reach = StudentT.twoSided(confidence, degreesOfFreedom) * uncertainty;
        return new Corrected(
                indicatedKt,
                calibrated,
                uncertainty,
                new Interval(calibrated - reach, calibrated + reach),
                indicatedKt < lowestKt || indicatedKt > highestKt);
    }

    public Form form() {
        return form;
    }

    /** The calibrated range, indicated. */
    public Interval rangeKt() {
        return new Interval(lowestKt, highestKt);
    }

    /** Scatter of the runs about the curve. */
    public double residualKt() {
        return residualKt;
    }

    public int degreesOfFreedom() {
        return degreesOfFreedom;
    }
}
