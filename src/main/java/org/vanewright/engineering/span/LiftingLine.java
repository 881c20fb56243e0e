package org.vanewright.engineering.span;

import java.util.function.DoubleFunction;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.LUDecomposition;

/**
 * Lift along the span of an unswept wing whose halves mirror each other, by Prandtl's lifting line in Glauert's form. With
 * y = s cos θ and Γ = 4 s V Σ Aₙ sin nθ (n odd), at each of as many stations as terms:
 *
 * <pre>
 * Σ Aₙ sin nθ (n μ + sin θ) = μ (α − α₀) sin θ,    μ = a c / (8 s)
 * C_L = π AR A₁        c_l = 8 s/c Σ Aₙ sin nθ        C_Di = π AR Σ n Aₙ²
 * </pre>
 *
 * <p>Source: H. Glauert, The Elements of Aerofoil and Airscrew Theory, 2nd edition, 1947, chapter XI (from memory).
 * Straight and slender wings only: sweep, fuselage, flaps and struts are not in it, and it holds as far as the lift of
 * the sections is linear.
 */
public final class LiftingLine {
    private static final int TERMS = 40;

    private final double semiSpanMm;
    private final double areaMm2;
    private final DoubleFunction<SpanStation> stations;
    private final double[] perRadian;
    private final double[] basic;

    /**
     * @param semiSpanMm from the centre line to the tip
     * @param stations the wing at a distance from the centre line in mm, 0 to the semi-span; chords are positive
     */
    public LiftingLine(double semiSpanMm, DoubleFunction<SpanStation> stations) {
        if (!(semiSpanMm > 0) || !Double.isFinite(semiSpanMm)) {
            throw new IllegalArgumentException("a wing has a span: " + semiSpanMm);
        }
        this.semiSpanMm = semiSpanMm;
        this.stations = stations;
        this.areaMm2 = 2 * halfArea();
        double[][] matrix = new double[TERMS][TERMS];
        double[] one = new double[TERMS];
        double[] zeroLift = new double[TERMS];
        for (int i = 0; i < TERMS; i++) {
            double theta = Math.PI / 2 * (i + 1) / TERMS;
            SpanStation station = stations.apply(semiSpanMm * Math.cos(theta));
            double mu = station.liftSlopePerRad() * station.chordMm() / (8 * semiSpanMm);
            for (int j = 0; j < TERMS; j++) {
                int n = 2 * j + 1;
                matrix[i][j] = Math.sin(n * theta) * (n * mu + Math.sin(theta));
            }
            one[i] = mu * Math.sin(theta);
            zeroLift[i] = -mu * Math.sin(theta) * station.zeroLiftRad();
        }
        DecompositionSolver solver = new LUDecomposition(new Array2DRowRealMatrix(matrix, false)).getSolver();
        perRadian = solver.solve(new ArrayRealVector(one, false)).toArray();
        basic = solver.solve(new ArrayRealVector(zeroLift, false)).toArray();
    }

    /** Both halves, the part between the roots included. */
    public double areaM2() {
        return areaMm2 * 1e-6;
    }

    /** (2 s)²/S. */
    public double aspectRatio() {
        return 4 * semiSpanMm * semiSpanMm / areaMm2;
    }

    /** The loading at which the whole wing has that lift coefficient, on {@link #areaM2}. */
    public Loading atLiftCoefficient(double liftCoefficient) {
        double perArea = Math.PI * aspectRatio();
        return at((liftCoefficient / perArea - basic[0]) / perRadian[0]);
    }

    /** The loading at an angle of attack of the root's chord line. */
    public Loading at(double angleRad) {
        double[] terms = new double[TERMS];
        for (int j = 0; j < TERMS; j++) {
            terms[j] = angleRad * perRadian[j] + basic[j];
        }
        return new Loading(angleRad, terms);
    }

    /** By midpoints, exact but for the pieces that hold a joint of panels. */
    private double halfArea() {
        int pieces = 2000;
        double step = semiSpanMm / pieces;
        double sum = 0;
        for (int i = 0; i < pieces; i++) {
            sum += stations.apply((i + 0.5) * step).chordMm() * step;
        }
        return sum;
    }

    /** The lift at one angle of attack. */
    public final class Loading {
        private final double angleRad;
        private final double[] terms;

        private Loading(double angleRad, double[] terms) {
            this.angleRad = angleRad;
            this.terms = terms;
        }

        /** Of the root's chord line to the free stream. */
        public double angleRad() {
            return angleRad;
        }

        public double liftCoefficient() {
            return Math.PI * aspectRatio() * terms[0];
        }

        public double inducedDragCoefficient() {
            double sum = 0;
            for (int j = 0; j < TERMS; j++) {
                sum += (2 * j + 1) * terms[j] * terms[j];
            }
            return Math.PI * aspectRatio() * sum;
        }

        /**
         * Of the section there.
         *
         * @param stationMm from the centre line, either side; nearest the tip the series ends at none
         */
        public double liftCoefficientAt(double stationMm) {
            double theta = Math.acos(Math.min(1, Math.abs(stationMm) / semiSpanMm));
            double sum = 0;
            for (int j = 0; j < TERMS; j++) {
                sum += terms[j] * Math.sin((2 * j + 1) * theta);
            }
            return 8 * semiSpanMm / stations.apply(Math.abs(stationMm)).chordMm() * sum;
        }
    }
}
