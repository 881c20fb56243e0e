package org.vanewright.engineering.solid;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Writes binary STL: 80-byte header, facet count, then 50 bytes a facet, little endian (3D Systems, StereoLithography
 * interface specification, 1989). STL carries no unit; the header says mm.
 */
public final class StlWriter {
    private static final int HEADER_BYTES = 80;
    private static final int FACET_BYTES = 50;

    private StlWriter() {}

    /** The file's bytes: 84 + 50 a triangle. */
    public static byte[] write(Mesh mesh, SolidLabel label) {
        ByteBuffer out = ByteBuffer.allocate(HEADER_BYTES + 4 + FACET_BYTES * mesh.triangleCount())
                .order(ByteOrder.LITTLE_ENDIAN);
        out.put(header(label)).putInt(mesh.triangleCount());
        for (int t = 0; t < mesh.triangleCount(); t++) {
            double[] n = mesh.doubleAreaVector(t);
            double norm = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
            for (double component : n) {
                out.putFloat((float) (component / norm));
            }
            for (int k = 0; k < 3; k++) {
                for (int axis = 0; axis < 3; axis++) {
                    out.putFloat((float) mesh.coordinate(mesh.corner(t, k), axis));
                }
            }
            out.putShort((short) 0);
        }
        return out.array();
    }

    /** Readers take a file that begins with "solid" for the text form, so the unit comes first. */
    private static byte[] header(SolidLabel label) {
        String hash = label.sha256().length() > 12 ? label.sha256().substring(0, 12) : label.sha256();
        String text = "Unit mm; revision " + label.revision() + "; SHA-256 " + hash + "; " + label.designName();
        byte[] ascii = text.replaceAll("[^ -~]", "?").getBytes(StandardCharsets.US_ASCII);
        byte[] header = new byte[HEADER_BYTES];
        Arrays.fill(header, (byte) ' ');
        System.arraycopy(ascii, 0, header, 0, Math.min(ascii.length, HEADER_BYTES));
        return header;
    }
}
