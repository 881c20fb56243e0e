package org.vanewright.campaign.reduction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.OperatingBasis;
import org.vanewright.airframe.PanelDocument;
import org.vanewright.airframe.SurfaceDocument;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.Campaigns;
import org.vanewright.campaign.FlyingOrder;
import org.vanewright.campaign.LegDocument;
import org.vanewright.campaign.Measure;
import org.vanewright.campaign.PointDocument;
import org.vanewright.engineering.air.Airspeeds;
import org.vanewright.engineering.air.StandardAtmosphere;
import org.vanewright.engineering.flighttest.UncertaintyBudget;

class CampaignReductionTest {
    private static final AirframeDocument AIRFRAME = new AirframeDocument(
            "Aircraft",
            null,
            OperatingBasis.values()[0],
            new AirframeDocument.Masses(342.0, 600.0),
            null,
            11.2,
            List.of(new SurfaceDocument(
                    "Wing",
                    SurfaceDocument.Kind.WING,
                    List.of(new PanelDocument(450.0, 4250.0, 1500.0, 1200.0, 0.0, 0.0, null, null, null)),
                    List.of())),
            false);

    private static ReducedCampaign reduce(CampaignDocument campaign) {
        return new CampaignReducer(campaign, AIRFRAME, SpeedCalibration.of(campaign, null, 1)).reduce();
    }

    private static List<PointDocument> both(List<PointDocument> first, List<PointDocument> second) {
        List<PointDocument> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }

    /** V √(m_s/m): 45 kt at 1150 lb is 48.2115 kt at 1320 lb; the lift equation, as FAA AC 23-8C uses it (from memory). */
    @Test
    void aStallIsBroughtToTheStandardMass() {
        double massKg = 560 * 1150 / 1320.0;
        CampaignDocument campaign = Campaigns.campaign(
                Measure.STALL_SPEED,
                FlyingOrder.ONE_AFTER_ANOTHER,
                List.of(Campaigns.stall("a", "A", null, 45, massKg, null)));
        ReducedPoint point = reduce(campaign).baseline().points().get(0);
        assertThat(point.value()).isEqualTo(48.2115, within(1e-3));
        assertThat(point.liftCoefficient())
                .isEqualTo(massKg * 9.80665 / (0.5 * 1.225 * Math.pow(45 * 1852 / 3600.0, 2) * 11.2), within(1e-6));
    }

    /** Two samples by hand: means 47 and 45, variances 1 and 1, five each: t = 2/√(2/5), 8 degrees of freedom. */
    @Test
    void independentStallsAreComparedByWelch() {
        CampaignDocument campaign = Campaigns.campaign(
                Measure.STALL_SPEED,
                FlyingOrder.ONE_AFTER_ANOTHER,
                both(Campaigns.stalls("A", 46, 46, 47, 48, 48), Campaigns.stalls("B", 44, 44, 45, 46, 46)));
        ReducedCampaign reduced = reduce(campaign);
        assertThat(reduced.design()).contains("Welch").contains("not flown in blocks");
        Conclusion conclusion = reduced.conclusions().get(0);
        var comparison = Objects.requireNonNull(conclusion.comparison());
        assertThat(comparison.difference()).isEqualTo(-2, within(1e-12));
        assertThat(comparison.t()).isEqualTo(-2 / Math.sqrt(0.4), within(1e-12));
        assertThat(comparison.degreesOfFreedom()).isEqualTo(8, within(1e-9));
        // 97.5 % point of t with 8 degrees of freedom: 2.306, NIST/SEMATECH e-Handbook, table 1.3.6.7.2
        assertThat(comparison.interval().high()).isEqualTo(-2 + 2.306 * Math.sqrt(0.4), within(1e-3));
        assertThat(Objects.requireNonNull(conclusion.claim()).words())
                .isEqualTo("lower by 2.0 kt (95 % interval 0.5 to 3.5, 5 and 5 stalls)");
        assertThat(reduced.warnings()).anyMatch(w -> w.startsWith("Airspeeds are not calibrated"));
        assertThat(reduced.warnings()).anyMatch(w -> w.contains("one after another"));
    }

