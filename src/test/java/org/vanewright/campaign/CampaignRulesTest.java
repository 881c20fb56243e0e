package org.vanewright.campaign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.record.RevisionRef;

class CampaignRulesTest {
    private static List<String> fields(CampaignDocument campaign) {
        return CampaignRules.check(campaign).stream().map(FieldProblem::field).toList();
    }

    @Test
    void aCampaignWithEverythingPasses() {
        assertThat(fields(Campaigns.campaign(
                        Measure.STALL_SPEED, FlyingOrder.RANDOMISED_BLOCKS, Campaigns.stalls("A", 46, 47))))
                .isEmpty();
    }

    @Test
    void anEmptyOneNamesWhatIsMissing() {
        assertThat(fields(new CampaignDocument("", null, PlanDocument.NONE, false)))
                .contains(
                        "name",
                        "plan.airframe",
                        "plan.measure",
                        "plan.configurations",
                        "plan.conditions.flaps",
                        "plan.conditions.standardMassKg",
                        "plan.repeats.scatter",
                        "plan.repeats.perConfiguration",
                        "plan.repeats.order");
    }

    @Test
    void theUnmodifiedAircraftComesFirstAndEveryOtherConfigurationHasALayout() {
        PlanDocument plan = Campaigns.plan(Measure.STALL_SPEED, FlyingOrder.INTERLEAVED);
        RevisionRef layout = new RevisionRef("a-layout", 1);
        PlanDocument turned = new PlanDocument(
                plan.airframe(),
                plan.measure(),
                List.of(
                        new ConfigurationDocument("A", "Fitted", layout),
                        new ConfigurationDocument("A", "Unmodified", null),
                        new ConfigurationDocument("lower", "Fitted", layout)),
                plan.conditions(),
                plan.instruments(),
                plan.roles(),
                plan.repeats(),
                plan.calibration());
        assertThat(fields(new CampaignDocument("Campaign", null, turned, false)))
                .containsExactlyInAnyOrder(
                        "plan.configurations[0].layout",
                        "plan.configurations[1].key",
                        "plan.configurations[1].layout",
                        "plan.configurations[2].key");
    }

    @Test
    void testPointsNameWhatIsWrongWithThem() {
        PointDocument unknown = Campaigns.stall("x", "Z", 1, 46, 560, -1.0);
        PointDocument twice = Campaigns.stall("x", "A", 1, 4, 5, null);
        PointDocument crossed = Campaigns.run(
                "legs",
                70,
                List.of(
                        new LegDocument(60.0, 10.0, null),
                        new LegDocument(60.0, null, 120.0),
                        new LegDocument(0.0, 400.0, null)));
        assertThat(fields(Campaigns.campaign(
                        Measure.STALL_SPEED, FlyingOrder.INTERLEAVED, List.of(unknown, twice, crossed))))
                .containsExactlyInAnyOrder(
                        "points[0].configuration",
                        "points[0].entryRateKtPerS",
                        "points[1].id",
                        "points[1].indicatedAirspeedKt",
                        "points[1].massKg",
                        "points[2].legs[1].trackDeg",
                        "points[2].legs[1].headingDeg",
                        "points[2].legs[2].groundSpeedKt",
                        "points[2].legs[2].trackDeg");
    }

    @Test
    void massComesFromFuelWhereItIsNotRead() {
        PointDocument read = Campaigns.stall("a", "A", 1, 46, 560, null);
        assertThat(read.massThenKg()).isEqualTo(560);
        PointDocument burned = new PointDocument(
                "b",
                PointKind.STALL,
                "A",
                1,
                1,
                null,
                46.0,
                4000.0,
                8.0,
                null,
                560.0,
                4.5,
                null,
                null,
                null,
                null,
                null,
                null,
                List.of(),
                null,
                PointSource.TYPED);
        assertThat(burned.massThenKg()).isEqualTo(555.5);
        assertThat(PointRules.check(burned, Campaigns.plan(Measure.STALL_SPEED, FlyingOrder.INTERLEAVED)))
                .isEmpty();
    }
}
