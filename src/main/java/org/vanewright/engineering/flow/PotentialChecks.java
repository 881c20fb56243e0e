package org.vanewright.engineering.flow;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.complex.Complex;
import org.vanewright.engineering.flow.PublishedCheck.HowKnown;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SectionSpec;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.section.SurfaceSide;

/** The panel method beside exact flows, thin-aerofoil theory and tabulated velocities. */
final class PotentialChecks {
    private static final int PANELS = 200;
    private static final String MAPPING =
            "T. Theodorsen, I. E. Garrick, General potential theory of arbitrary wing sections, NACA TR-452, 1933";
    private static final String TR_824 =
            "I. H. Abbott, A. E. von Doenhoff, L. S. Stivers, Summary of airfoil data, NACA"
                    + " TR-824, 1945, appendix I";
    private static final String THIN =
            "H. Glauert, The Elements of Aerofoil and Airscrew Theory, 1926 (thin-aerofoil theory), on the mean lines of"
                    + " E. N. Jacobs, K. E. Ward, R. M. Pinkerton, NACA TR-460, 1933, and NACA TR-537, 1935";
    private static final String CLASSICAL = "H. Lamb, Hydrodynamics, 6th ed., 1932, articles 68 and 71";

    /** x/c [%], v/V, tolerance. */
    private static final double[][] NACA_0012_SPEEDS = {
        {0.5, 0.800, 0.015}, {1.25, 1.005, 0.012}, {2.5, 1.114, 0.012}, {5, 1.174, 0.012}, {7.5, 1.184, 0.012},
        {10, 1.188, 0.012}, {15, 1.188, 0.012}, {20, 1.183, 0.012}, {25, 1.174, 0.012}, {30, 1.162, 0.012},
        {40, 1.135, 0.012}, {50, 1.108, 0.012}, {60, 1.080, 0.012}, {70, 1.053, 0.012}, {80, 1.022, 0.012},
        {90, 0.978, 0.012}, {95, 0.952, 0.015}
    };

    private PotentialChecks() {}

    static List<PublishedCheck> list() {
        CheckList list = new CheckList("Potential flow");
        exactMaps(list);
        bluntBodies(list);
        for (double[] row : NACA_0012_SPEEDS) {
            list.from(TR_824, HowKnown.FROM_MEMORY)
                    .add(
                            "speed v/V, NACA 0012",
                            "zero lift, x/c = " + row[0] + " %",
                            () -> speedAtX(Sections.naca("0012"), row[0] / 100),
                            row[1],
                            row[2]);
        }
        thinAerofoils(list);
        return list.list();
    }

    private static void exactMaps(CheckList list) {
        ConformalSection joukowski = new ConformalSection(-0.1, 2);
        ConformalSection trefftz = new ConformalSection(-0.1, 1.94);
        list.from(MAPPING, HowKnown.DERIVED)
                .add("lift, Joukowski section 11.8 %", "5°, per chord", () -> lift(joukowski, 5), 0.597399, 0.0018)
                .add("lift, Karman-Trefftz section", "edge 10.8°, 5°", () -> lift(trefftz, 5), 0.615081, 0.0018);
        double[][] level = {{60, 1.007413}, {90, 1.103587}, {120, 1.191353}, {150, 1.201359}, {170, 0.859978}};
        for (double[] row : level) {
            list.add(
                    "speed V/U, Joukowski section",
                    "0°, circle angle " + row[0] + "°",
                    () -> speed(joukowski, row[0], 0),
                    row[1],
                    0.005);
        }
        double[][] lifting = {
            {60, 1.054272}, {120, 1.366664}, {150, 1.587553}, {170, 1.713412}, {200, 0.566265}, {270, 1.003203}
        };
        for (double[] row : lifting) {
            list.add(
                    "speed V/U, Joukowski section",
                    "5°, circle angle " + row[0] + "°",
                    () -> speed(joukowski, row[0], 5),
                    row[1],
                    0.005);
        }
    }