    /** What a whole block has in common drops out: here blocks differ by 10 kt and the change is 1 kt in each, nearly. */
    @Test
    void completeBlocksAreComparedWithin() {
        CampaignDocument campaign = Campaigns.campaign(
                Measure.STALL_SPEED,
                FlyingOrder.RANDOMISED_BLOCKS,
                both(Campaigns.stalls("A", 40, 50, 60, 45), Campaigns.stalls("B", 39.1, 48.9, 59, 44)));
        ReducedCampaign reduced = reduce(campaign);
        assertThat(reduced.design()).contains("4 blocks");
        var comparison = Objects.requireNonNull(reduced.conclusions().get(0).comparison());
        assertThat(comparison.difference()).isEqualTo(-1, within(1e-9));
        assertThat(comparison.interval().high()).isLessThan(-0.8);
    }

    @Test
    void severalStallsOfAFlightCountAsTheirMean() {
        List<PointDocument> points = new ArrayList<>();
        for (int block = 1; block <= 4; block++) {
            for (int k = 0; k < 2; k++) {
                points.add(Campaigns.stall("a" + block + k, "A", block, 46 + block + k, 560, null));
                points.add(
                        Campaigns.stall("b" + block + k, "B", block, 44.9 + block + k + 0.1 * (block % 2), 560, null));
            }
        }
        ReducedCampaign reduced = reduce(Campaigns.campaign(Measure.STALL_SPEED, FlyingOrder.INTERLEAVED, points));
        var comparison = Objects.requireNonNull(reduced.conclusions().get(0).comparison());
        assertThat(comparison.baselineCount()).as("blocks, not stalls").isEqualTo(4);
        assertThat(comparison.degreesOfFreedom()).isEqualTo(3);
        assertThat(Objects.requireNonNull(reduced.conclusions().get(0).claim()).words())
                .endsWith("4 and 4 blocks)");
    }

    @Test
    void anIncompleteBlockIsNotComparedWithin() {
        CampaignDocument campaign = Campaigns.campaign(
                Measure.STALL_SPEED,
                FlyingOrder.INTERLEAVED,
                both(Campaigns.stalls("A", 46, 47, 48, 47), Campaigns.stalls("B", 45, 46, 45)));
        assertThat(reduce(campaign).design()).contains("Welch").contains("not three blocks that all hold");
    }

    /** Stalls that follow V = 46 − 2·(rate − 1) exactly, and 1.5 kt lower with devices, at rates that differ. */
    @Test
    void speedsAreReadAtOneKnotPerSecondWhereRatesVary() {
        List<PointDocument> points = new ArrayList<>();
        double[] rates = {0.5, 0.8, 1.1, 1.4};
        double[] wobble = {0.01, -0.01, -0.01, 0.01};
        for (int i = 0; i < 4; i++) {
            points.add(Campaigns.stall("a" + i, "A", null, 46 - 2 * (rates[i] - 1) + wobble[i], 560, rates[i]));
            points.add(Campaigns.stall(
                    "b" + i, "B", null, 44.5 - 2 * (rates[i] + 0.5 - 1) + wobble[i], 560, rates[i] + 0.5));
        }
        ReducedCampaign reduced =
                reduce(Campaigns.campaign(Measure.STALL_SPEED, FlyingOrder.ONE_AFTER_ANOTHER, points));
        assertThat(reduced.slope()).isEqualTo(-2, within(0.02));
        assertThat(Objects.requireNonNull(reduced.conclusions().get(0).comparison())
                        .difference())
                .isEqualTo(-1.5, within(0.02));
        assertThat(reduced.baseline().mean()).isEqualTo(46, within(0.02));
    }

