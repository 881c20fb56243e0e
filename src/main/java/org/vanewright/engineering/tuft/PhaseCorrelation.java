package org.vanewright.engineering.tuft;

import org.hipparchus.transform.TransformType;

/**
 * Finds by how much a picture has moved, from the phases of its spectrum alone, so that neither light nor contrast counts:
 *
 * <pre>
 * c(d) = 1/n Σ_k [F(k) G*(k)/|F(k) G*(k)|] exp(2πi k·d)
 * </pre>
 *
 * has its peak at the shift d of F against G. C. D. Kuglin, D. C. Hines, The Phase Correlation Image Alignment Method, IEEE
 * Conference on Cybernetics and Society, 1975; between pixels the sum itself is evaluated round the peak, as M.
 * Guizar-Sicairos, S. T. Thurman, J. R. Fienup do, Efficient Subpixel Image Registration Algorithms, Optics Letters 33, 2008
 * (both from memory). A phase counts by how far its frequency stands out of the noise, |F G*|/(|F G*| + 3 times the mean of the
 * highest ones); frequencies above half the highest one are left out, where noise and scaling rule, and so is the window's
 * own, the lowest. Turning and zooming are not looked for.
 */
final class PhaseCorrelation {
    private static final int LARGEST = 512;
    private static final double HIGHEST_CYCLES_PER_PX = 0.25;
    /** From there on a picture holds next to nothing but noise. */
    private static final double NOISE_CYCLES_PER_PX = 0.35;

    private static final double CLEAR_OF_NOISE = 3;
    private static final int LOWEST_CYCLES = 2;
    /** A shift of more than this part of the region is not looked for. */
    private static final double FARTHEST = 0.25;

    private static final double FINE_PX = 0.1;
    private static final int FINE_STEPS = 10;

    private final Region region;
    private final double farthestPx;
    private final int bin;
    private final int columns;
    private final int rows;
    private final double[][] first;

    /** A part of a frame. */
    record Region(int x, int y, int widthPx, int heightPx) {}

    /** @param farthestPx the longest shift that is looked for, across and down; at most a quarter of the region counts */
    PhaseCorrelation(GreyFrame frame, Region region, double farthestPx) {
        this.region = region;
        this.farthestPx = farthestPx;
        this.bin = Math.max(1, (Math.max(region.widthPx(), region.heightPx()) + LARGEST - 1) / LARGEST);
        this.columns = powerOfTwo(region.widthPx() / bin);
        this.rows = powerOfTwo(region.heightPx() / bin);
        this.first = spectrum(frame);
    }

    private static int powerOfTwo(int least) {
        return Math.max(8, least <= 1 ? 1 : Integer.highestOneBit(least - 1) << 1);
    }

    /** Real and imaginary parts, row by row. */
    private double[][] spectrum(GreyFrame frame) {
        double[][] parts = {windowed(frame), new double[rows * columns]};
        Fourier.transform(parts, columns, TransformType.FORWARD);
        return parts;
    }

