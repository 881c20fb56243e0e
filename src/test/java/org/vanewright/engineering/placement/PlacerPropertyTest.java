package org.vanewright.engineering.placement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.engineering.wing.KeepOut;
import org.vanewright.engineering.wing.WingShape;

/** Whatever a row asks for, no device ends up where it may not be. */
class PlacerPropertyTest {
    private static final double TOLERANCE_MM = 1e-5;

    @Test
    void devicesNeverSitInKeepOutsAcrossJointsOffTheSkinOrOnEachOther() {
        Random random = new Random(20240607);
        int devices = 0;
        for (int i = 0; i < 150; i++) {
            KeepOut keepOut = keepOut(random);
            WingShape wing = random.nextBoolean() ? TestWings.constantChord(keepOut) : TestWings.tapered(keepOut);
            RowPlan row = randomRow(random, wing);
            Placement placement = Placer.place(wing, List.of(row));
            for (Wing side : Wing.values()) {
                check(wing, keepOut, row, placement.on(side));
                devices += placement.on(side).size();
            }
        }
        assertThat(devices).as("the seeds really placed devices").isGreaterThan(3000);
    }

    private static KeepOut keepOut(Random random) {
        double from = 800 + 2500 * random.nextDouble();
        return new KeepOut(from, from + 5 + 300 * random.nextDouble(), random.nextBoolean(), true, "test");
    }

    private static RowPlan randomRow(Random random, WingShape wing) {
        double inner = wing.innerStationMm();
        double length = wing.outerStationMm() - inner;
        double from = inner + 0.3 * length * random.nextDouble();
        double to = from + (0.3 + 0.4 * random.nextDouble()) * length;
        return TestWings.with(TestWings.row(0, from, to), d -> {
            d.arrangement = Arrangement.values()[random.nextInt(3)];
            d.angleDeg = 25 * random.nextDouble();
            d.pairGapMm = 25 + 20 * random.nextDouble();
            d.pitchMm = 80 + 80 * random.nextDouble();
            d.onConflict = ConflictPolicy.values()[random.nextInt(2)];
            d.side = SurfaceSide.values()[random.nextInt(2)];
            d.position = random.nextBoolean()
                    ? new ChordPosition.FractionOfChord(0.04 + 0.6 * random.nextDouble())
                    : new ChordPosition.DistanceAlongSkin(40 + 300 * random.nextDouble());
        });
    }

    private static void check(WingShape wing, KeepOut keepOut, RowPlan row, List<Station> stations) {
        double previous = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < stations.size(); i++) {
            Station s = stations.get(i);
            double half = row.footprint().halfSpanMm(s.angleDeg());
            double from = s.stationMm() - half;
            double to = s.stationMm() + half;
            assertThat(s.number()).isEqualTo(i + 1);
            assertThat(from).as("beside its neighbour").isGreaterThanOrEqualTo(previous - TOLERANCE_MM);
            assertThat(from).isGreaterThanOrEqualTo(wing.panels().get(s.panel()).innerStationMm() - TOLERANCE_MM);
            assertThat(to).isLessThanOrEqualTo(wing.panels().get(s.panel()).outerStationMm() + TOLERANCE_MM);
            if (keepOut.on(row.side())) {
                assertThat(to <= keepOut.fromMm() + TOLERANCE_MM || from >= keepOut.toMm() - TOLERANCE_MM)
                        .as("clear of the keep-out")
                        .isTrue();
            }
            assertThat(s.arcMm()).isGreaterThanOrEqualTo(row.footprint().halfChordMm(s.angleDeg()) - TOLERANCE_MM);
            previous = to;
        }
    }
}
