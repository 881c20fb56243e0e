package org.vanewright.engineering.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.vanewright.engineering.placement.TestWings.NACA_2412;
import static org.vanewright.engineering.placement.TestWings.constantChord;
import static org.vanewright.engineering.placement.TestWings.row;
import static org.vanewright.engineering.placement.TestWings.stationsMm;
import static org.vanewright.engineering.placement.TestWings.tapered;
import static org.vanewright.engineering.placement.TestWings.with;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.wing.KeepOut;
import org.vanewright.engineering.wing.WingShape;

class PlacerTest {
    private static Placement place(WingShape wing, RowPlan... rows) {
        return Placer.place(wing, List.of(rows));
    }

    private static List<FieldProblem> refusal(WingShape wing, RowPlan... rows) {
        return catchThrowableOfType(InvalidInputException.class, () -> place(wing, rows))
                .problems();
    }

    @Test
    void unitsStandAtThePitchFromTheFirstStation() {
        Placement placement = place(constantChord(), row(0, 800, 2000));
        assertThat(stationsMm(placement.on(Wing.LEFT)))
                .containsExactlyElementsOf(IntStream.rangeClosed(0, 20)
                        .mapToObj(i -> 800.0 + 60 * i)
                        .toList());
        assertThat(placement.notes()).isEmpty();
    }

    @Test
    void numbersCountFromTheRootOutwardOnEachWingOverAllRows() {
        Placement placement = place(constantChord(), row(0, 2000, 2600), row(1, 800, 1400));
        for (Wing wing : Wing.values()) {
            List<Station> stations = placement.on(wing);
            assertThat(stations.stream().map(Station::number))
                    .containsExactlyElementsOf(
                            IntStream.rangeClosed(1, 22).boxed().toList());
            assertThat(stationsMm(stations)).isSorted();
            assertThat(stations.get(0).row()).isEqualTo(1);
        }
    }

    @Test
    void aStationIsSetOutByArcLengthNotByX() {
        Station s = place(constantChord(), row(0, 800, 800)).on(Wing.LEFT).get(0);
        double x = 0.08 * 1200;
        assertThat(s.arcMm())
                .as("the skin from the leading edge, as the section itself measures it")
                .isCloseTo(1200 * NACA_2412.atX(SurfaceSide.UPPER, 0.08).arcLength(), within(1e-6));
        assertThat(s.arcMm()).as("longer than x, by the rise of the nose").isGreaterThan(x + 10);
    }

    @Test
    void bothWingsMirrorEachOther() {
        Placement placement = place(tapered(), row(0, 1600, 3800));
        List<Station> left = placement.on(Wing.LEFT);
        List<Station> right = placement.on(Wing.RIGHT);
        assertThat(right)
                .usingRecursiveFieldByFieldElementComparatorIgnoringFields("wing")
                .isEqualTo(left);
        assertThat(left).allSatisfy(s -> assertThat(s.hand()).isEqualTo(Hand.TOE_IN));
    }

    @Test
    void sameHandTurnsToeInIntoToeOutOnTheRightWing() {
        Placement placement = place(constantChord(), with(row(0, 800, 1400), d -> d.wings = WingChoice.BOTH_SAME_HAND));
        assertThat(placement.on(Wing.LEFT))
                .allSatisfy(s -> assertThat(s.angleDeg()).isEqualTo(15));
        assertThat(placement.on(Wing.RIGHT)).allSatisfy(s -> {
            assertThat(s.angleDeg()).isEqualTo(-15);
            assertThat(s.hand()).isEqualTo(Hand.TOE_OUT);
        });
    }

    @Test
    void sameHandLeavesTheAirBetweenAPairGoingTheSameWayOnBothWings() {
        RowPlan down = with(row(0, 800, 1400), d -> {
            d.arrangement = Arrangement.COMMON_FLOW_DOWN;
            d.pairGapMm = 25;
            d.pitchMm = 100;
            d.wings = WingChoice.BOTH_SAME_HAND;
        });
        Placement placement = place(constantChord(), down);
        for (Wing wing : Wing.values()) {
            assertThat(placement.on(wing).subList(0, 2).stream().map(Station::hand))
                    .as("leading edges together on the %s wing", wing)
                    .containsExactly(Hand.TOE_OUT, Hand.TOE_IN);
        }
    }

    @Test
    void aRowOnOneWingLeavesTheOtherBare() {
        Placement placement = place(constantChord(), with(row(0, 800, 1400), d -> d.wings = WingChoice.RIGHT_ONLY));
        assertThat(placement.on(Wing.LEFT)).isEmpty();
        assertThat(placement.on(Wing.RIGHT)).hasSize(11);
    }

