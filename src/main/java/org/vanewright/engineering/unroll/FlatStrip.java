package org.vanewright.engineering.unroll;

import java.util.OptionalDouble;

/**
 * The strip between two neighbouring rulings du apart, laid flat. On the skin its width at span fraction t is
 * |(1 − t) N₀ + t N₁| du with N the ends' rates square to the ruling; on the sheet it can only be linear in t. The
 * sheet takes the true widths at both ends, as two triangles with a common diagonal do, less one constant that makes
 * the width true where the row line crosses. What runs along the ruling is true everywhere, so the widths' ratio is the
 * principal strain.
 *
 * @param ends of the ruling
 * @param innerSquare width on the sheet per du at the inner end, mm
 * @param outerSquare at the outer end
 */
record FlatStrip(RulingEnds ends, double innerSquare, double outerSquare) {
    static FlatStrip of(RulingEnds ends, OptionalDouble crossing) {
        double inner = ends.square(0);
        double outer = ends.square(1);
        double excess = 0;
        if (crossing.isPresent()) {
            double t = crossing.getAsDouble();
            excess = (1 - t) * inner + t * outer - ends.square(t);
        }
        return new FlatStrip(ends, inner - excess, outer - excess);
    }

    double square(double spanFraction) {
        return innerSquare + spanFraction * (outerSquare - innerSquare);
    }

    /** How fast the ruling turns on the sheet, radians per du, anticlockwise. */
    double turning() {
        return (innerSquare - outerSquare) / ends.length();
    }

    /** Largest strain along this ruling. */
    Strain strain(double chordFraction) {
        Strain worst = strainAt(0, chordFraction);
        for (double t : new double[] {extreme(), 1}) {
            Strain here = strainAt(t, chordFraction);
            worst = here.value() > worst.value() ? here : worst;
        }
        return worst;
    }

    private Strain strainAt(double t, double chordFraction) {
        double truth = ends.square(t);
        double whole = Math.max(ends.square(0), ends.square(1));
        // a strip that closes to a point at one end has no length there to strain
        double value = truth > 1e-9 * whole ? Math.abs(square(t) / truth - 1) : 0;
        return new Strain(value, t, chordFraction);
    }

    /**
     * Where the ratio of a linear to the root of a quadratic function is stationary: with N² = A + 2Bt + Ct² and the
     * sheet's p + qt, t = (qA − pB)/(pC − qB).
     */
    private double extreme() {
        Vector3 direction = ends.direction();
        Vector3 inner = across(ends.innerRate(), direction);
        Vector3 step = across(ends.outerRate(), direction).minus(inner);
        double a = inner.dot(inner);
        double b = inner.dot(step);
        double c = step.dot(step);
        double q = outerSquare - innerSquare;
        double below = innerSquare * c - q * b;
        double t = below == 0 ? 0 : (q * a - innerSquare * b) / below;
        return t > 0 && t < 1 ? t : 0;
    }

    private static Vector3 across(Vector3 rate, Vector3 direction) {
        return rate.minus(direction.times(rate.dot(direction)));
    }
}