    private static double lift(ConformalSection map, double degrees) {
        PotentialFlow flow = PotentialFlow.about(map.section(), PANELS);
        return flow.at(Math.toRadians(degrees)).liftCoefficient() / map.chord();
    }

    private static double speed(ConformalSection map, double circleDegrees, double degrees) {
        PotentialFlow flow = PotentialFlow.about(map.section(), PANELS);
        Complex z = map.image(Math.toRadians(circleDegrees));
        return flow.at(Math.toRadians(degrees)).speedNear(z.getReal(), z.getImaginary());
    }

    private static void bluntBodies(CheckList list) {
        list.from(CLASSICAL, HowKnown.FROM_MEMORY)
                .add("largest speed, circle", "no circulation", () -> largestSpeed(ellipse(1)), 2, 2e-3)
                .add("largest speed, ellipse 20 %", "0°", () -> largestSpeed(ellipse(0.2)), 1.2, 1e-3)
                .add("largest speed, ellipse 10 %", "0°", () -> largestSpeed(ellipse(0.1)), 1.1, 1e-3);
    }

    static Section ellipse(double ratio) {
        List<List<Double>> points = new ArrayList<>();
        for (int i = 0; i <= 400; i++) {
            double angle = 2 * Math.PI * i / 400;
            double y = i == 0 || i == 400 ? 0 : 0.5 * ratio * Math.sin(angle);
            points.add(List.of(0.5 + 0.5 * Math.cos(angle), y));
        }
        return Sections.of(new SectionSpec(null, null, points, null));
    }

    private static double largestSpeed(Section section) {
        double largest = 0;
        for (double v : PotentialFlow.about(section, PANELS).at(0).vorticity()) {
            largest = Math.max(largest, Math.abs(v));
        }
        return largest;
    }

    private static double speedAtX(Section section, double x) {
        PotentialFlow flow = PotentialFlow.about(section, PANELS);
        var place = section.atX(SurfaceSide.UPPER, x);
        return flow.at(0).speedNear(place.x(), place.y());
    }

    private static void thinAerofoils(CheckList list) {
        list.from(THIN, HowKnown.DERIVED);
        String[] lines = {"24", "44", "14", "64", "220", "240"};
        double[] angles = {-2.077, -4.1545, -1.0386, -6.2317, -0.8823, -1.2916};
        for (int i = 0; i < lines.length; i++) {
            String line = lines[i];
            list.add(
                    "zero-lift angle, NACA " + line + "xx",
                    "thickness 4, 8 and 12 % carried on to nothing",
                    () -> thin(line, PotentialChecks::zeroLiftDegrees),
                    angles[i],
                    Math.max(0.01, 0.01 * Math.abs(angles[i])),
                    "°");
            if (line.equals("64")) {
                list.outsideBecause("The theory is linear in camber; at 6 % the panel method shows its second order.");
            }
        }
        list.add(
                        "quarter-chord moment, NACA 24xx",
                        "as above",
                        () -> thin("24", PotentialChecks::moment),
                        -0.0531,
                        3e-4)
                .add(
                        "quarter-chord moment, NACA 44xx",
                        "as above",
                        () -> thin("44", PotentialChecks::moment),
                        -0.1062,
                        1.1e-3)
                .add(
                        "lift slope per radian",
                        "as above",
                        () -> thin("00", PotentialFlow::liftSlope),
                        2 * Math.PI,
                        0.01);
    }

    private interface OfFlow {
        double of(PotentialFlow flow);
    }

    /** The parabola through three thicknesses at thickness 0. */
    private static double thin(String line, OfFlow quantity) {
        return 3 * at(line + "04", quantity) - 3 * at(line + "08", quantity) + at(line + "12", quantity);
    }

    private static double at(String number, OfFlow quantity) {
        return quantity.of(PotentialFlow.about(Sections.naca(number), PANELS));
    }

    private static double zeroLiftDegrees(PotentialFlow flow) {
        return Math.toDegrees(flow.angleForLift(0));
    }

    private static double moment(PotentialFlow flow) {
        return flow.at(flow.angleForLift(0)).momentCoefficient();
    }
}
