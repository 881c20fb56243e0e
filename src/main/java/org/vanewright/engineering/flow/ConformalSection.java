package org.vanewright.engineering.flow;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.complex.Complex;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.SectionSpec;
import org.vanewright.engineering.section.Sections;

/**
 * A section whose flow is known exactly: the Kármán-Trefftz image of a circle through ζ = 1,
 *
 * <pre>
 * z = k [(ζ + 1)^k + (ζ − 1)^k] / [(ζ + 1)^k − (ζ − 1)^k]
 * </pre>
 *
 * <p>with trailing-edge angle (2 − k)·180°; Joukowski's for k = 2. Source: T. Theodorsen, I. E. Garrick, "General potential
 * theory of arbitrary wing sections", NACA TR-452 (1933), and any text on conformal mapping.
 *
 * @param centre x of the circle's centre, in the circle's plane; below 0
 * @param k exponent
 */
record ConformalSection(double centre, double k) {
    private static final int POINTS = 800;

    Section section() {
        List<List<Double>> points = new ArrayList<>();
        for (int i = 0; i <= POINTS; i++) {
            boolean edge = i == 0 || i == POINTS;
            Complex z = edge ? new Complex(k) : image(2 * Math.PI * i / POINTS);
            points.add(List.of(z.getReal(), z.getImaginary()));
        }
        return Sections.of(new SectionSpec(null, null, points, null));
    }

    double chord() {
        return k - image(Math.PI).getReal();
    }

    /** Place on the skin that belongs to an angle on the circle. */
    Complex image(double circleAngle) {
        Complex zeta = onCircle(circleAngle);
        Complex a = zeta.add(1).pow(k);
        Complex b = zeta.subtract(1).pow(k);
        return a.add(b).divide(a.subtract(b)).multiply(k);
    }

    /** Lift per chord: 8π (a/c) sin α. */
    double liftCoefficient(double angleRad) {
        return 8 * Math.PI * (1 - centre) / chord() * Math.sin(angleRad);
    }

    /** Speed on the skin over the free stream's. */
    double speed(double circleAngle, double angleRad) {
        Complex zeta = onCircle(circleAngle);
        Complex out = zeta.subtract(centre);
        double radius = 1 - centre;
        Complex stream = new Complex(Math.cos(angleRad), -Math.sin(angleRad));
        Complex circulation = new Complex(0, 2 * radius * Math.sin(angleRad)).divide(out);
        Complex w = stream.subtract(stream.conjugate().multiply(radius * radius).divide(out.multiply(out)))
                .add(circulation);
        Complex difference = zeta.add(1).pow(k).subtract(zeta.subtract(1).pow(k));
        Complex slope =
                zeta.multiply(zeta).subtract(1).pow(k - 1).multiply(4 * k * k).divide(difference.multiply(difference));
        return w.norm() / slope.norm();
    }

    private Complex onCircle(double angle) {
        double radius = 1 - centre;
        return new Complex(centre + radius * Math.cos(angle), radius * Math.sin(angle));
    }
}
