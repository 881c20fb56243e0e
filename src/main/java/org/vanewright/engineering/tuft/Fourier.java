package org.vanewright.engineering.tuft;

import org.hipparchus.transform.DftNormalization;
import org.hipparchus.transform.FastFourierTransformer;
import org.hipparchus.transform.TransformType;

/** Fourier transforms of pictures. */
final class Fourier {
    private Fourier() {}

    /**
     * In place, along the rows and then along the columns; both counts are powers of two. Forward without a factor, inverse
     * divided by the number of pixels.
     *
     * @param parts real and imaginary, row by row
     */
    static void transform(double[][] parts, int columns, TransformType type) {
        int rows = parts[0].length / columns;
        for (int y = 0; y < rows; y++) {
            along(parts, y * columns, 1, columns, type);
        }
        for (int x = 0; x < columns; x++) {
            along(parts, x, columns, rows, type);
        }
    }

    private static void along(double[][] parts, int from, int step, int count, TransformType type) {
        double[][] line = {new double[count], new double[count]};
        for (int i = 0; i < count; i++) {
            line[0][i] = parts[0][from + i * step];
            line[1][i] = parts[1][from + i * step];
        }
        FastFourierTransformer.transformInPlace(line, DftNormalization.STANDARD, type);
        for (int i = 0; i < count; i++) {
            parts[0][from + i * step] = line[0][i];
            parts[1][from + i * step] = line[1][i];
        }
    }
}
