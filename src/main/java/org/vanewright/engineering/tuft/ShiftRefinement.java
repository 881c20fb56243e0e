package org.vanewright.engineering.tuft;

import org.hipparchus.stat.StatUtils;

/**
 * Brings a shift nearer to the truth by what stands still: least squares of the levels over the gradient of the first frame,
 *
 * <pre>
 * Σ w ∇G (∇G)ᵀ δ = −Σ w ∇G (a F(x + d) − G(x))
 * </pre>
 *
 * in steps, with the light a, where a tuft that has moved differs by far more than noise and so gets no weight: B. D. Lucas,
 * T. Kanade, An Iterative Image Registration Technique with an Application to Stereo Vision, IJCAI 1981, with the biweight of
 * A. E. Beaton, J. W. Tukey, Technometrics 16, 1974 (both from memory). Frames are blurred first, or
 * the noise of the gradients would outweigh what they show of the skin.
 */
final class ShiftRefinement {
    private static final int MOST_PIXELS = 120_000;
    private static final int STEPS = 25;
    private static final double DONE_PX = 0.002;
    private static final double FARTHEST_PX = 4;
    private static final double LEAST_SCALE = 0.3;
    /** Of the biweight, and of a median deviation as a standard deviation. */
    private static final double BOUND = 4.685 * 1.4826;

    private final int[] x;
    private final int[] y;
    private final double[] level;
    private final double[] across;
    private final double[] down;
    private final double[] rest;

    ShiftRefinement(GreyFrame sharp, PhaseCorrelation.Region region) {
        GreyFrame first = sharp.blurred();
        int left = Math.max(1, region.x());
        int top = Math.max(1, region.y());
        int right = Math.min(first.widthPx() - 1, region.x() + region.widthPx());
        int bottom = Math.min(first.heightPx() - 1, region.y() + region.heightPx());
        int step = 1;
        while ((long) (right - left) * (bottom - top) / ((long) step * step) > MOST_PIXELS) {
            step++;
        }
        int columns = Math.max(0, (right - left + step - 1) / step);
        int rows = Math.max(0, (bottom - top + step - 1) / step);
        x = new int[columns * rows];
        y = new int[columns * rows];
        level = new double[columns * rows];
        across = new double[columns * rows];
        down = new double[columns * rows];
        rest = new double[columns * rows];
        for (int i = 0; i < x.length; i++) {
            x[i] = left + i % columns * step;
            y[i] = top + i / columns * step;
            level[i] = first.at(x[i], y[i]);
            across[i] = (first.at(x[i] + 1, y[i]) - first.at(x[i] - 1, y[i])) / 2;
            down[i] = (first.at(x[i], y[i] + 1) - first.at(x[i], y[i] - 1)) / 2;
        }
    }

    /** The shift from which it starts where that leads nowhere. */
    FrameShift of(GreyFrame sharp, FrameShift start) {
        GreyFrame frame = sharp.blurred();
        double right = start.rightPx();
        double below = start.downPx();
        for (int step = 0; step < STEPS; step++) {
            double[] move = move(frame, right, below);
            right += move[0];
            below += move[1];
            if (!(Math.hypot(right - start.rightPx(), below - start.downPx()) <= FARTHEST_PX)) {
                return start;
            }
            if (Math.hypot(move[0], move[1]) < DONE_PX) {
                break;
            }
        }
        return new FrameShift(right, below, start.sharpness());
    }

    private double[] move(GreyFrame frame, double right, double below) {
        compare(frame, right, below);
        double scale = BOUND * Math.max(LEAST_SCALE, typicalRest());
        double xx = 0;
        double xy = 0;
        double yy = 0;
        double bx = 0;
        double by = 0;
        for (int i = 0; i < x.length; i++) {
            double far = rest[i] / scale;
            if (Math.abs(far) < 1) { // false for NaN, too
                double weight = (1 - far * far) * (1 - far * far);
                xx += weight * across[i] * across[i];
                xy += weight * across[i] * down[i];
                yy += weight * down[i] * down[i];
                bx -= weight * across[i] * rest[i];
                by -= weight * down[i] * rest[i];
            }
        }
        double determinant = xx * yy - xy * xy;
        return determinant > 1e-9 * (xx + yy) * (xx + yy)
                ? new double[] {(yy * bx - xy * by) / determinant, (xx * by - xy * bx) / determinant}
                : new double[] {0, 0};
    }

    /** What the frame has there, as light as the first, less what the first has. */
    private void compare(GreyFrame frame, double right, double below) {
        ShiftedLevels levels = new ShiftedLevels(frame, right, below);
        double seen = 0;
        double before = 0;
        for (int i = 0; i < x.length; i++) {
            rest[i] = levels.at(x[i], y[i]);
            if (!Double.isNaN(rest[i])) {
                seen += rest[i];
                before += level[i];
            }
        }
        double light = seen > 0 ? before / seen : 1;
        for (int i = 0; i < x.length; i++) {
            rest[i] = light * rest[i] - level[i];
        }
    }

    /** Median of their sizes, by every 11th. */
    private double typicalRest() {
        double[] sizes = new double[x.length / 11 + 1];
        int count = 0;
        for (int i = 0; i < x.length; i += 11) {
            if (!Double.isNaN(rest[i])) {
                sizes[count++] = Math.abs(rest[i]);
            }
        }
        return count == 0 ? 0 : StatUtils.percentile(java.util.Arrays.copyOf(sizes, count), 50);
    }
}
