package org.vanewright.campaign.reduction;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.PointDocument;

/**
 * A test point with what follows from it.
 *
 * @param number its place among all test points, from 1
 * @param raw as it was read
 * @param calibratedKt calibrated airspeed; as indicated where there is no calibration
 * @param trueKt true airspeed
 * @param massKg of the aircraft then
 * @param value in the measure's unit, at standard conditions
 * @param compared {@code value} brought to the same entry rate or the same power, which is what is compared
 * @param liftCoefficient of a stall; null elsewhere, or without a wing area
 * @param remarks why it should be looked at, such as outside the calibrated speeds
 * @param outlier whether it lies apart from the others of its configuration; it is used all the same
 */
public record ReducedPoint(
        int number,
        PointDocument raw,
        double calibratedKt,
        double trueKt,
        double massKg,
        double value,
        double compared,
        @Nullable Double liftCoefficient,
        List<String> remarks,
        boolean outlier) {
    ReducedPoint comparedAs(double other) {
        return new ReducedPoint(
                number, raw, calibratedKt, trueKt, massKg, value, other, liftCoefficient, remarks, outlier);
    }

    ReducedPoint markedOutlier() {
        return new ReducedPoint(
                number, raw, calibratedKt, trueKt, massKg, value, compared, liftCoefficient, remarks, true);
    }
}
