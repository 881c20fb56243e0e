package org.vanewright.engineering.section;

import java.util.Arrays;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.interpolation.DividedDifferenceInterpolator;
import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialFunction;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.vanewright.engineering.geometry.Point2;

/**
 * One C2 cubic spline through a whole outline, trailing edge to trailing edge, so that the nose is smooth.
 *
 * <p>The parameter starts as the cumulative chord length and is replaced by the spline's own arc length in
 * {@value #PASSES} passes, which brings the speed close to 1 everywhere (J. H. Ahlberg, E. N. Nilson, J. L. Walsh, "The
 * Theory of Splines and Their Applications", 1967, on parametrisation by length). Beyond each end the outline is carried
 * on by {@value #CARRIED_ON} points on the parabola through the last three, so that the trailing edge keeps its curvature
 * although the carried-on spline ends naturally.
 */
final class LoopSpline implements SkinCurve {
    private static final int PASSES = 3;
    private static final int TERMS = 4;
    private static final int CARRIED_ON = 2;

    private final double[] knots;
    private final double[] xTerms;
    private final double[] yTerms;

    private LoopSpline(double[] knots, double[] x, double[] y) {
        this.knots = knots;
        double[] carriedKnots = carriedOn(knots);
        xTerms = terms(new SplineInterpolator().interpolate(carriedKnots, carriedOn(knots, x, carriedKnots)));
        yTerms = terms(new SplineInterpolator().interpolate(carriedKnots, carriedOn(knots, y, carriedKnots)));
    }

    /** @param points at least three, no two neighbours equal */
    static LoopSpline through(Point2[] points) {
        double[] x = new double[points.length];
        double[] y = new double[points.length];
        double[] knots = new double[points.length];
        for (int i = 0; i < points.length; i++) {
            x[i] = points[i].x();
            y[i] = points[i].y();
            knots[i] = i == 0 ? 0 : knots[i - 1] + points[i].distanceTo(points[i - 1]);
        }
        LoopSpline spline = new LoopSpline(knots, x, y);
        for (int pass = 0; pass < PASSES; pass++) {
            spline = new LoopSpline(spline.knotArcs(), x, y);
        }
        return spline;
    }

    double knot(int index) {
        return knots[index];
    }

    double end() {
        return knots[knots.length - 1];
    }

    /** Knots strictly between two parameter values. */
    double[] knotsBetween(double low, double high) {
        double margin = 1e-12 * end();
        return Arrays.stream(knots)
                .filter(k -> k > low + margin && k < high - margin)
                .toArray();
    }

    @Override
    public double[] breaks() {
        return knots.clone();
    }

    @Override
    public CurvePoint at(double s) {
        int piece = piece(s);
        double d = s - knots[piece];
        int i = TERMS * piece;
        return new CurvePoint(
                value(xTerms, i, d),
                value(yTerms, i, d),
                slope(xTerms, i, d),
                slope(yTerms, i, d),
                2 * xTerms[i + 2] + 6 * xTerms[i + 3] * d,
                2 * yTerms[i + 2] + 6 * yTerms[i + 3] * d);
    }

    @Override
    public double speed(double s) {
        int piece = piece(s);
        double d = s - knots[piece];
        double dx = slope(xTerms, TERMS * piece, d);
        double dy = slope(yTerms, TERMS * piece, d);
        // See CurvePoint.speed.
        return Math.sqrt(dx * dx + dy * dy);
    }

    private double[] knotArcs() {
        double[] arcs = new double[knots.length];
        for (int i = 1; i < arcs.length; i++) {
            arcs[i] = arcs[i - 1] + ArcLengthTable.integral(this, knots[i - 1], knots[i]);
        }
        return arcs;
    }

    private int piece(double s) {
        int found = Arrays.binarySearch(knots, s);
        int piece = found >= 0 ? found : -found - 2;
        return Math.max(0, Math.min(piece, knots.length - 2));
    }

    private static double value(double[] c, int i, double d) {
        return c[i] + d * (c[i + 1] + d * (c[i + 2] + d * c[i + 3]));
    }

    private static double slope(double[] c, int i, double d) {
        return c[i + 1] + d * (2 * c[i + 2] + d * 3 * c[i + 3]);
    }

    /** Knots with as many more at either end as the outline is carried on by, at the spacing found there. */
    private static double[] carriedOn(double[] knots) {
        int n = knots.length;
        double[] more = new double[n + 2 * CARRIED_ON];
        System.arraycopy(knots, 0, more, CARRIED_ON, n);
        for (int i = 1; i <= CARRIED_ON; i++) {
            more[CARRIED_ON - i] = knots[0] - i * (knots[1] - knots[0]);
            more[CARRIED_ON + n - 1 + i] = knots[n - 1] + i * (knots[n - 1] - knots[n - 2]);
        }
        return more;
    }

    private static double[] carriedOn(double[] knots, double[] values, double[] carriedKnots) {
        int n = knots.length;
        double[] more = new double[n + 2 * CARRIED_ON];
        System.arraycopy(values, 0, more, CARRIED_ON, n);
        UnivariateFunction before = parabola(knots, values, 0);
        UnivariateFunction after = parabola(knots, values, n - 3);
        for (int i = 0; i < CARRIED_ON; i++) {
            more[i] = before.value(carriedKnots[i]);
            more[CARRIED_ON + n + i] = after.value(carriedKnots[CARRIED_ON + n + i]);
        }
        return more;
    }

    private static UnivariateFunction parabola(double[] knots, double[] values, int first) {
        return new DividedDifferenceInterpolator()
                .interpolate(Arrays.copyOfRange(knots, first, first + 3), Arrays.copyOfRange(values, first, first + 3));
    }

    /** Coefficients of the pieces between the outline's own knots. */
    private static double[] terms(PolynomialSplineFunction spline) {
        PolynomialFunction[] pieces = spline.getPolynomials();
        double[] terms = new double[TERMS * (pieces.length - 2 * CARRIED_ON)];
        for (int i = 0; i < terms.length / TERMS; i++) {
            // a piece of lower degree has fewer coefficients
            double[] c = pieces[CARRIED_ON + i].getCoefficients();
            System.arraycopy(c, 0, terms, TERMS * i, c.length);
        }
        return terms;
    }
}
