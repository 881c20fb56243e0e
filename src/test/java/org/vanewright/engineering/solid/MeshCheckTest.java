package org.vanewright.engineering.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.InvalidInputException;

/** The example cube of 3MF Consortium, 3MF Core Specification 1.4.0, appendix B.2; its metrics follow from its corners. */
class MeshCheckTest {
    private static final double A = 39.998;
    private static final double[] CORNERS = {0, 0, 0, A, 0, 0, A, 40, 0, 0, 40, 0, 0, 0, A, A, 0, A, A, 40, A, 0, 40, A
    };
    private static final int[] FACES = {
        0, 3, 2, 0, 2, 1, 4, 5, 6, 4, 6, 7, 0, 1, 5, 0, 5, 4, 1, 2, 6, 1, 6, 5, 2, 3, 7, 2, 7, 6, 3, 0, 4, 3, 4, 7
    };

    @Test
    void theSpecificationsCubeIsSound() {
        Mesh cube = new Mesh(CORNERS, FACES);
        MeshCheck check = MeshCheck.of(cube);
        MassProperties properties = MassProperties.of(cube, 1000);
        assertThat(check.isSound()).isTrue();
        assertThat(check.shellEulerCharacteristics()).containsExactly(2);
        assertThat(check.signedVolumeMm3()).isCloseTo(63_993.6002, within(1e-4));
        assertThat(properties.areaMm2()).isCloseTo(9_599.3600, within(1e-4));
        assertThat(properties.massG()).isCloseTo(63.9936002, within(1e-7));
        assertThat(properties.boundingBoxMm()).containsExactly(0.0, 0.0, 0.0, A, 40.0, A);
        assertThat(properties.centreOfMassMm().get(0)).isCloseTo(A / 2, within(1e-9));
        assertThat(properties.centreOfMassMm().get(1)).isCloseTo(20, within(1e-9));
        assertThat(properties.centreOfMassMm().get(2)).isCloseTo(A / 2, within(1e-9));
    }

    @Test
    void aMissingFaceLeavesThreeEdgesUnmatched() {
        MeshCheck check = MeshCheck.of(new Mesh(CORNERS, Arrays.copyOf(FACES, 33)));
        assertThat(check.unmatchedEdges()).isEqualTo(3);
        assertThat(check.isSound()).isFalse();
    }

    @Test
    void aTurnedFaceRepeatsEdges() {
        int[] faces = FACES.clone();
        faces[1] = 2;
        faces[2] = 3;
        MeshCheck check = MeshCheck.of(new Mesh(CORNERS, faces));
        assertThat(check.repeatedEdges()).isEqualTo(3);
        assertThat(check.isSound()).isFalse();
    }

    @Test
    void insideOutHasANegativeVolume() {
        int[] faces = FACES.clone();
        for (int t = 0; t < faces.length; t += 3) {
            faces[t] = FACES[t + 1];
            faces[t + 1] = FACES[t];
        }
        MeshCheck check = MeshCheck.of(new Mesh(CORNERS, faces));
        assertThat(check.signedVolumeMm3()).isNegative();
        assertThat(check.isSound()).isFalse();
    }

    @Test
    void shellsAreCountedApart() {
        double[] two = Arrays.copyOf(CORNERS, 48);
        int[] faces = Arrays.copyOf(FACES, 72);
        for (int i = 0; i < 24; i++) {
            two[24 + i] = CORNERS[i] + 100;
        }
        for (int i = 0; i < 36; i++) {
            faces[36 + i] = FACES[i] + 8;
        }
        assertThat(MeshCheck.of(new Mesh(two, faces)).shellEulerCharacteristics())
                .containsExactly(2, 2);
    }

    @Test
    void absurdDensitiesAreRefused() {
        Mesh cube = new Mesh(CORNERS, FACES);
        for (double density : new double[] {0, -1, Double.NaN, 1e9}) {
            assertThatExceptionOfType(InvalidInputException.class)
                    .isThrownBy(() -> MassProperties.of(cube, density))
                    .withMessageContaining("densityKgM3");
        }
    }
}
