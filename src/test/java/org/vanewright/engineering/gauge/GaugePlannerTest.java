package org.vanewright.engineering.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.placement.ChordPosition;
import org.vanewright.engineering.placement.RowPlan;
import org.vanewright.engineering.placement.Station;
import org.vanewright.engineering.placement.TestWings;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.wing.KeepOut;

/** Which gauges a row needs, and which rows need none. */
class GaugePlannerTest {
    @Test
    void everyDeviceHasExactlyOneGaugeOrAReasonAndEverySlotAgreesWithTheStationTable() {
        Random random = new Random(63);
        int devices = 0;
        for (int i = 0; i < 12; i++) {
            GaugeCase given = GaugeCase.random(random);
            for (Wing wing : Wing.values()) {
                RowGauges row = given.gauges(wing);
                List<Integer> found = new ArrayList<>();
                row.gauges().forEach(g -> found.addAll(g.devices()));
                row.leftOut().forEach(l -> {
                    found.addAll(l.devices());
                    assertThat(l.reason()).startsWith("Row 1, Row 1: ").endsWith("Use the template there.");
                });
                List<Station> stations = given.placement().on(wing);
                assertThat(found)
                        .containsExactlyInAnyOrderElementsOf(
                                stations.stream().map(Station::number).toList());
                for (Gauge gauge : row.gauges()) {
                    devices += checkSlots(given, gauge, stations);
                }
            }
        }
        assertThat(devices).as("the seeds really placed devices").isGreaterThan(100);
    }

    private static int checkSlots(GaugeCase given, Gauge gauge, List<Station> stations) {
        assertThat(gauge.fit().within(given.settings())).as("%s", gauge).isTrue();
        for (int number : gauge.devices()) {
            Station station = stations.get(number - 1);
            Slot slot = gauge.slots().stream()
                    .filter(s -> s.angleDeg() == station.angleDeg())
                    .findFirst()
                    .orElseThrow();
            boolean atEdge = station.stationMm() - slot.offsetMm() == gauge.cutForMm();
            // The fit may move the shell along the skin, so the bare difference has twice the allowance.
            assertThat(slot.arcMm())
                    .isCloseTo(
                            station.arcMm(),
                            within(atEdge ? 1e-6 : 2 * given.settings().placeMm()));
        }
        return gauge.devices().size();
    }

    @Test
    void aTapersGaugesAreAsFewAsTheGapAllows() {
        GaugeCase tight = GaugeCase.of(TestWings.tapered(), atArc(1600, 3800));
        GaugeCase loose = GaugeCase.of(TestWings.tapered(), atArc(1600, 3800), new GaugeSettings(1, 1, 1, 3, 60, 30));
        int few = loose.gauges(Wing.LEFT).gauges().size();
        int many = tight.gauges(Wing.LEFT).gauges().size();
        assertThat(few).isLessThan(many).isGreaterThan(0);
        // One unit more would not have fitted: each range is as long as it can be.
        GaugeFrame frame = new GaugeFrame(tight.wing(), tight.row().plan(), tight.settings());
        List<Gauge> gauges = tight.gauges(Wing.LEFT).gauges();
        for (int i = 0; i + 1 < gauges.size(); i++) {
            Gauge g = gauges.get(i);
            double next = gauges.get(i + 1).fromMm();
            double middle = (g.fromMm() + next) / 2;
            List<Slot> slots = List.of(new Slot(0, 110, 15));
            Fit fit =
                    FitProbe.of(frame, 1, middle, slots, g.fromMm()).worse(FitProbe.of(frame, 1, middle, slots, next));
            assertThat(fit.within(tight.settings()))
                    .as("gauge %s with one unit more", g.number())
                    .isFalse();
        }
    }

    private static RowPlan atArc(double fromMm, double toMm) {
        return TestWings.with(
                TestWings.row(0, fromMm, toMm), d -> d.position = new ChordPosition.DistanceAlongSkin(110));
    }

    @Test
    void rowsTooFarAftAreRefusedByName() {
        GaugeCase given = GaugeCase.of(
                TestWings.constantChord(),
                TestWings.with(TestWings.row(0, 900, 1500), d -> d.position = new ChordPosition.FractionOfChord(0.4)));
        RowGauges row = given.gauges(Wing.LEFT);
        assertThat(row.gauges()).isEmpty();
        assertThat(row.leftOut()).hasSize(1);
        assertThat(row.leftOut().get(0).reason())
                .startsWith("Row 1, Row 1: it lies so far aft that the hook would be")
                .endsWith("Use the template there.");
    }

    @Test
    void devicesThatGaveWayAreSetByMeasureOrTemplate() {
        GaugeCase given = GaugeCase.of(
                TestWings.constantChord(new KeepOut(1300, 1390, true, true, "vent")), TestWings.row(0, 900, 2100));
        RowGauges row = given.gauges(Wing.RIGHT);
        assertThat(row.gauges().get(0).byMeasure())
                .as("nothing stands inboard of the first")
                .contains(1);
        List<Station> stations = given.placement().on(Wing.RIGHT);
        List<Integer> near = new ArrayList<>();
        for (int i = 1; i < stations.size(); i++) {
            if (stations.get(i).stationMm() - stations.get(i - 1).stationMm() < 59.9) {
                near.add(stations.get(i).number());
            }
        }
        assertThat(near).isNotEmpty();
        assertThat(row.leftOut().stream().flatMap(l -> l.devices().stream()).toList())
                .containsAll(near);
    }

    @Test
    void hostileSettingsAreNamed() {
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, -1, 1e9}) {
            GaugeSettings settings = new GaugeSettings(bad, bad, bad, bad, bad, bad);
            GaugeCase given = GaugeCase.of(TestWings.constantChord(), TestWings.row(0, 900, 1500), settings);
            assertThatThrownBy(() -> given.gauges(Wing.LEFT))
                    .isInstanceOfSatisfying(
                            InvalidInputException.class,
                            e -> assertThat(e.problems())
                                    .extracting(p -> p.field())
                                    .containsExactly(
                                            "clearanceMm", "gapMm", "placeMm", "thicknessMm", "widthMm", "wrapMm"));
        }
    }
}
