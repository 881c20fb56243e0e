package org.vanewright.engineering.solid;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.solid.DeviceDesign.Base;
import org.vanewright.engineering.solid.DeviceDesign.BaseOutline;
import org.vanewright.engineering.solid.DeviceDesign.EdgeTreatment;
import org.vanewright.engineering.solid.DeviceDesign.Pair;
import org.vanewright.engineering.solid.DeviceDesign.Planform;
import org.vanewright.engineering.solid.DeviceDesign.Vane;

/** Designs for tests: a plain rectangular vane, 8 × 20 × 1.2 mm, on a base 30 × 16 × 1 mm, changed field by field. */
final class DesignBuilder {
    @Nullable
    Planform planform = Planform.RECTANGULAR;

    @Nullable
    Double height = 8.0;

    @Nullable
    Double length = 20.0;

    @Nullable
    Double thickness = 1.2;

    @Nullable
    Double tipLength;

    @Nullable
    EdgeTreatment leading;

    @Nullable
    EdgeTreatment trailing;

    @Nullable
    Double tipRadius;

    @Nullable
    Double fillet;

    @Nullable
    Double footAngle;

    @Nullable
    Double footWidth;

    @Nullable
    Pair pair;

    @Nullable
    BaseOutline outline;

    @Nullable
    Double baseLength = 30.0;

    @Nullable
    Double baseWidth = 16.0;

    @Nullable
    Double baseThickness = 1.0;

    @Nullable
    Double corner;

    @Nullable
    Double bevel;

    @Nullable
    Double inset;

    @Nullable
    Double underside;

    @Nullable
    Boolean mark = false;

    @Nullable
    Double tolerance;

    DeviceDesign build() {
        return new DeviceDesign(
                new Vane(
                        planform, height, length, thickness, tipLength, leading, trailing, tipRadius, fillet, footAngle,
                        footWidth),
                pair,
                new Base(outline, baseLength, baseWidth, baseThickness, corner, bevel, inset, underside),
                mark,
                tolerance);
    }
}
