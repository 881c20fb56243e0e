package org.vanewright.engineering.flow;

import java.util.List;
import java.util.Locale;
import org.vanewright.engineering.flow.PublishedCheck.HowKnown;

/** The formulas that close the layers' equations, beside their values worked out by hand. */
final class ClosureChecks {
    private static final String THWAITES =
            "T. Cebeci, P. Bradshaw, Momentum Transfer in Boundary Layers, 1977, section 5.6, for Thwaites' method";
    private static final String HEAD =
            "M. R. Head, ARC R&M 3152, 1958, in the fits of T. Cebeci, P. Bradshaw, 1977, section 7.2";
    private static final String FRICTION = "H. Ludwieg, W. Tillmann, NACA TM 1285, 1950";
    private static final String MICHEL =
            "R. Michel, ONERA Rapport 1/1578A, 1951, in the fit of T. Cebeci, A. M. O. Smith, 1974";
    private static final String DRAG = "H. B. Squire, A. D. Young, ARC R&M 1838, 1938";

    /** λ, l, H. */
    private static final double[][] LAMINAR = {
        {0.05, 0.2940, 2.4356}, {0, 0.2200, 2.6100}, {-0.04, 0.1532, 2.8190}, {-0.08, 0.0545, 3.3063}
    };

    /** H, H₁, F. */
    private static final double[][] ENTRAINMENT = {
        {1.3, 9.8341, 0.009350},
        {1.4, 7.1775, 0.012667},
        {1.5, 5.9777, 0.015609},
        {1.6, 5.3093, 0.018260},
        {2.0, 3.9587, 0.031406},
        {2.4, 3.5931, 0.042236}
    };

    private ClosureChecks() {}

    static List<PublishedCheck> list() {
        CheckList list = new CheckList("Formulas of the layers");
        list.from(THWAITES, HowKnown.DERIVED);
        for (double[] row : LAMINAR) {
            String at = String.format(Locale.ROOT, "laminar, λ = %.2f", row[0]);
            list.add("shear l", at, () -> ThwaitesClosure.shear(row[0]), row[1], 1e-4)
                    .add("shape factor H", at, () -> ThwaitesClosure.shapeFactor(row[0]), row[2], 1e-4);
        }
        list.from(HEAD, HowKnown.DERIVED);
        for (double[] row : ENTRAINMENT) {
            String at = String.format(Locale.ROOT, "turbulent, H = %.1f", row[0]);
            list.add("entrainment shape H₁", at, () -> HeadClosure.entrainmentShape(row[0]), row[1], 1e-4)
                    .add("entrainment F", at, () -> entrainment(row[0]), row[2], 2e-6);
        }
        friction(list);
        list.from(MICHEL, HowKnown.DERIVED);
        double[][] transition = {{1e6, 690.7}, {2e6, 939.7}, {3e6, 1128.2}, {5e6, 1422.8}, {1e7, 1952.7}};
        for (double[] row : transition) {
            list.add(
                    "Re_θ at transition",
                    String.format(Locale.ROOT, "Re_s = %.0e", row[0]),
                    () -> TransitionCriterion.momentumReynolds(row[0]),
                    row[1],
                    0.1);
        }
        list.from(DRAG, HowKnown.DERIVED)
                .add(
                        "drag of one side",
                        "θ 0.003, U 0.95, H 1.4",
                        () -> SquireYoung.drag(0.003, 0.95, 1.4),
                        0.0050917,
                        1e-7)
                .add(
                        "drag of one side",
                        "θ 0.003, U 0.90, H 1.6",
                        () -> SquireYoung.drag(0.003, 0.9, 1.6),
                        0.0042379,
                        1e-7);
        return list.list();
    }

    private static void friction(CheckList list) {
        double[][] rows = {{1.3, 1000, 0.005076}, {1.4, 1000, 0.004342}, {1.4, 5000, 0.002821}, {1.4, 10_000, 0.002343}
        };
        list.from(FRICTION, HowKnown.DERIVED);
        for (double[] row : rows) {
            list.add(
                    "friction c_f",
                    String.format(Locale.ROOT, "turbulent, H = %.1f, Re_θ = %.0f", row[0], row[1]),
                    () -> HeadClosure.friction(row[0], row[1]),
                    row[2],
                    1e-6);
        }
    }

    private static double entrainment(double shape) {
        return HeadClosure.entrainment(HeadClosure.entrainmentShape(shape));
    }
}
