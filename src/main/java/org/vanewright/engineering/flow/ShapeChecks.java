package org.vanewright.engineering.flow;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.vanewright.engineering.flow.PublishedCheck.HowKnown;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.section.SkinPoint;
import org.vanewright.engineering.section.SurfaceSide;

/** Shapes of sections beside their published ordinates. */
final class ShapeChecks {
    private static final String ORDINATES =
            "I. H. Abbott, A. E. von Doenhoff, L. S. Stivers, Summary of airfoil data, NACA TR-824, 1945, appendix I";
    private static final String FORMULAS =
            "E. N. Jacobs, K. E. Ward, R. M. Pinkerton, NACA TR-460, 1933, and NACA TR-537, 1935, formulas worked out by hand";

    /** x, half thickness of the NACA 0012, both in % of the chord; the table rounds. */
    private static final double[][] NACA_0012 = {
        {1.25, 1.894},
        {2.5, 2.615},
        {5, 3.555},
        {7.5, 4.200},
        {10, 4.683},
        {15, 5.345},
        {20, 5.737},
        {25, 5.941},
        {30, 6.002},
        {40, 5.803},
        {50, 5.294},
        {60, 4.563},
        {70, 3.664},
        {80, 2.623},
        {90, 1.448},
        {95, 0.807},
        {100, 0.126}
    };

    private static final double ROUNDED = 0.0012;

    /** Mean-line x, then upper and lower surface points. */
    private static final double[][] NACA_2412 = {
        {0.1, 0.09650, 0.05545, 0.10350, -0.03795}, {0.4, 0.40000, 0.07803, 0.40000, -0.03803}
    };

    private static final double[][] NACA_4412 = {{0.3, 0.29700, 0.09744, 0.30300, -0.02244}};

    private ShapeChecks() {}

    static List<PublishedCheck> list() {
        CheckList list = new CheckList("Shapes of sections");
        list.from(ORDINATES, HowKnown.FROM_MEMORY);
        for (double[] row : NACA_0012) {
            list.add(
                    "half thickness, NACA 0012",
                    "x/c = " + row[0] + " %",
                    () -> 100
                            * Sections.naca("0012")
                                    .atX(SurfaceSide.UPPER, row[0] / 100)
                                    .y(),
                    row[1],
                    ROUNDED,
                    "%");
        }
        list.from(FORMULAS, HowKnown.DERIVED);
        points(list, "2412", NACA_2412);
        points(list, "4412", NACA_4412);
        of(list, "leading-edge radius", "NACA 0012", "0012", Section::leadingEdgeRadius, 0.01587, 1e-5);
        of(list, "largest thickness", "NACA 0012", "0012", Section::maximumThickness, 0.12, 1e-4);
        of(list, "largest camber", "NACA 230 mean line", "23012", Section::maximumCamber, 0.018386, 1e-5);
        return list.list();
    }

    private static void points(CheckList list, String number, double[][] rows) {
        for (double[] row : rows) {
            String at = "mean line at x = " + row[0];
            list.add(
                            "upper y, NACA " + number,
                            at,
                            () -> skin(number, SurfaceSide.UPPER, row[1]).y(),
                            row[2],
                            1.5e-5)
                    .add(
                            "lower y, NACA " + number,
                            at,
                            () -> skin(number, SurfaceSide.LOWER, row[3]).y(),
                            row[4],
                            1.5e-5);
        }
    }

    private static SkinPoint skin(String number, SurfaceSide side, double x) {
        return Sections.naca(number).atX(side, x);
    }

    private static void of(
            CheckList list,
            String quantity,
            String conditions,
            String number,
            ToDoubleFunction<Section> figure,
            double published,
            double tolerance) {
        list.add(quantity, conditions, () -> figure.applyAsDouble(Sections.naca(number)), published, tolerance);
    }
}