    /** Less its mean and faded out toward the edges, so that these do not count as structure. */
    private double[] windowed(GreyFrame frame) {
        int width = region.widthPx() / bin;
        int height = region.heightPx() / bin;
        double[] levels = new double[rows * columns];
        double sum = 0;
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                double level = binned(frame, region.x() + x * bin, region.y() + y * bin);
                levels[y * columns + x] = level;
                sum += level;
            }
        }
        double mean = sum / (width * height);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                levels[y * columns + x] = (levels[y * columns + x] - mean) * hann(x, width) * hann(y, height);
            }
        }
        return levels;
    }

    private double binned(GreyFrame frame, int fromX, int fromY) {
        double sum = 0;
        for (int y = fromY; y < fromY + bin; y++) {
            for (int x = fromX; x < fromX + bin; x++) {
                sum += frame.at(x, y);
            }
        }
        return sum / (bin * bin);
    }

    private static double hann(int index, int count) {
        return 0.5 - 0.5 * Math.cos(2 * Math.PI * (index + 0.5) / count);
    }

    /** @param frame of the first one's size */
    FrameShift of(GreyFrame frame) {
        double[][] phases = spectrum(frame);
        double kept = keepPhases(phases);
        double[][] correlation = {phases[0].clone(), phases[1].clone()};
        Fourier.transform(correlation, columns, TransformType.INVERSE);
        int peak = highest(correlation[0]);
        return refined(phases, signed(peak % columns, columns), signed(peak / columns, rows), kept);
    }

    /**
     * Leaves of the spectrum its phases against those of the first frame, each with the weight that it stands out of the
     * noise; sum of the weights.
     */
    private double keepPhases(double[][] parts) {
        double noise = 0;
        int quiet = 0;
        for (int i = 0; i < parts[0].length; i++) {
            double re = parts[0][i] * first[0][i] + parts[1][i] * first[1][i];
            double im = parts[1][i] * first[0][i] - parts[0][i] * first[1][i];
            parts[0][i] = re;
            parts[1][i] = im;
            if (cycles(i) >= NOISE_CYCLES_PER_PX) {
                noise += Math.sqrt(re * re + im * im);
                quiet++;
            }
        }
        double bound = CLEAR_OF_NOISE * noise / Math.max(1, quiet) + 1e-9;
        double kept = 0;
        for (int i = 0; i < parts[0].length; i++) {
            double size = Math.sqrt(parts[0][i] * parts[0][i] + parts[1][i] * parts[1][i]);
            double by = counts(i) ? 1 / (size + bound) : 0;
            parts[0][i] *= by;
            parts[1][i] *= by;
            kept += size * by;
        }
        return kept;
    }

    private double cycles(int index) {
        double across = signed(index % columns, columns) / (double) columns;
        double down = signed(index / columns, rows) / (double) rows;
        return Math.sqrt(across * across + down * down);
    }

    private boolean counts(int index) {
        int across = Math.abs(signed(index % columns, columns));
        int down = Math.abs(signed(index / columns, rows));
        return cycles(index) <= HIGHEST_CYCLES_PER_PX && Math.max(across, down) >= LOWEST_CYCLES;
    }

    private static int signed(int index, int count) {
        return index < count / 2 ? index : index - count;
    }

    private int highest(double[] correlation) {
        int best = 0;
        double farX = Math.min(farthestPx, FARTHEST * region.widthPx()) / bin;
        double farY = Math.min(farthestPx, FARTHEST * region.heightPx()) / bin;
        for (int i = 1; i < correlation.length; i++) {
            boolean near =
                    Math.abs(signed(i % columns, columns)) <= farX && Math.abs(signed(i / columns, rows)) <= farY;
            best = near && correlation[i] > correlation[best] ? i : best;
        }
        return best;
    }

    /** The peak on a grid of a tenth of a pixel, then by parabolas through its neighbours. */
    private FrameShift refined(double[][] phases, int coarseX, int coarseY, double kept) {
        int side = 2 * FINE_STEPS + 1;
        double[] offsets = new double[side];
        for (int i = 0; i < side; i++) {
            offsets[i] = (i - FINE_STEPS) * FINE_PX;
        }
        double[][] heights = heights(phases, offsets, coarseX, coarseY);
        int bestX = 1;
        int bestY = 1;
        for (int y = 1; y < side - 1; y++) {
            for (int x = 1; x < side - 1; x++) {
                if (heights[y][x] > heights[bestY][bestX]) {
                    bestX = x;
                    bestY = y;
                }
            }
        }
        double[] across = heights[bestY];
        double x = offsets[bestX] + FINE_PX * vertex(across[bestX - 1], across[bestX], across[bestX + 1]);
        double y =
                offsets[bestY] + FINE_PX * vertex(heights[bestY - 1][bestX], across[bestX], heights[bestY + 1][bestX]);
        return new FrameShift(bin * (coarseX + x), bin * (coarseY + y), kept > 0 ? across[bestX] / kept : 0);
    }

    /** The sum at each offset across and down, columns first; phases of high frequencies are nothing. */
    private double[][] heights(double[][] phases, double[] offsets, int coarseX, int coarseY) {
        int side = offsets.length;
        double[][] heights = new double[side][side];
        double[][][] across = turns(columns, coarseX, offsets);
        double[][][] down = turns(rows, coarseY, offsets);
        for (int y = 0; y < rows; y++) {
            if (isHigh(y, rows)) {
                continue;
            }
            for (int i = 0; i < side; i++) {
                double re = 0;
                double im = 0;
                for (int x = 0; x < columns; x++) {
                    int at = y * columns + x;
                    re += phases[0][at] * across[0][i][x] - phases[1][at] * across[1][i][x];
                    im += phases[0][at] * across[1][i][x] + phases[1][at] * across[0][i][x];
                }
                for (int j = 0; j < side; j++) {
                    heights[j][i] += re * down[0][j][y] - im * down[1][j][y];
                }
            }
        }
        return heights;
    }

    private static boolean isHigh(int index, int count) {
        return Math.abs(signed(index, count)) > HIGHEST_CYCLES_PER_PX * count;
    }

    /** Cosine and sine by offset and frequency. */
    private static double[][][] turns(int count, int coarse, double[] offsets) {
        double[][][] turns = new double[2][offsets.length][count];
        for (int i = 0; i < offsets.length; i++) {
            for (int k = 0; k < count; k++) {
                double angle = 2 * Math.PI * signed(k, count) * (coarse + offsets[i]) / count;
                turns[0][i][k] = Math.cos(angle);
                turns[1][i][k] = Math.sin(angle);
            }
        }
        return turns;
    }

    /** Where a parabola through three heights, one step apart, has its vertex; within half a step. */
    private static double vertex(double before, double at, double after) {
        double bend = before - 2 * at + after;
        return bend < 0 ? Math.max(-0.5, Math.min(0.5, 0.5 * (before - after) / bend)) : 0;
    }
}
