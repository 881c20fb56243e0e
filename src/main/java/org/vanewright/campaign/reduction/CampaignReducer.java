package org.vanewright.campaign.reduction;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.ConfigurationDocument;
import org.vanewright.campaign.Measure;
import org.vanewright.campaign.PointDocument;
import org.vanewright.engineering.flighttest.StallReduction;
import org.vanewright.engineering.flighttest.UncertaintyBudget;
import org.vanewright.engineering.inference.Outliers;
import org.vanewright.engineering.inference.Sample;
import org.vanewright.engineering.input.InvalidInputException;

/** Reduces one campaign. */
final class CampaignReducer {
    static final double CONFIDENCE = 0.95;

    /** Powers closer together say nothing about a slope; then drag growing with the square of speed gives one third. */
    private static final double LEAST_LOG_POWER_SPREAD = 0.05;

    private static final double CUBE_LAW = 1.0 / 3;
    /** A rectangle 0.1 to either side: common practice, no source. */
    private static final double CUBE_LAW_ERROR = 0.1 / Math.sqrt(3);

    private final CampaignDocument campaign;
    private final AirframeDocument airframe;
    private final SpeedCalibration calibration;
    private final Measure measure;
    private @Nullable Double slope;
    private @Nullable Levelling power;

    CampaignReducer(CampaignDocument campaign, AirframeDocument airframe, SpeedCalibration calibration) {
        this.campaign = campaign;
        this.airframe = airframe;
        this.calibration = calibration;
        this.measure = Objects.requireNonNull(campaign.plan().measure());
    }

    ReducedCampaign reduce() {
        List<ReducedConfiguration> all = levelled(reduced());
        all = all.stream().map(this::summed).toList();
        Comparisons comparisons = new Comparisons(campaign.plan(), measure, all);
        return new ReducedCampaign(
                measure,
                calibration,
                all,
                comparisons.conclusions(),
                comparisons.design(),
                slope,
                comparisons.power(),
                ReductionWords.warnings(campaign, calibration, all),
                ReductionWords.method(measure, slope),
                ReductionWords.sources(measure));
    }

    private List<ReducedConfiguration> reduced() {
        PointReducer reducer = new PointReducer(campaign.plan(), airframe, calibration);
        List<ReducedConfiguration> all = new ArrayList<>();
        for (ConfigurationDocument each : campaign.plan().configurations()) {
            List<ReducedPoint> points = new ArrayList<>();
            for (int i = 0; i < campaign.points().size(); i++) {
                PointDocument point = campaign.points().get(i);
                if (point.kind() == measure.kind() && Objects.equals(point.configuration(), each.key())) {
                    points.add(reducer.reduce(i + 1, point));
                }
            }
            all.add(new ReducedConfiguration(each, List.copyOf(points), null, null, null, null));
        }
        return all;
    }

    private List<ReducedConfiguration> levelled(List<ReducedConfiguration> all) {
        if (measure == Measure.STALL_SPEED) {
            return atOneKnotPerSecond(all);
        }
        return measure == Measure.CRUISE_SPEED ? atEqualPower(all) : all;
    }

    private List<ReducedConfiguration> atOneKnotPerSecond(List<ReducedConfiguration> all) {
        boolean known = all.stream()
                .flatMap(c -> c.points().stream())
                .allMatch(p -> p.raw().entryRateKtPerS() != null);
        Levelling levelling = known
                ? Levelling.find(
                        all,
                        ReducedPoint::value,
                        p -> Given.number(p.raw().entryRateKtPerS()),
                        1,
                        StallReduction.LEAST_RATE_SPREAD_KT_PER_S)
                : null;
        if (levelling == null) {
            return all;
        }
        slope = levelling.slope();
        return each(all, p -> p.comparedAs(p.value() + levelling.shift(p)));
    }

    private List<ReducedConfiguration> atEqualPower(List<ReducedConfiguration> all) {
        double mass = Given.number(campaign.plan().conditions().standardMassKg());
        double middle = all.stream()
                .flatMap(c -> c.points().stream())
                .mapToDouble(p -> Math.log(PointReducer.standardPower(p, mass)))
                .average()
                .orElse(0);
        Levelling found = Levelling.find(
                all,
                p -> Math.log(p.value()),
                p -> Math.log(PointReducer.standardPower(p, mass)),
                middle,
                LEAST_LOG_POWER_SPREAD);
        Levelling levelling = found == null
                ? Levelling.assumed(
                        CUBE_LAW, CUBE_LAW_ERROR, middle, p -> Math.log(PointReducer.standardPower(p, mass)))
                : found;
        power = levelling;
        slope = levelling.slope();
        return each(all, p -> p.comparedAs(p.value() * Math.exp(levelling.shift(p))));
    }

    private static List<ReducedConfiguration> each(List<ReducedConfiguration> all, UnaryOperator<ReducedPoint> change) {
        return all.stream()
                .map(c -> new ReducedConfiguration(
                        c.configuration(), c.points().stream().map(change).toList(), null, null, null, null))
                .toList();
    }

    private ReducedConfiguration summed(ReducedConfiguration c) {
        if (c.points().size() < 2) {
            Double only =
                    c.points().isEmpty() ? null : (Double) c.points().get(0).compared();
            return new ReducedConfiguration(c.configuration(), c.points(), only, null, null, null);
        }
        Sample sample = Sample.of(c.values());
        List<ReducedPoint> points = new ArrayList<>(c.points());
        Outliers.marked(Outliers.Rule.GRUBBS, c.values())
                .forEach(i -> points.set(i, points.get(i).markedOutlier()));
        return new ReducedConfiguration(
                c.configuration(),
                List.copyOf(points),
                sample.mean(),
                sample.standardDeviation(),
                sample.meanInterval(CONFIDENCE),
                budget(points, sample));
    }

    private @Nullable UncertaintyBudget budget(List<ReducedPoint> points, Sample sample) {
        Budgets budgets = new Budgets(campaign.plan(), calibration, points);
        try {
            return switch (measure) {
                case STALL_SPEED -> budgets.stall();
                case CRUISE_SPEED -> power == null ? null : budgets.cruise(power, sample);
                case CLIMB_RATE ->
                    budgets.climb(new PointReducer(campaign.plan(), airframe, calibration).wing(), sample);
            };
        } catch (InvalidInputException e) {
            // An instrument so coarse that a step of its uncertainty leaves what can be flown; the figures stand
            // without.
            return null;
        }
    }
}
