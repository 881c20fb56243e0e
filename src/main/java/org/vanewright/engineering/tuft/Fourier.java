package org.vanewright.engineering.tuft;

import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;

/** Fourier transforms of pictures. */
final class Fourier {
    private static final int TOGETHER = 8;

    private Fourier() {}

    /**
     * In place, along the rows and then along the columns; both counts are powers of two. Forward without a factor, inverse
     * divided by the number of pixels.
     *
     * @param parts real and imaginary, row by row
     */
    static void transform(double[][] parts, int columns, TransformType type) {
        int rows = parts[0].length / columns;
        double[][] line = new double[2][columns];
        for (int y = 0; y < rows; y++) {
            for (int part = 0; part < 2; part++) {
                System.arraycopy(parts[part], y * columns, line[part], 0, columns);
            }
            FastFourierTransformer.transformInPlace(line, DftNormalization.STANDARD, type);
            for (int part = 0; part < 2; part++) {
                System.arraycopy(line[part], 0, parts[part], y * columns, columns);
            }
        }
        double[][][] lines = new double[Math.min(TOGETHER, columns)][2][rows];
        for (int x = 0; x < columns; x += lines.length) {
            downward(parts, x, columns, lines, type);
        }
    }

    /** Some columns at once, since neighbours lie together in memory. */
    private static void downward(double[][] parts, int from, int columns, double[][][] lines, TransformType type) {
        int rows = lines[0][0].length;
        for (int part = 0; part < 2; part++) {
            for (int y = 0; y < rows; y++) {
                for (int i = 0; i < lines.length; i++) {
                    lines[i][part][y] = parts[part][y * columns + from + i];
                }
            }
        }
        for (double[][] line : lines) {
            FastFourierTransformer.transformInPlace(line, DftNormalization.STANDARD, type);
        }
        for (int part = 0; part < 2; part++) {
            for (int y = 0; y < rows; y++) {
                for (int i = 0; i < lines.length; i++) {
                    parts[part][y * columns + from + i] = lines[i][part][y];
                }
            }
        }
    }
}
