package org.vanewright.engineering.solid;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.solid.DeviceDesign.Planform;
import org.vanewright.engineering.solid.DeviceDesign.Vane;

/**
 * One face of a vane, seen from the side; fillets, rounded corners and the flat at a pointed tip are left out.
 *
 * @param planform outline
 * @param heightMm above the base
 * @param lengthMm at the root
 * @param tipLengthMm for a trapezium; the length otherwise
 */
public record VaneSide(Planform planform, double heightMm, double lengthMm, double tipLengthMm) {
    /** Of a vane; absent measures count as nothing. */
    public static VaneSide of(Vane vane) {
        double length = number(vane.lengthMm());
        Planform planform = vane.planform() == null ? Planform.RECTANGULAR : vane.planform();
        boolean trapezium = planform == Planform.SWEPT_TRAPEZIUM;
        double tip = !trapezium ? length : vane.tipLengthMm() == null ? length / 2 : vane.tipLengthMm();
        return new VaneSide(planform, number(vane.heightMm()), length, tip);
    }

    /** The same outline stretched. */
    public VaneSide scaled(double newHeightMm, double newLengthMm) {
        return new VaneSide(planform, newHeightMm, newLengthMm, tipLengthMm * newLengthMm / lengthMm);
    }

    public double areaMm2() {
        return heightMm
                * switch (planform) {
                    case RECTANGULAR -> lengthMm;
                    case TRIANGULAR -> lengthMm / 2;
                    case SWEPT_TRAPEZIUM -> (lengthMm + tipLengthMm) / 2;
                    // an arc tangent to the tip, taken as a parabola
                    case OGIVAL -> lengthMm * 2 / 3;
                };
    }

    /** Height of the middle of the area above the base. */
    public double centroidMm() {
        return heightMm
                * switch (planform) {
                    case RECTANGULAR -> 0.5;
                    case TRIANGULAR -> 1.0 / 3;
                    case SWEPT_TRAPEZIUM -> (lengthMm + 2 * tipLengthMm) / (3 * (lengthMm + tipLengthMm));
                    case OGIVAL -> 0.4;
                };
    }

    private static double number(@Nullable Double given) {
        return given == null ? 0 : given;
    }
}
