package org.vanewright.engineering.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.solid.Plate.Placement;

/** Batches of 8 to 16 standing on the trailing edge: common practice, no source. */
class BuildPlateTest {
    private static final Mesh MESH = SolidBuilder.build(new DesignBuilder().build());

    @Test
    void copiesStandOnTheBedInsideItsMarginAndClearOfEachOther() {
        for (int count : new int[] {1, 8, 11, 16, 500}) {
            List<Plate> plates = BuildPlate.arrange(MESH, 120, 100, count, 4);
            for (Plate plate : plates) {
                List<double[]> boxes =
                        plate.placements().stream().map(p -> box(MESH, p)).toList();
                for (double[] b : boxes) {
                    assertThat(b[2]).as("stands on the bed").isCloseTo(0, within(1e-9));
                    assertThat(Math.min(b[0], b[1])).isGreaterThanOrEqualTo(BuildPlate.MARGIN_MM - 1e-9);
                    assertThat(b[3]).isLessThanOrEqualTo(120 - BuildPlate.MARGIN_MM + 1e-9);
                    assertThat(b[4]).isLessThanOrEqualTo(100 - BuildPlate.MARGIN_MM + 1e-9);
                }
                for (int i = 0; i < boxes.size(); i++) {
                    for (int j = 0; j < i; j++) {
                        assertThat(gap(boxes.get(i), boxes.get(j))).isGreaterThanOrEqualTo(4 - 1e-9);
                    }
                }
            }
        }
    }

    @Test
    void onlyWhatEndsFlushStandsAndTheRestLiesOnItsBase() {
        DesignBuilder inset = new DesignBuilder();
        inset.inset = 3.0;
        inset.underside = 400.0;
        Mesh lying = SolidBuilder.build(inset.build());
        assertThat(BuildPlate.stands(MESH)).isTrue();
        assertThat(BuildPlate.stands(lying)).isFalse();
        Plate plate = BuildPlate.arrange(lying, 120, 100, 12, 4).get(0);
        assertThat(plate.placements()).hasSize(12).allSatisfy(p -> {
            double[] box = box(lying, p);
            assertThat(box[2]).as("lies on the bed").isCloseTo(0, within(1e-9));
            assertThat(box[5]).as("no higher than the piece").isCloseTo(lying.high(2) - lying.low(2), within(1e-9));
            assertThat(new double[] {box[0], box[1], box[3], box[4]}).containsExactly(p.footprint(lying), within(1e-9));
        });
        for (Placement a : plate.placements()) {
            for (Placement b : plate.placements()) {
                if (a.order() < b.order()) {
                    assertThat(gap(box(lying, a), box(lying, b))).isGreaterThanOrEqualTo(4 - 1e-9);
                }
            }
        }
    }

    @Test
    void whatDoesNotFitGoesOnFurtherPlatesInPrintOrder() {
        List<Plate> plates = BuildPlate.arrange(MESH, 60, 60, 23, 5);
        List<Integer> order = new ArrayList<>();
        plates.forEach(p -> p.placements().forEach(q -> order.add(q.order())));
        assertThat(plates).hasSizeGreaterThan(1).allMatch(p -> p.plates() == plates.size());
        assertThat(order).hasSize(23).isSorted().startsWith(1).endsWith(23);
    }

    @Test
    void theTransformTurnsWithoutMirroring() {
        double[] m = BuildPlate.alone(MESH).transform();
        double determinant = m[0] * (m[4] * m[8] - m[5] * m[7])
                - m[1] * (m[3] * m[8] - m[5] * m[6])
                + m[2] * (m[3] * m[7] - m[4] * m[6]);
        assertThat(determinant).isEqualTo(1);
    }

    @Test
    void aBedTooSmallNamesItself() {
        DesignBuilder wide = new DesignBuilder();
        wide.baseWidth = 60.0;
        Mesh mesh = SolidBuilder.build(wide.build());
        assertThatExceptionOfType(InvalidInputException.class)
                .isThrownBy(() -> BuildPlate.arrange(mesh, 60, 60, 1, 5))
                .satisfies(e ->
                        assertThat(e.problems()).extracting(FieldProblem::field).containsExactly("bedWidthMm"));
        assertThatExceptionOfType(InvalidInputException.class)
                .isThrownBy(() -> BuildPlate.arrange(mesh, Double.NaN, 0, 0, -1))
                .satisfies(e -> assertThat(e.problems())
                        .extracting(FieldProblem::field)
                        .containsExactly("bedWidthMm", "bedDepthMm", "spacingMm", "count"));
    }

    private static double gap(double[] a, double[] b) {
        return Math.max(Math.max(a[0] - b[3], b[0] - a[3]), Math.max(a[1] - b[4], b[1] - a[4]));
    }

    /** Low x, y, z then high x, y, z of a placed copy, its vertices run through the transform. */
    private static double[] box(Mesh mesh, Placement placement) {
        double[] m = placement.transform();
        double[] box = {1e9, 1e9, 1e9, -1e9, -1e9, -1e9};
        for (int v = 0; v < mesh.vertexCount(); v++) {
            for (int k = 0; k < 3; k++) {
                double at = mesh.x(v) * m[k] + mesh.y(v) * m[3 + k] + mesh.z(v) * m[6 + k] + m[9 + k];
                box[k] = Math.min(box[k], at);
                box[3 + k] = Math.max(box[3 + k], at);
            }
        }
        return box;
    }
}
