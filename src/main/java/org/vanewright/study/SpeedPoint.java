package org.vanewright.study;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A wing at one of several speeds in level flight.
 *
 * @param calibratedAirspeedKt speed
 * @param liftCoefficient of the wing
 * @param rows what each row meets there
 */
public record SpeedPoint(double calibratedAirspeedKt, double liftCoefficient, List<RowPoint> rows) {
    /**
     * A row at that speed.
     *
     * @param index of the row in its layout
     * @param localLift lift coefficient of the section there that level flight asks for
     * @param reynolds of the chord there
     * @param claimed whether the method claims so much lift; where not, separation and thickness are only a hint
     * @param separationX on the row's side; null where the layer stays attached
     * @param thicknessMm of the layer at the device; null behind separation
     * @param heightToThickness of the device; null behind separation
     */
    public record RowPoint(
            int index,
            double localLift,
            double reynolds,
            boolean claimed,
            @Nullable Double separationX,
            @Nullable Double thicknessMm,
            @Nullable Double heightToThickness) {}
}