    @Test
    void commonFlowDownHasLeadingEdgesTogetherAndCommonFlowUpApart() {
        RowPlan down = with(row(0, 800, 1400), d -> {
            d.arrangement = Arrangement.COMMON_FLOW_DOWN;
            d.pairGapMm = 25;
            d.pitchMm = 100;
        });
        List<Station> pair = place(constantChord(), down).on(Wing.LEFT).subList(0, 2);
        assertThat(stationsMm(pair)).containsExactly(787.5, 812.5);
        // Leading edges together: the inboard vane turns its nose outboard, its partner inboard.
        assertThat(pair.stream().map(Station::hand)).containsExactly(Hand.TOE_OUT, Hand.TOE_IN);
        List<Station> up = place(constantChord(), with(down, d -> d.arrangement = Arrangement.COMMON_FLOW_UP))
                .on(Wing.LEFT)
                .subList(0, 2);
        assertThat(up.stream().map(Station::hand)).containsExactly(Hand.TOE_IN, Hand.TOE_OUT);
    }

    @Test
    void aPairOnOneBaseSitsStraight() {
        DeviceFootprint pair = new DeviceFootprint(TestWings.rectangle(30, 40), List.of(), true);
        RowPlan plan = with(row(0, 800, 1400), d -> {
            d.footprint = pair;
            d.arrangement = Arrangement.COMMON_FLOW_DOWN;
        });
        assertThat(place(constantChord(), plan).on(Wing.LEFT))
                .hasSize(11)
                .allSatisfy(s -> assertThat(s.hand()).isEqualTo(Hand.STRAIGHT));
        assertThat(refusal(constantChord(), with(plan, d -> d.arrangement = Arrangement.CO_ROTATING)))
                .extracting(FieldProblem::field)
                .containsExactly("rows[0].arrangement");
    }

    @Test
    void aDeviceInAKeepOutMovesToTheNearestFreePlaceAndIsListed() {
        KeepOut stallWarning = new KeepOut(1150, 1170, true, false, "stall-warning vane");
        Placement placement = place(constantChord(stallWarning), row(0, 800, 2000));
        double half = TestWings.device().halfSpanMm(15);
        assertThat(placement.notes()).singleElement().satisfies(n -> {
            assertThat(n.requestedMm()).isEqualTo(1160);
            assertThat(n.movedToMm()).isCloseTo(1150 - half, within(1e-9));
            assertThat(n.reason()).contains("stall-warning vane");
        });
        assertThat(placement.on(Wing.LEFT))
                .hasSize(21)
                .filteredOn(Station::moved)
                .hasSize(1);
    }

    @Test
    void aDeviceIsLeftOutWhenTheRowSaysSoOrNoPlaceIsFree() {
        KeepOut vent = new KeepOut(1150, 1170, true, true, "fuel vent");
        Placement out =
                place(constantChord(vent), with(row(0, 800, 2000), d -> d.onConflict = ConflictPolicy.LEAVE_OUT));
        assertThat(out.on(Wing.RIGHT)).hasSize(20);
        assertThat(out.notes())
                .singleElement()
                .satisfies(n -> assertThat(n.movedToMm()).isNull());
        KeepOut wide = new KeepOut(1100, 1400, true, true, "aileron gap");
        assertThat(refusal(constantChord(wide), with(row(0, 1160, 1400), d -> d.pitchMm = 20)))
                .as("a row that lies in a keep-out altogether")
                .extracting(FieldProblem::field)
                .containsExactly("rows[0]");
    }

    @Test
    void keepOutsHoldOnTheirOwnSideOnly() {
        KeepOut lower = new KeepOut(1150, 1170, false, true, "strut fitting");
        assertThat(place(constantChord(lower), row(0, 800, 2000)).notes()).isEmpty();
        assertThat(place(constantChord(lower), with(row(0, 800, 2000), d -> d.side = SurfaceSide.LOWER))
                        .notes())
                .hasSize(1);
    }

    @Test
    void nothingSitsAcrossAPanelJoint() {
        Placement placement = place(tapered(), row(0, 1380, 1620));
        double half = TestWings.device().halfSpanMm(15);
        assertThat(placement.notes()).singleElement().satisfies(n -> {
            assertThat(n.requestedMm()).isEqualTo(1500);
            assertThat(n.reason()).isEqualTo("across a panel joint");
        });
        assertThat(placement.on(Wing.LEFT))
                .allSatisfy(s -> assertThat(Math.abs(s.stationMm() - 1500)).isGreaterThanOrEqualTo(half - 1e-5));
    }

    @Test
    void aFixedDistanceAlongTheSkinGrowsAsAFractionTowardsTheTip() {
        Placement placement =
                place(tapered(), with(row(0, 1600, 3900), d -> d.position = new ChordPosition.DistanceAlongSkin(110)));
        List<Station> stations = placement.on(Wing.LEFT);
        assertThat(stations).allSatisfy(s -> assertThat(s.arcMm()).isCloseTo(110, within(1e-6)));
        assertThat(stations.stream().map(Station::xOverC)).isSorted();
        assertThat(stations.get(0).xOverC())
                .isLessThan(stations.get(stations.size() - 1).xOverC());
    }

