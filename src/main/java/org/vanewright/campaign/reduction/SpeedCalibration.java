package org.vanewright.campaign.reduction;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.LegDocument;
import org.vanewright.campaign.PointDocument;
import org.vanewright.campaign.PointKind;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.flighttest.CalibrationRun;
import org.vanewright.engineering.flighttest.GpsAirspeed;
import org.vanewright.engineering.flighttest.GpsLeg;
import org.vanewright.engineering.flighttest.PositionErrorCurve;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.record.RevisionRef;

/**
 * How indicated airspeeds become calibrated ones.
 *
 * @param source revision whose runs it is made of; null for the campaign's own
 * @param runs each airspeed calibration, solved
 * @param unsolved runs that no airspeed and wind explain, with the reason
 * @param curve through the runs; null where there are too few
 */
public record SpeedCalibration(
        @Nullable RevisionRef source,
        List<Run> runs,
        List<String> unsolved,
        @Nullable PositionErrorCurve curve) {
    /** One airspeed calibration with what its legs say. */
    public record Run(PointDocument point, GpsAirspeed legs, CalibrationRun run) {}

    /** From the runs of a campaign that satisfies its rules. */
    static SpeedCalibration of(CampaignDocument campaign, @Nullable RevisionRef source, int degree) {
        List<Run> runs = new ArrayList<>();
        List<String> unsolved = new ArrayList<>();
        for (PointDocument point : campaign.points(PointKind.AIRSPEED)) {
            try {
                runs.add(solve(point));
            } catch (InvalidInputException e) {
                unsolved.add("The run at " + point.indicatedAirspeedKt() + " kt is left out: "
                        + e.problems().get(0).allowed() + ".");
            }
        }
        return new SpeedCalibration(source, List.copyOf(runs), List.copyOf(unsolved), fit(runs, degree));
    }

    private static Run solve(PointDocument point) {
        boolean headings = point.legs().get(0).headingDeg() != null;
        List<GpsLeg> legs = point.legs().stream().map(l -> leg(l, headings)).toList();
        GpsAirspeed solved = headings ? GpsAirspeed.ofHeadings(legs) : GpsAirspeed.ofTracks(legs);
        CalibrationRun run = CalibrationRun.of(
                Given.number(point.indicatedAirspeedKt()),
                solved.trueAirspeedKt(),
                StandardAtmosphere.at(Given.number(point.pressureAltitudeFt()), point.outsideAirTemperatureC()));
        return new Run(point, solved, run);
    }

    private static GpsLeg leg(LegDocument leg, boolean heading) {
        return new GpsLeg(Given.number(leg.groundSpeedKt()), Given.number(heading ? leg.headingDeg() : leg.trackDeg()));
    }

    private static @Nullable PositionErrorCurve fit(List<Run> runs, int degree) {
        try {
            PositionErrorCurve.Form form =
                    degree == 2 ? PositionErrorCurve.Form.QUADRATIC : PositionErrorCurve.Form.LINEAR;
            return PositionErrorCurve.fit(form, runs.stream().map(Run::run).toList());
        } catch (InvalidInputException e) {
            return null;
        }
    }

    /** The calibrated airspeed, its standard uncertainty and whether it lies outside what was calibrated. */
    CalibratedSpeed at(double indicatedKt) {
        if (curve == null) {
            return new CalibratedSpeed(indicatedKt, null, true);
        }
        PositionErrorCurve.Corrected corrected = curve.at(indicatedKt, 0.95);
        return new CalibratedSpeed(
                corrected.calibratedKt(), corrected.standardUncertaintyKt(), corrected.extrapolated());
    }

    /**
     * @param kt calibrated, or as indicated where there is no curve
     * @param uncertaintyKt standard uncertainty by the curve; null without one
     * @param outside whether it lies outside the calibrated speeds
     */
    public record CalibratedSpeed(double kt, @Nullable Double uncertaintyKt, boolean outside) {}

    /** The calibrated speeds, indicated; empty without a curve. */
    public Optional<String> range() {
        return curve == null
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "%.0f to %.0f kt",
                        curve.rangeKt().low(),
                        curve.rangeKt().high()));
    }
}
