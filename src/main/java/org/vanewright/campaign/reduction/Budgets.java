package org.vanewright.campaign.reduction;

import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import org.vanewright.campaign.InstrumentDocument.Quantity;
import org.vanewright.campaign.PlanDocument;
import org.vanewright.engineering.flighttest.ClimbBudget;
import org.vanewright.engineering.flighttest.ClimbReduction;
import org.vanewright.engineering.flighttest.CruiseBudget;
import org.vanewright.engineering.flighttest.StallBudget;
import org.vanewright.engineering.flighttest.StallPoint;
import org.vanewright.engineering.flighttest.StallReduction;
import org.vanewright.engineering.flighttest.UncertaintyBudget;
import org.vanewright.engineering.inference.Sample;

/** What the uncertainty of a reduced figure is made of, for the points of one configuration. */
final class Budgets {
    /** A whole knot is as fine as most airspeed indicators can be read: common practice, no source. */
    static final double USUAL_RESOLUTION_KT = 1;

    private static final double RECTANGLE = Math.sqrt(12);

    private final PlanDocument plan;
    private final SpeedCalibration calibration;
    private final List<ReducedPoint> points;

    Budgets(PlanDocument plan, SpeedCalibration calibration, List<ReducedPoint> points) {
        this.plan = plan;
        this.calibration = calibration;
        this.points = points;
    }

    UncertaintyBudget stall() {
        List<StallPoint> stalls = points.stream()
                .map(p -> PointReducer.stall(p.raw(), p.calibratedKt(), p.massKg()))
                .toList();
        StallReduction reduction = StallReduction.of(stalls, standardMassKg(), null);
        return new StallBudget(resolutionKt(), curveKt(), massKg(), step(Quantity.LOAD_FACTOR)).of(stalls, reduction);
    }

    UncertaintyBudget cruise(Levelling power, Sample compared) {
        CruiseBudget.Means means = new CruiseBudget.Means(
                mean(ReducedPoint::calibratedKt),
                mean(p -> Given.number(p.raw().pressureAltitudeFt())),
                mean(p -> Given.number(p.raw().outsideAirTemperatureC())),
                mean(p -> Given.number(p.raw().powerPercent())),
                mean(ReducedPoint::massKg));
        return new CruiseBudget(
                        resolutionKt(),
                        curveKt(),
                        massKg(),
                        step(Quantity.POWER),
                        step(Quantity.ALTITUDE),
                        step(Quantity.TEMPERATURE))
                .of(
                        means,
                        new CruiseBudget.Level(
                                power.slope(), power.error(), power.degreesOfFreedom(), Math.exp(power.at())),
                        standardMassKg(),
                        compared.mean(),
                        compared.standardError(),
                        compared.count());
    }

    UncertaintyBudget climb(ClimbReduction.Wing wing, Sample compared) {
        ClimbBudget.Means means = new ClimbBudget.Means(
                mean(p -> Given.number(p.raw().climbRateFtPerMin())),
                mean(p -> Given.number(p.raw().pressureAltitudeFt())),
                mean(p -> Given.number(p.raw().outsideAirTemperatureC())),
                mean(ReducedPoint::calibratedKt),
                mean(ReducedPoint::massKg));
        return new ClimbBudget(
                        Math.hypot(resolutionKt() / RECTANGLE, curveKt()),
                        massKg(),
                        step(Quantity.ALTITUDE),
                        step(Quantity.TEMPERATURE))
                .of(means, wing, standardMassKg(), compared.mean(), compared.standardError(), compared.count());
    }

    private double mean(ToDoubleFunction<ReducedPoint> of) {
        return points.stream().mapToDouble(of).average().orElseThrow();
    }

    private double standardMassKg() {
        return Given.number(plan.conditions().standardMassKg());
    }

    private double resolutionKt() {
        return plan.resolution(Quantity.AIRSPEED).orElse(USUAL_RESOLUTION_KT);
    }

    /** Mean standard uncertainty of the position-error curve at these points; none without a curve. */
    private double curveKt() {
        return points.stream()
                .map(p -> calibration
                        .at(Given.number(p.raw().indicatedAirspeedKt()))
                        .uncertaintyKt())
                .filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .average()
                .orElse(0);
    }

    private double massKg() {
        return Math.hypot(step(Quantity.MASS), step(Quantity.FUEL));
    }

    /** Standard uncertainty of a reading within its smallest step; none where no instrument is named. */
    private double step(Quantity quantity) {
        return plan.resolution(quantity).orElse(0.0) / RECTANGLE;
    }
}