    /** The correction is found again from ground speeds made of a known airspeed and wind. */
    @Test
    void airspeedsAreCalibratedBySatelliteLegs() {
        List<PointDocument> points = new ArrayList<>();
        for (double indicated : new double[] {50, 60, 70, 80}) {
            double calibrated = indicated + 3 - 0.02 * (indicated - 50);
            double trueKt = Airspeeds.ofCalibrated(calibrated, StandardAtmosphere.at(4000, 7.0752))
                    .trueAirspeedKt();
            points.add(Campaigns.run("run" + indicated, indicated, legs(trueKt, 12, 300)));
        }
        points.addAll(Campaigns.stalls("A", 48, 52));
        ReducedCampaign reduced =
                reduce(Campaigns.campaign(Measure.STALL_SPEED, FlyingOrder.ONE_AFTER_ANOTHER, points));
        List<ReducedPoint> stalls = reduced.baseline().points();
        assertThat(stalls.get(1).calibratedKt()).isEqualTo(52 + 3 - 0.04, within(1e-3));
        assertThat(stalls.get(1).remarks()).isEmpty();
        assertThat(stalls.get(0).remarks()).containsExactly("outside the calibrated speeds");
        assertThat(reduced.warnings()).anyMatch(w -> w.contains("1 test points lie outside"));
    }

    private static List<LegDocument> legs(double trueKt, double windKt, double windFromDeg) {
        List<LegDocument> legs = new ArrayList<>();
        for (double track : new double[] {10, 130, 250}) {
            double towards = Math.toRadians(windFromDeg + 180 - track);
            double across = windKt * Math.sin(towards);
            legs.add(new LegDocument(
                    windKt * Math.cos(towards) + Math.sqrt(trueKt * trueKt - across * across), track, null));
        }
        return legs;
    }

    /** At equal power and mass the change of speed is what was put in, whatever the powers flown. */
    @Test
    void cruiseIsComparedAtEqualPower() {
        List<PointDocument> points = new ArrayList<>();
        double[] powers = {55, 65, 75};
        double[] wobble = {0.02, -0.04, 0.02};
        for (int i = 0; i < 3; i++) {
            double speed = 90 * Math.cbrt(powers[i] / 65);
            points.add(Campaigns.cruise("a" + i, "A", speed + wobble[i], 560, powers[i]));
            points.add(Campaigns.cruise("b" + i, "B", speed * 0.99 + wobble[i], 560, powers[i] * 1.0));
        }
        ReducedCampaign reduced =
                reduce(Campaigns.campaign(Measure.CRUISE_SPEED, FlyingOrder.ONE_AFTER_ANOTHER, points));
        assertThat(reduced.slope()).isEqualTo(1.0 / 3, within(0.01));
        assertThat(Objects.requireNonNull(reduced.conclusions().get(0).comparison())
                        .difference())
                .isEqualTo(-0.9, within(0.03));
    }

