package org.vanewright.engineering.printing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.solid.BuildPlate;
import org.vanewright.engineering.solid.MassProperties;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.engineering.solid.Plate;
import org.vanewright.engineering.solid.RandomDesigns;
import org.vanewright.engineering.solid.SolidBuilder;

class PrintEstimateTest {
    @Test
    void sixteenPiecesTakeAboutFourHours() {
        // rule of thumb of the trade: batches of 8 to 16, about 15 minutes each; common practice, no source
        Mesh mesh = meshes(1, 1).get(0);
        PieceMaterial material = PieceMaterial.of(mesh, PrintSettings.USUAL);
        assertThat(PrintRate.USUAL.minutes(16, material) / 60).isCloseTo(4, within(1e-12));
    }

    @Test
    void aRateReadOffAPrintGivesThatPrintAgain() {
        for (Mesh mesh : meshes(7, 30)) {
            PieceMaterial material = PieceMaterial.of(mesh, PrintSettings.USUAL);
            PrintRate rate = PrintRate.byVolume(90, 7, material.depositedMm3());
            assertThat(rate.minutes(7, material)).isCloseTo(90, within(1e-9));
            assertThat(rate.minutes(14, material)).isCloseTo(180, within(1e-9));
        }
    }

    @Test
    void aPieceTakesNoMoreThanItsSolidAndItsRaft() {
        for (Mesh mesh : meshes(11, 40)) {
            PrintSettings full = new PrintSettings(0.4, 1, 0, 0, 1000);
            PrintSettings hollow = new PrintSettings(0.4, 0, 0, 0, 1000);
            double volume = MassProperties.of(mesh, 1000).volumeMm3();
            assertThat(PieceMaterial.of(mesh, full).depositedMm3()).isCloseTo(volume, within(1e-9 * volume));
            assertThat(PieceMaterial.of(mesh, hollow).depositedMm3()).isLessThanOrEqualTo(volume);
            assertThat(PieceMaterial.of(mesh, full).depositedG()).isCloseTo(volume / 1000, within(1e-9 * volume));
        }
    }

    @Test
    void theRaftIsASlabUnderTheFoot() {
        Mesh mesh = meshes(3, 1).get(0);
        double[] foot = Plate.Placement.alone(mesh).footprint(mesh);
        double area = (foot[2] - foot[0] + 4) * (foot[3] - foot[1] + 4);
        assertThat(PieceMaterial.of(mesh, new PrintSettings(1, 0, 0.5, 2, 1000)).raftMm3())
                .isCloseTo(area / 2, within(1e-9 * area));
    }

    @Test
    void sparesRoundUp() {
        assertThat(new Spares(2, 0).of(40)).isEqualTo(2);
        assertThat(new Spares(0, 10).of(40)).isEqualTo(4);
        assertThat(new Spares(0, 10).of(41)).isEqualTo(5);
        assertThat(new Spares(1, 5).of(20)).isEqualTo(2);
        assertThat(new Spares(0, 0).of(100)).isZero();
    }

    @Test
    void refusesSettingsThatNoMachineHas() {
        assertThatThrownBy(() -> new PrintSettings(0, 2, -1, 100, 1))
                .isInstanceOfSatisfying(
                        InvalidInputException.class,
                        e -> assertThat(e.problems())
                                .extracting("field")
                                .containsExactly("shellMm", "infillFraction", "raftMm", "raftMarginMm", "densityKgM3"));
        assertThatThrownBy(() -> new PrintRate(PrintRate.Kind.CM3_PER_HOUR, Double.NaN))
                .isInstanceOf(InvalidInputException.class);
        assertThatThrownBy(() -> new Spares(-1, 500)).isInstanceOf(InvalidInputException.class);
    }

    /** Five hundred seeded plates: no two pieces overlap, none leaves the bed. */
    @Test
    void platesNeverOverlapAndStayOnTheBed() {
        Random random = new Random(500);
        for (Mesh mesh : meshes(500, 100)) {
            for (int bed = 0; bed < 5; bed++) {
                double width = 120 + 280 * random.nextDouble();
                double depth = 120 + 280 * random.nextDouble();
                double spacing = 1 + 9 * random.nextDouble();
                int count = 1 + random.nextInt(60);
                List<Plate> plates = BuildPlate.arrange(mesh, width, depth, count, spacing);
                plates.forEach(plate -> requireApart(plate, mesh, spacing));
                assertThat(plates.stream().mapToInt(p -> p.placements().size()).sum())
                        .isEqualTo(count);
            }
        }
    }

    private static List<Mesh> meshes(long seed, int count) {
        return new RandomDesigns(seed).valid(count).stream().map(SolidBuilder::build).toList();
    }

    private static void requireApart(Plate plate, Mesh mesh, double spacing) {
        double[][] rooms = plate.placements().stream()
                .map(p -> p.footprint(mesh))
                .toArray(double[][]::new);
        for (int i = 0; i < rooms.length; i++) {
            double[] a = rooms[i];
            assertThat(a[0]).isGreaterThanOrEqualTo(BuildPlate.MARGIN_MM - 1e-9);
            assertThat(a[1]).isGreaterThanOrEqualTo(BuildPlate.MARGIN_MM - 1e-9);
            assertThat(a[2]).isLessThanOrEqualTo(plate.bedWidthMm() - BuildPlate.MARGIN_MM + 1e-9);
            assertThat(a[3]).isLessThanOrEqualTo(plate.bedDepthMm() - BuildPlate.MARGIN_MM + 1e-9);
            for (int j = 0; j < i; j++) {
                double[] b = rooms[j];
                double gap = Math.max(
                        Math.max(b[0] - a[2], a[0] - b[2]), Math.max(b[1] - a[3], a[1] - b[3]));
                assertThat(gap).isGreaterThanOrEqualTo(spacing - 1e-9);
            }
        }
    }
}
