package org.vanewright.campaign.reduction;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.InstrumentDocument.Quantity;
import org.vanewright.campaign.PlanDocument;
import org.vanewright.engineering.flighttest.StallBudget;
import org.vanewright.engineering.flighttest.StallPoint;
import org.vanewright.engineering.flighttest.StallReduction;
import org.vanewright.engineering.flighttest.UncertaintyBudget;

/** What the uncertainty of a stall speed is made of. */
final class Budgets {
    /** A whole knot is as fine as most airspeed indicators can be read: common practice, no source. */
    static final double USUAL_RESOLUTION_KT = 1;

    private static final double RECTANGLE = Math.sqrt(12);

    private Budgets() {}

    static @Nullable UncertaintyBudget stall(
            PlanDocument plan, SpeedCalibration calibration, List<ReducedPoint> points) {
        List<StallPoint> stalls = points.stream()
                .map(p -> PointReducer.stall(p.raw(), p.calibratedKt(), p.massKg()))
                .toList();
        StallReduction reduction =
                StallReduction.of(stalls, Given.number(plan.conditions().standardMassKg()), null);
        double curveKt = points.stream()
                .map(p -> calibration
                        .at(Given.number(p.raw().indicatedAirspeedKt()))
                        .uncertaintyKt())
                .filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .average()
                .orElse(0);
        return new StallBudget(
                        plan.resolution(Quantity.AIRSPEED).orElse(USUAL_RESOLUTION_KT),
                        curveKt,
                        Math.hypot(step(plan, Quantity.MASS), step(plan, Quantity.FUEL)),
                        step(plan, Quantity.LOAD_FACTOR))
                .of(stalls, reduction);
    }

    /** Standard uncertainty of a reading within its smallest step; none where no instrument is named. */
    private static double step(PlanDocument plan, Quantity quantity) {
        return plan.resolution(quantity).orElse(0.0) / RECTANGLE;
    }
}