    @Test
    void overlappingBasesAreRefusedWithTheFieldAndTheBound() {
        assertThat(refusal(constantChord(), with(row(0, 800, 2000), d -> d.pitchMm = 15)))
                .singleElement()
                .satisfies(p -> {
                    assertThat(p.field()).isEqualTo("rows[0].pitchMm");
                    assertThat(p.allowed()).startsWith("at least 18.4 mm");
                });
        assertThat(refusal(
                        constantChord(),
                        row(0, 800, 2000),
                        with(row(1, 805, 2000), d -> d.position = new ChordPosition.FractionOfChord(0.085))))
                .allSatisfy(p -> assertThat(p.field()).isEqualTo("rows[1]"))
                .isNotEmpty();
    }

    @Test
    void oneProblemNamesEachTwoRowsInConflict() {
        DeviceFootprint small = new DeviceFootprint(TestWings.rectangle(10, 6), List.of(), false);
        assertThat(refusal(
                        constantChord(),
                        row(0, 800, 2000),
                        row(1, 800, 2000),
                        with(row(2, 800, 2000), d -> d.footprint = small)))
                .as("one problem for each two rows")
                .extracting(FieldProblem::field)
                .containsExactlyInAnyOrder("rows[1]", "rows[2]", "rows[2]");
    }

    @Test
    void aDeviceThatWouldRunOffTheTrailingEdgeMovesToWhereTheSkinIsLongEnough() {
        RowPlan row = with(row(0, 2540, 3740), d -> {
            d.position = new ChordPosition.DistanceAlongSkin(1000);
            d.pitchMm = 300;
        });
        Placement placement = place(tapered(), row);
        double halfChord = row.footprint().halfChordMm(15);
        double wholeSkin = NACA_2412.arcLength(SurfaceSide.UPPER);
        double lastChord = (1000 + halfChord) / wholeSkin;
        double lastStation = 1500 + 2700 * (1400 - lastChord) / 600;
        assertThat(placement.notes())
                .isNotEmpty()
                .allSatisfy(n -> assertThat(n.reason()).contains("off the skin"));
        PlacementNote first = placement.notes().get(0);
        assertThat(first.requestedMm()).isGreaterThan(lastStation);
        assertThat(first.movedToMm())
                .as("where the base just ends on the trailing edge")
                .isCloseTo(lastStation, within(1e-4));
        assertThat(placement.on(Wing.LEFT)).hasSize(5);
    }

    @Test
    void basesInTheVerySamePlaceOrOneWithinAnotherOverlapToo() {
        RowPlan smaller = with(
                row(1, 800, 2000),
                d -> d.footprint = new DeviceFootprint(TestWings.rectangle(20, 8), List.of(), false));
        for (RowPlan second : List.of(row(1, 800, 2000), smaller)) {
            assertThat(refusal(constantChord(), row(0, 800, 2000), second))
                    .isNotEmpty()
                    .allSatisfy(p -> assertThat(p.field()).isEqualTo("rows[1]"));
        }
    }

    @Test
    void basesMayStandEdgeToEdge() {
        RowPlan touching = with(row(0, 800, 2000), d -> {
            d.angleDeg = 0;
            d.pitchMm = 12;
        });
        assertThat(place(constantChord(), touching).on(Wing.LEFT)).hasSize(101);
    }

    @Test
    void outOfBoundsRowsNameEveryField() {
        assertThat(refusal(constantChord(), with(row(0, 100, 9000), d -> {
                    d.angleDeg = 80;
                    d.pitchMm = Double.NaN;
                    d.position = new ChordPosition.FractionOfChord(1.5);
                })))
                .extracting(FieldProblem::field)
                .containsExactlyInAnyOrder(
                        "rows[0].fromMm",
                        "rows[0].toMm",
                        "rows[0].chordFraction",
                        "rows[0].angleDeg",
                        "rows[0].pitchMm");
        assertThat(refusal(constantChord(), with(row(0, 800, 4000), d -> d.pitchMm = 1)))
                .extracting(FieldProblem::field)
                .contains("rows[0].pitchMm");
    }

    @Test
    void aRowThatWouldRunOffTheNoseFindsNoPlace() {
        assertThat(refusal(
                        constantChord(),
                        with(row(0, 800, 2000), d -> d.position = new ChordPosition.DistanceAlongSkin(5))))
                .singleElement()
                .satisfies(p -> assertThat(p.field()).isEqualTo("rows[0]"));
    }
}
