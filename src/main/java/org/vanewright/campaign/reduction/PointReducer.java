package org.vanewright.campaign.reduction;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.SurfaceDocument;
import org.vanewright.airframe.Surfaces;
import org.vanewright.campaign.ConditionsDocument;
import org.vanewright.campaign.Measure;
import org.vanewright.campaign.PlanDocument;
import org.vanewright.campaign.PointDocument;
import org.vanewright.engineering.air.AirState;
import org.vanewright.engineering.air.Airspeeds;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.flighttest.ClimbReduction;
import org.vanewright.engineering.flighttest.CruisePoint;
import org.vanewright.engineering.flighttest.StallPoint;

/** Brings one test point to standard conditions. */
final class PointReducer {
    /** Span efficiency of light aircraft where none is known: common practice, no source. */
    static final double SPAN_EFFICIENCY = 0.8;

    private static final double FASTEST_ENTRY_KT_PER_S = 1.0;

    private final PlanDocument plan;
    private final AirframeDocument airframe;
    private final SpeedCalibration calibration;

    PointReducer(PlanDocument plan, AirframeDocument airframe, SpeedCalibration calibration) {
        this.plan = plan;
        this.airframe = airframe;
        this.calibration = calibration;
    }

    ReducedPoint reduce(int number, PointDocument point) {
        SpeedCalibration.CalibratedSpeed speed = calibration.at(Given.number(point.indicatedAirspeedKt()));
        AirState air = StandardAtmosphere.at(Given.number(point.pressureAltitudeFt()), point.outsideAirTemperatureC());
        double trueKt = Airspeeds.ofCalibrated(speed.kt(), air).trueAirspeedKt();
        double massKg = Given.number(point.massThenKg());
        double value = value(point, speed.kt(), trueKt, massKg, air);
        return new ReducedPoint(
                number,
                point,
                speed.kt(),
                trueKt,
                massKg,
                value,
                value,
                lift(point, speed.kt(), massKg),
                remarks(point, speed, massKg),
                false);
    }

    private double value(PointDocument point, double calibratedKt, double trueKt, double massKg, AirState air) {
        return switch (measure()) {
            case STALL_SPEED -> stall(point, calibratedKt, massKg).standardAirspeedKt(standardMassKg());
            case CRUISE_SPEED -> cruise(point, trueKt, massKg, air).standardAirspeedKt(standardMassKg());
            case CLIMB_RATE -> climb(point, trueKt, massKg);
        };
    }

    static StallPoint stall(PointDocument point, double calibratedKt, double massKg) {
        return new StallPoint(calibratedKt, massKg, Given.or(point.loadFactor(), 1), point.entryRateKtPerS());
    }

    private static CruisePoint cruise(PointDocument point, double trueKt, double massKg, AirState air) {
        return CruisePoint.in(air, trueKt, Given.number(point.powerPercent()), massKg);
    }

    /** Power at standard mass and sea-level density, in per cent of the rated power. */
    static double standardPower(ReducedPoint point, double standardMassKg) {
        AirState air = StandardAtmosphere.at(
                Given.number(point.raw().pressureAltitudeFt()), point.raw().outsideAirTemperatureC());
        return cruise(point.raw(), point.trueKt(), point.massKg(), air).standardPowerKw(standardMassKg);
    }

    private double climb(PointDocument point, double trueKt, double massKg) {
        return ClimbReduction.of(
                        new ClimbReduction.Climb(
                                Given.number(point.climbRateFtPerMin()),
                                Given.number(point.pressureAltitudeFt()),
                                Given.number(point.outsideAirTemperatureC()),
                                trueKt,
                                massKg),
                        wing(),
                        standardMassKg())
                .standardFtPerMin();
    }

    ClimbReduction.Wing wing() {
        return new ClimbReduction.Wing(areaM2(), aspectRatio(), SPAN_EFFICIENCY);
    }

    private double areaM2() {
        return Given.number(airframe.wingAreaM2());
    }

    private double aspectRatio() {
        double spanMm = airframe.surfaces().stream()
                .filter(s -> s.kind() == SurfaceDocument.Kind.WING)
                .mapToDouble(s -> 2
                        * Surfaces.stationsMm(s).stream()
                                .mapToDouble(Double::doubleValue)
                                .max()
                                .orElse(0))
                .max()
                .orElse(0);
        return spanMm * spanMm / 1e6 / areaM2();
    }

    private @Nullable Double lift(PointDocument point, double calibratedKt, double massKg) {
        boolean stall = measure() == Measure.STALL_SPEED;
        return stall && airframe.wingAreaM2() != null
                ? (Double) stall(point, calibratedKt, massKg).liftCoefficient(areaM2())
                : null;
    }

    private List<String> remarks(PointDocument point, SpeedCalibration.CalibratedSpeed speed, double massKg) {
        List<String> remarks = new ArrayList<>();
        if (calibration.curve() != null && speed.outside()) {
            remarks.add("outside the calibrated speeds");
        }
        ConditionsDocument conditions = plan.conditions();
        double altitude = Given.number(point.pressureAltitudeFt());
        if (altitude < Given.number(conditions.lowestFt()) || altitude > Given.number(conditions.highestFt())) {
            remarks.add("outside the altitudes of the plan");
        }
        Double rate = point.entryRateKtPerS();
        if (measure() == Measure.STALL_SPEED && rate != null && rate > FASTEST_ENTRY_KT_PER_S) {
            remarks.add("slowed down faster than 1 kt/s");
        }
        Double maximum = airframe.masses() == null ? null : airframe.masses().maximumKg();
        if (maximum != null && massKg > maximum) {
            remarks.add("heavier than the aircraft's maximum mass");
        }
        if (Math.abs(massKg - standardMassKg()) > CruisePoint.MASS_BAND * standardMassKg()) {
            remarks.add("mass more than a tenth away from the standard mass");
        }
        return List.copyOf(remarks);
    }

    private Measure measure() {
        Measure measure = plan.measure();
        return measure == null ? Measure.STALL_SPEED : measure;
    }

    private double standardMassKg() {
        return Given.number(plan.conditions().standardMassKg());
    }
}
