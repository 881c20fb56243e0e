package org.vanewright.engineering.flow;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.vanewright.engineering.flow.PublishedCheck.HowKnown;

/** Where layers separate that have run along a flat roof, beside B. S. Stratford's criteria, which follow no layer. */
final class StratfordChecks {
    private static final String TURBULENT =
            "B. S. Stratford, The prediction of separation of the turbulent boundary layer, Journal of Fluid Mechanics 5,"
                    + " 1959, 1-16";
    private static final String LAMINAR =
            "B. S. Stratford's criterion of laminar separation, square root of C_p times x dC_p/dx = 0.102";

    private static final String AT_ONCE =
            "Thwaites' layer follows the pressure gradient at once where the roof ends; a real"
                    + " one takes some way.";
    private static final String LATE =
            "Stratford's criterion is known to be early, and H = 2.4 is the late end of the 1.8"
                    + " to 2.4 at which layers by Head's method are said to separate.";

    private static final double ROOF = 1;
    private static final double TURBULENT_VISCOSITY = 2e-7;
    private static final double LAMINAR_VISCOSITY = 1e-4;
    private static final int PIECES = 400;

    private StratfordChecks() {}

    static List<PublishedCheck> list() {
        CheckList list = new CheckList("Separation behind a flat roof");
        list.from(LAMINAR, HowKnown.FROM_MEMORY);
        for (double fall : new double[] {0.05, 0.1, 0.15}) {
            list.add(
                    "C_p at laminar separation, Stratford",
                    conditions(fall),
                    () -> pressure(fall, laminarSeparation(fall)),
                    pressure(fall, laminar(fall)),
                    0.02);
            if (fall > 0.1) {
                list.outsideBecause(AT_ONCE);
            }
        }
        list.from(TURBULENT, HowKnown.DERIVED);
        for (double fall : new double[] {0.3, 0.5, 0.8}) {
            list.add(
                            "C_p at turbulent separation, Stratford",
                            conditions(fall) + ", Re 5e6 of the roof",
                            () -> pressure(fall, turbulentSeparation(fall)),
                            pressure(fall, turbulent(fall)),
                            0.1)
                    .outsideBecause(LATE);
        }
        return list.list();
    }

    private static String conditions(double fall) {
        return String.format(Locale.ROOT, "U = 1 to x = 1, then 1 - %.2f (x - 1)", fall);
    }

    private static double speed(double fall, double x) {
        return 1 - fall * Math.max(0, x - ROOF);
    }

    private static double pressure(double fall, double x) {
        double u = speed(fall, x);
        return 1 - u * u;
    }

    private static double rise(double fall, double x) {
        return 2 * fall * speed(fall, x);
    }

    private static double laminar(double fall) {
        return root(x -> Math.sqrt(pressure(fall, x)) * x * rise(fall, x) - 0.102, fall);
    }

    /** The pressure's second derivative is below 0. */
    private static double turbulent(double fall) {
        return root(
                x -> pressure(fall, x) * Math.sqrt(x * rise(fall, x))
                        - 0.35 * Math.pow(1e-6 * x / TURBULENT_VISCOSITY, 0.1),
                fall);
    }

    private static double root(DoubleUnaryOperator excess, double fall) {
        return new BrentSolver(1e-9).solve(200, excess::applyAsDouble, ROOF, ROOF + 0.4 / fall);
    }

    private static double laminarSeparation(double fall) {
        return layer(fall, LAMINAR_VISCOSITY, Double.NaN).laminarSeparation;
    }

    private static double turbulentSeparation(double fall) {
        return layer(fall, TURBULENT_VISCOSITY, 0.01).separation;
    }

    private static Layer layer(double fall, double viscosity, double trip) {
        double[] s = new double[PIECES + 1];
        double[] u = new double[PIECES + 1];
        for (int i = 0; i <= PIECES; i++) {
            // a station where the roof ends
            s[i] = i <= PIECES / 2 ? 2 * ROOF * i / PIECES : ROOF + 0.5 / fall * (2.0 * i / PIECES - 1);
            u[i] = speed(fall, s[i]);
        }
        return BoundaryLayer.follow(new EdgeFlow(s, u, s, new double[PIECES + 1]), viscosity, trip, 1e-8);
    }
}
