package org.vanewright.engineering.solid;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.solid.DeviceDesign.Base;
import org.vanewright.engineering.solid.DeviceDesign.BaseOutline;
import org.vanewright.engineering.solid.DeviceDesign.EdgeTreatment;
import org.vanewright.engineering.solid.DeviceDesign.Pair;
import org.vanewright.engineering.solid.DeviceDesign.Planform;
import org.vanewright.engineering.solid.DeviceDesign.Vane;

/**
 * A complete design as plain numbers, mm and radians.
 *
 * @param footWidth equal to the thickness where there is no foot
 * @param undersideCurvature 1/mm, positive over a bulging skin, 0 flat
 * @param toeIn angle of each vane of a pair, 0 for a single vane
 * @param gap between the mid-length points of a pair, 0 for a single vane
 */
record Dimensions(
        Planform planform,
        double height,
        double length,
        double thickness,
        double tipLength,
        EdgeTreatment leadingEdge,
        EdgeTreatment trailingEdge,
        double tipRadius,
        double fillet,
        double footAngle,
        double footWidth,
        boolean paired,
        double toeIn,
        double gap,
        BaseOutline outline,
        double baseLength,
        double baseWidth,
        double baseThickness,
        double cornerRadius,
        double bevel,
        double inset,
        double undersideCurvature,
        boolean indexMark,
        double tolerance) {

    /** @param design with every optional value filled in; a null where one is needed is a programming error */
    static Dimensions of(DeviceDesign design) {
        Vane vane = needed(design.vane());
        Base base = needed(design.base());
        Pair pair = design.pair();
        Double radius = base.undersideRadiusMm();
        return new Dimensions(
                needed(vane.planform()),
                needed(vane.heightMm()),
                needed(vane.lengthMm()),
                needed(vane.thicknessMm()),
                needed(vane.tipLengthMm()),
                needed(vane.leadingEdge()),
                needed(vane.trailingEdge()),
                needed(vane.tipRadiusMm()),
                needed(vane.filletRadiusMm()),
                Math.toRadians(needed(vane.footAngleDeg())),
                needed(vane.footWidthMm()),
                pair != null,
                pair == null ? 0 : Math.toRadians(needed(pair.angleDeg())),
                pair == null ? 0 : needed(pair.gapMm()),
                needed(base.outline()),
                needed(base.lengthMm()),
                needed(base.widthMm()),
                needed(base.thicknessMm()),
                needed(base.cornerRadiusMm()),
                needed(base.edgeBevelMm()),
                needed(base.trailingEdgeInsetMm()),
                radius == null ? 0 : 1 / radius,
                needed(design.indexMark()),
                needed(design.chordToleranceMm()));
    }

    /** Whether vane and base end in one plane. */
    boolean flush() {
        return inset == 0;
    }

    boolean footed() {
        return footWidth > thickness;
    }

    /** The same design with another fillet. */
    Dimensions withFillet(double radius) {
        return copy(radius, inset, undersideCurvature);
    }

    /** The same design with another inset. */
    Dimensions withInset(double newInset) {
        return copy(fillet, newInset, undersideCurvature);
    }

    /** The same design with a flat underside. */
    Dimensions flattened() {
        return copy(fillet, inset, 0);
    }

    private Dimensions copy(double newFillet, double newInset, double newCurvature) {
        return new Dimensions(
                planform,
                height,
                length,
                thickness,
                tipLength,
                leadingEdge,
                trailingEdge,
                tipRadius,
                newFillet,
                footAngle,
                footWidth,
                paired,
                toeIn,
                gap,
                outline,
                baseLength,
                baseWidth,
                baseThickness,
                cornerRadius,
                bevel,
                newInset,
                newCurvature,
                indexMark,
                tolerance);
    }

    private static <T> T needed(@Nullable T value) {
        return Objects.requireNonNull(value, "a design is completed before it is used");
    }
}
