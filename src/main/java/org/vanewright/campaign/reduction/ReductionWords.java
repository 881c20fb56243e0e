package org.vanewright.campaign.reduction;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.InstrumentDocument.Quantity;
import org.vanewright.campaign.Measure;

/** How a campaign was reduced, in words. */
final class ReductionWords {
    private ReductionWords() {}

    static List<String> warnings(
            CampaignDocument campaign, SpeedCalibration calibration, List<ReducedConfiguration> all) {
        List<String> warnings = new ArrayList<>(calibration.unsolved());
        if (calibration.curve() == null) {
            warnings.add(
                    "Airspeeds are not calibrated: indicated ones stand in for calibrated ones. A difference between"
                            + " configurations may still hold, the speeds themselves do not.");
        } else {
            long outside = all.stream()
                    .flatMap(c -> c.points().stream())
                    .filter(p -> p.remarks().contains("outside the calibrated speeds"))
                    .count();
            if (outside > 0) {
                warnings.add(outside + " test points lie outside the calibrated speeds of "
                        + calibration.range().orElse("") + " indicated: the correction there is extrapolated.");
            }
        }
        long outliers = all.stream()
                .flatMap(c -> c.points().stream())
                .filter(ReducedPoint::outlier)
                .count();
        if (outliers > 0) {
            warnings.add(
                    outliers + (outliers == 1 ? " test point lies" : " test points lie")
                            + " apart from the others by Grubbs' test at 5 %. It is marked and used all the same: find out why.");
        }
        if (campaign.plan().resolution(Quantity.AIRSPEED).isEmpty()) {
            warnings.add("No airspeed indicator with a resolution is named; 1 kt is assumed.");
        }
        if (campaign.plan().repeats().order() != null
                && !campaign.plan().repeats().order().isBlocked()) {
            warnings.add(
                    "The configurations were flown one after another, so that weather, fuel or habit may have changed"
                            + " with them.");
        }
        return List.copyOf(warnings);
    }

    static String method(Measure measure, @Nullable Double slope) {
        return switch (measure) {
            case STALL_SPEED ->
                "Indicated airspeed is corrected by the position-error curve and brought to the standard mass and a load"
                        + " factor of 1 (V √(m_s/(m n)))."
                        + (slope == null
                                ? " Entry rates are not known everywhere or vary too little, so speeds stand as flown."
                                : String.format(
                                        Locale.ROOT,
                                        " It is read at an entry rate of 1 kt/s by the slope %.2f kt per kt/s that all"
                                                + " configurations share.",
                                        slope))
                        + " Valid at low Mach number and one centre of gravity.";
            case CRUISE_SPEED ->
                String.format(
                        Locale.ROOT,
                        "True airspeed is brought to the standard mass and sea-level density (V_iw), then to the mean power"
                                + " by V ∝ P^%.2f. Power is as the pilot read it. Valid within a tenth of the standard mass"
                                + " and 5,000 ft.",
                        slope == null ? 1.0 / 3 : slope);
            case CLIMB_RATE ->
                "Rate of climb of pressure altitude is corrected for temperature (T/T_s), mass and induced drag with a span"
                        + " efficiency of " + PointReducer.SPAN_EFFICIENCY
                        + " (common practice, no source). Power is not"
                        + " corrected: compare climbs at like density altitudes.";
        };
    }

    static List<String> sources(Measure measure) {
        List<String> sources = new ArrayList<>();
        switch (measure) {
            case STALL_SPEED -> {
                sources.add("14 CFR 23.201(b) as of 1996 (61 FR 5191): speed reduction of at most 1 kt/s.");
                sources.add(
                        "FAA, AC 23-8C, Flight Test Guide for Certification of Part 23 Airplanes, 2011 (from memory).");
            }
            case CRUISE_SPEED, CLIMB_RATE ->
                sources.add("Society of Flight Test Engineers, Reference Handbook, 2013, part 12.");
        }
        sources.add(
                "JCGM 100:2008, Guide to the Expression of Uncertainty in Measurement, 5.1.3, equations 10 and G.2b.");
        sources.add(
                "Society of Flight Test Engineers, Reference Handbook, 2013, part 4 (airspeeds by satellite legs).");
        sources.add("NIST/SEMATECH e-Handbook of Statistical Methods, sections 1.3.5.3 and 7.2.2.2.");
        return List.copyOf(sources);
    }
}