    @Test
    void everyMeasureHasItsBudget() {
        List<PointDocument> cruise = new ArrayList<>();
        List<PointDocument> climbs = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            for (String key : List.of("A", "B")) {
                cruise.add(Campaigns.cruise("c" + key + i, key, 90 + 0.3 * i, 556, 55 + 5 * i));
                climbs.add(Campaigns.climb("k" + key + i, key, 60, 556, 700 + 7 * i));
            }
        }
        for (ReducedConfiguration each : reduce(
                        Campaigns.campaign(Measure.CRUISE_SPEED, FlyingOrder.ONE_AFTER_ANOTHER, cruise))
                .configurations()) {
            UncertaintyBudget budget = Objects.requireNonNull(each.budget());
            assertThat(budget.value()).isEqualTo(each.mean());
            assertThat(budget.unit()).isEqualTo("kt");
            assertThat(budget.contributions())
                    .extracting(UncertaintyBudget.Contribution::name)
                    .containsExactly(
                            "Scatter of the points",
                            "Reading",
                            "Calibration",
                            "Mass",
                            "Power",
                            "Altitude",
                            "Temperature",
                            "Exponent of power");
            assertThat(budget.combined()).isPositive().isFinite();
            assertThat(budget.contributions().get(1).standardUncertainty())
                    .as("a whole knot of the dial")
                    .isEqualTo(1 / Math.sqrt(12), within(0.01));
        }
        for (ReducedConfiguration each : reduce(
                        Campaigns.campaign(Measure.CLIMB_RATE, FlyingOrder.ONE_AFTER_ANOTHER, climbs))
                .configurations()) {
            UncertaintyBudget budget = Objects.requireNonNull(each.budget());
            assertThat(budget.value()).isEqualTo(each.mean());
            assertThat(budget.unit()).isEqualTo("ft/min");
            assertThat(budget.combined()).isPositive().isFinite();
        }
    }

    /** Tapeline: 700 ft/min in air that is warmer than standard, Society of Flight Test Engineers, Reference Handbook, part 12. */
    @Test
    void climbsAreComparedAtStandardMass() {
        CampaignDocument campaign = Campaigns.campaign(
                Measure.CLIMB_RATE,
                FlyingOrder.ONE_AFTER_ANOTHER,
                List.of(
                        Campaigns.climb("a1", "A", 60, 560, 700),
                        Campaigns.climb("a2", "A", 60, 560, 710),
                        Campaigns.climb("b1", "B", 60, 560, 680),
                        Campaigns.climb("b2", "B", 60, 560, 690)));
        ReducedCampaign reduced = reduce(campaign);
        assertThat(reduced.baseline().points().get(0).value())
                .as("standard air and mass")
                .isEqualTo(700, within(0.1));
        assertThat(Objects.requireNonNull(reduced.conclusions().get(0).comparison())
                        .difference())
                .isEqualTo(-20, within(0.1));
    }

    @Test
    void whereNothingCanBeSaidItSaysWhy() {
        CampaignDocument campaign = Campaigns.campaign(
                Measure.STALL_SPEED, FlyingOrder.ONE_AFTER_ANOTHER, Campaigns.stalls("A", 46, 46.5, 47));
        Conclusion conclusion = reduce(campaign).conclusions().get(0);
        assertThat(conclusion.claim()).isNull();
        assertThat(conclusion.missing()).contains("B: One row has no stalls");
        CampaignDocument equal = Campaigns.campaign(
                Measure.STALL_SPEED,
                FlyingOrder.ONE_AFTER_ANOTHER,
                both(Campaigns.stalls("A", 46, 46), Campaigns.stalls("B", 45, 45)));
        assertThat(reduce(equal).conclusions().get(0).missing()).contains("all equal");
    }

    @Test
    void anOutlierIsMarkedAndUsed() {
        CampaignDocument campaign = Campaigns.campaign(
                Measure.STALL_SPEED,
                FlyingOrder.ONE_AFTER_ANOTHER,
                both(Campaigns.stalls("A", 46, 46.1, 46.2, 45.9, 46, 52), Campaigns.stalls("B", 45, 45.2, 44.8)));
        ReducedCampaign reduced = reduce(campaign);
        assertThat(reduced.baseline().points())
                .filteredOn(ReducedPoint::outlier)
                .singleElement()
                .satisfies(p -> assertThat(p.value()).isEqualTo(52));
        assertThat(Objects.requireNonNull(reduced.conclusions().get(0).comparison())
                        .baselineCount())
                .isEqualTo(6);
        assertThat(reduced.warnings()).anyMatch(w -> w.contains("Grubbs"));
    }

    /** The interval covers the truth in 95 % of campaigns flown by chance, blocks and entry rates included. */
    @Test
    void theIntervalHoldsTheTruth() {
        Random chance = new Random(2026);
        int held = 0;
        int runs = 1000;
        for (int run = 0; run < runs; run++) {
            List<PointDocument> points = new ArrayList<>();
            for (int block = 1; block <= 6; block++) {
                double day = chance.nextGaussian();
                for (String key : List.of("A", "B")) {
                    double rate = 0.6 + 0.8 * chance.nextDouble();
                    double speed =
                            46 + day - (key.equals("B") ? 1.5 : 0) - 0.9 * (rate - 1) + 0.6 * chance.nextGaussian();
                    points.add(Campaigns.stall(key + block, key, block, speed, 560, rate));
                }
            }
            ReducedCampaign reduced =
                    reduce(Campaigns.campaign(Measure.STALL_SPEED, FlyingOrder.RANDOMISED_BLOCKS, points));
            var interval = Objects.requireNonNull(reduced.conclusions().get(0).comparison())
                    .interval();
            held += interval.contains(-1.5) ? 1 : 0;
        }
        assertThat(held / (double) runs).isBetween(0.93, 0.97);
    }
}
