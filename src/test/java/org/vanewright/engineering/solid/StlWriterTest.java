package org.vanewright.engineering.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The binary layout of 3D Systems, StereoLithography interface specification, 1989. */
class StlWriterTest {
    @Test
    void headerCountAndFiftyBytesAFacet() {
        Mesh mesh = SolidBuilder.build(new DesignBuilder().build());
        byte[] file = StlWriter.write(mesh, new SolidLabel("t", "solid name é", 7, "0123456789abcdef"));
        String header = new String(file, 0, 80, StandardCharsets.US_ASCII);
        ByteBuffer in = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
        assertThat(file).hasSize(84 + 50 * mesh.triangleCount());
        assertThat(header).doesNotStartWith("solid").startsWith("Unit mm; revision 7; SHA-256 0123456789ab");
        assertThat(in.getInt(80)).isEqualTo(mesh.triangleCount());
    }

    @Test
    void facetsCarryUnitNormalsThatAgreeWithTheirCorners() {
        Mesh mesh = SolidBuilder.build(new DesignBuilder().build());
        ByteBuffer in = ByteBuffer.wrap(StlWriter.write(mesh, new SolidLabel("t", "n", 1, "")))
                .order(ByteOrder.LITTLE_ENDIAN)
                .position(84);
        double volume = 0;
        for (int t = 0; t < mesh.triangleCount(); t++) {
            double[] f = new double[12];
            for (int i = 0; i < 12; i++) {
                f[i] = in.getFloat();
            }
            assertThat(in.getShort()).isZero();
            double[] n = cross(f[6] - f[3], f[7] - f[4], f[8] - f[5], f[9] - f[3], f[10] - f[4], f[11] - f[5]);
            double twice = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
            for (int axis = 0; axis < 3; axis++) {
                assertThat(f[axis]).isCloseTo(n[axis] / twice, within(1e-5));
            }
            volume += (n[0] * f[3] + n[1] * f[4] + n[2] * f[5]) / 6;
        }
        assertThat(in.hasRemaining()).isFalse();
        assertThat(volume).isCloseTo(8 * 20 * 1.2 + 30 * 16, within(1e-3));
    }

    private static double[] cross(double ax, double ay, double az, double bx, double by, double bz) {
        return new double[] {ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx};
    }
}
