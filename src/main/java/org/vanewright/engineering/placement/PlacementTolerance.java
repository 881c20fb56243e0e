package org.vanewright.engineering.placement;

import java.util.function.DoubleUnaryOperator;
import org.vanewright.engineering.flow.FlatPlate;
import org.vanewright.engineering.flow.FlatPlateRequest;
import org.vanewright.engineering.flow.FlatPlateRequest.PlateRegime;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.vane.WendtCirculation;

/**
 * How far a device may be from its place before what it does changes by a stated share.
 *
 * <p>Measure of the effect: the circulation of its vortex after {@link WendtCirculation}, with the boundary layer of a flat
 * plate that is turbulent from the leading edge ({@link FlatPlate}, δ ∝ s<sup>4/5</sup>) at the device's distance along the
 * skin. A place farther aft stands in a thicker layer, so h/δ falls and with it the circulation; the angle enters in
 * proportion; the height by h/δ and by the aspect ratio. Each error alone makes the stated share, to first order.
 *
 * <p>Bounds, common practice, no source: never finer than can be read with a steel rule of half millimetres (for the angle:
 * half a millimetre over the length of the base), since a tolerance that nobody can check is none; never wider than
 * {@value #WIDEST_ARC_MM} mm, {@value #WIDEST_ANGLE_DEG}° and a tenth of the height, since the effect on separation is not in
 * this measure. The flat plate knows no pressure gradient and the fit is for other vanes: the figures grade care, no more.
 *
 * @param arc of the base's centre along the skin from the leading edge, mm
 * @param angle to the local chordwise direction, degrees
 * @param height of the vane above the base's upper face, mm
 * @param share of the circulation that each error alone may change
 * @param layerThicknessMm δ at the device
 * @param heightToThickness h/δ
 * @param speedMps the layer was computed for
 */
public record PlacementTolerance(
        Limit arc,
        Limit angle,
        Limit height,
        double share,
        double layerThicknessMm,
        double heightToThickness,
        double speedMps) {
    /** Finest that a steel rule shows. Common practice, no source. */
    public static final double RULE_MM = 0.5;

    public static final double WIDEST_ARC_MM = 3;
    public static final double WIDEST_ANGLE_DEG = 3;

    /** A tenth of the circulation. Engineering judgement, no source. */
    public static final double USUAL_SHARE = 0.10;

    public static final String METHOD =
            "Each tolerance is the error that alone changes the circulation of the vortex by the"
                    + " stated share, by the fit of Wendt (NASA/CR-2001-211144, 2001, as restated by Dudek, 2006) with the"
                    + " boundary layer of a flat plate, turbulent from the leading edge, at the device's distance along the skin."
                    + " It is never finer than a steel rule of half millimetres shows, and never wider than 3 mm, 3° or a tenth of"
                    + " the height (common practice, no source).";

    private static final double WIDEST_HEIGHT_SHARE = 0.1;
    private static final double STEP = 1e-4;
    /** δ grows with this power of the distance on a turbulent flat plate. */
    private static final double GROWTH = 0.8;

    /** How a tolerance is known. */
    public enum Basis {
        EFFECT("from the effect"),
        RULE("as fine as a steel rule shows"),
        WIDEST("widest allowed, engineering judgement");

        private final String label;

        Basis(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /**
     * One tolerance.
     *
     * @param plusMinus either way
     * @param byEffect what the effect alone would allow; infinite where it has none
     * @param basis which of the bounds holds
     */
    public record Limit(double plusMinus, double byEffect, Basis basis) {
        /** Whether a measured figure is within it; rounding of the figures themselves is let pass. */
        public boolean holds(double measured, double nominal) {
            return Math.abs(measured - nominal) <= plusMinus + 1e-9;
        }

        static Limit of(double byEffect, double finest, double widest) {
            if (byEffect < finest) {
                return new Limit(finest, byEffect, Basis.RULE);
            }
            return byEffect > widest
                    ? new Limit(Math.max(finest, widest), byEffect, Basis.WIDEST)
                    : new Limit(byEffect, byEffect, Basis.EFFECT);
        }
    }

    /**
     * What is known of the device.
     *
     * @param heightMm of the vane
     * @param lengthMm of the vane at its root
     * @param angleDeg of a vane to the local chordwise direction, either sign; for a pair on one base that of either vane
     * @param baseLengthMm that an angle can be measured along
     */
    public record Vane(double heightMm, double lengthMm, double angleDeg, double baseLengthMm) {}

    /**
     * @param arcMm of the base's centre along the skin from the leading edge, 1 to 20 000
     * @param speedMps of the air, 5 to 150
     * @param share 0.01 to 0.5
     * @throws org.vanewright.engineering.input.InvalidInputException fields {@code arcMm}, {@code speedMps}, {@code share},
     *     {@code heightMm}, {@code lengthMm}, {@code angleDeg}, {@code baseLengthMm}
     */
    public static PlacementTolerance of(Vane vane, double arcMm, double speedMps, double share) {
        Checks checks = new Checks();
        checks.range("arcMm", arcMm, 1, 20_000, "mm");
        checks.range("speedMps", speedMps, 5, 150, "m/s");
        checks.range("share", share, 0.01, 0.5, "");
        checks.range("heightMm", vane.heightMm(), 0.5, 200, "mm");
        checks.range("lengthMm", vane.lengthMm(), 0.5, 500, "mm");
        checks.range("angleDeg", vane.angleDeg(), -90, 90, "°");
        checks.range("baseLengthMm", vane.baseLengthMm(), 0.5, 500, "mm");
        checks.throwIfAny();
        double thickness = FlatPlate.run(new FlatPlateRequest(speedMps, arcMm / 1000, null, PlateRegime.TURBULENT))
                .thicknessMm();
        double layer = elasticity(d -> circulation(vane.heightMm(), vane.lengthMm(), speedMps, d), thickness);
        double height = elasticity(h -> circulation(h, vane.lengthMm(), speedMps, thickness), vane.heightMm());
        double angleFinest = Math.toDegrees(Math.atan(RULE_MM / vane.baseLengthMm()));
        return new PlacementTolerance(
                Limit.of(share * arcMm / (GROWTH * Math.abs(layer)), RULE_MM, WIDEST_ARC_MM),
                Limit.of(angleByEffect(vane, share), angleFinest, WIDEST_ANGLE_DEG),
                Limit.of(share * vane.heightMm() / Math.abs(height), RULE_MM, WIDEST_HEIGHT_SHARE * vane.heightMm()),
                share,
                thickness,
                vane.heightMm() / thickness,
                speedMps);
    }

    /** A vane along the air has no circulation to lose; what a base's length shows is left. */
    private static double angleByEffect(Vane vane, double share) {
        return share * Math.abs(vane.angleDeg());
    }

    /** For one degree, since shares do not depend on the angle. */
    private static double circulation(double heightMm, double lengthMm, double speedMps, double thicknessMm) {
        return WendtCirculation.of(heightMm, lengthMm, Math.toRadians(1), speedMps, thicknessMm)
                .circulationM2S();
    }

    /** Relative change of the value over relative change of its argument. */
    private static double elasticity(DoubleUnaryOperator value, double at) {
        double above = value.applyAsDouble(at * (1 + STEP));
        double below = value.applyAsDouble(at * (1 - STEP));
        return (above - below) / (2 * STEP * value.applyAsDouble(at));
    }
}
