package org.vanewright.engineering.flow;

import java.util.Arrays;
import java.util.List;
import org.vanewright.engineering.flow.FlatPlateRequest.PlateRegime;
import org.vanewright.engineering.flow.PublishedCheck.HowKnown;

/** Head's method on flat plates. */
final class TurbulentChecks {
    private static final String KARMAN_SCHOENHERR =
            "Karman-Schoenherr relation, as used by NASA Langley Turbulence Modeling"
                    + " Resource, flat-plate validation";
    private static final String RANS =
            "NASA Langley Turbulence Modeling Resource, flat-plate verification, grid-converged"
                    + " Spalart-Allmaras solutions";
    private static final String POWER_LAW = "H. Schlichting, Boundary-Layer Theory, 7th ed., 1979, chapter XXI";

    private static final String LOW = "Ludwieg and Tillmann's law gives too little friction in a layer this thin.";

    private TurbulentChecks() {}

    static List<PublishedCheck> list() {
        CheckList list = new CheckList("Turbulent layers");
        list.from(KARMAN_SCHOENHERR, HowKnown.READ);
        double[][] friction = {
            {1000, 0.00425420},
            {2000, 0.00363612},
            {4000, 0.00314396},
            {5000, 0.00300672},
            {7000, 0.00281622},
            {10000, 0.00263344}
        };
        for (double[] row : friction) {
            list.add(
                    "friction c_f, Head and Ludwieg-Tillmann",
                    "flat plate, Re_θ = " + (int) row[0],
                    () -> frictionAtMomentum(row[0]),
                    row[1],
                    0.05 * row[1]);
            if (row[0] == 1000) {
                list.outsideBecause(LOW);
            }
        }
        list.from(RANS, HowKnown.READ)
                .add("friction c_f", "flat plate, Re_x = 4.85e6", () -> frictionAt(0.97), 0.0027055, 0.05 * 0.0027055)
                .add(
                        "mean friction",
                        "flat plate, Re_L = 1e7",
                        TurbulentChecks::meanFriction,
                        0.002855,
                        0.05 * 0.002855);
        list.from(POWER_LAW, HowKnown.SECOND_HAND);
        for (double reynolds : new double[] {1e6, 3e6, 1e7}) {
            double law = 0.0592 * Math.pow(reynolds, -0.2);
            list.add(
                    "friction c_f, against 0.0592 Re^-1/5",
                    "flat plate, Re_x = " + reynolds,
                    () -> frictionAt(reynolds / 5e6),
                    law,
                    0.05 * law);
            if (reynolds == 1e6) {
                list.outsideBecause(LOW);
            }
        }
        list.add(
                "thickness, flat-plate calculation",
                "30 m/s, 0.15 m, turbulent",
                () -> LaminarChecks.plateMm(PlateRegime.TURBULENT),
                4.43,
                0.022,
                "mm");
        return list.list();
    }

    /** A plate of length 2 at unit Reynolds number 5 million, turbulent from close to its edge. */
    static Layer plate() {
        int pieces = 400;
        double[] s = new double[pieces + 1];
        double[] u = new double[pieces + 1];
        Arrays.fill(u, 1);
        for (int i = 0; i <= pieces; i++) {
            s[i] = 2.0 * i * i / (pieces * pieces);
        }
        return BoundaryLayer.follow(new EdgeFlow(s, u, s, new double[pieces + 1]), 2e-7, 2e-3, 1e-8);
    }

    private static double frictionAt(double x) {
        Layer plate = plate();
        return plate.edge.along(plate.friction, x);
    }

    private static double frictionAtMomentum(double momentumReynolds) {
        Layer plate = plate();
        int i = 1;
        while (plate.momentum[i] < momentumReynolds * 2e-7) {
            i++;
        }
        double part = (momentumReynolds * 2e-7 - plate.momentum[i - 1]) / (plate.momentum[i] - plate.momentum[i - 1]);
        return plate.friction[i - 1] + part * (plate.friction[i] - plate.friction[i - 1]);
    }

    private static double meanFriction() {
        Layer plate = plate();
        return 2 * plate.momentum[plate.last()] / 2;
    }
}
