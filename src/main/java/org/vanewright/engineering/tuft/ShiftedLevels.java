package org.vanewright.engineering.tuft;

/**
 * The levels of a frame that lies so far to the right and down, between its pixels by cubic convolution, which keeps edges
 * that straight lines between pixels would soften: R. G. Keys, Cubic Convolution Interpolation for Digital Image Processing,
 * IEEE Transactions on Acoustics, Speech, and Signal Processing 29, 1981, with a = −½ (from memory). Every pixel lies alike
 * between its neighbours, so their weights are known from the start.
 */
final class ShiftedLevels {
    private final GreyFrame frame;
    private final int right;
    private final int down;
    private final boolean whole;
    private final double[] across = new double[4];
    private final double[] below = new double[4];

    ShiftedLevels(GreyFrame frame, double rightPx, double downPx) {
        this.frame = frame;
        this.right = (int) Math.floor(rightPx);
        this.down = (int) Math.floor(downPx);
        double fx = rightPx - right;
        double fy = downPx - down;
        this.whole = fx == 0 && fy == 0;
        for (int i = 0; i < 4; i++) {
            across[i] = weight(fx - (i - 1));
            below[i] = weight(fy - (i - 1));
        }
    }

    /**
     * What the frame shows of what stood at a pixel before.
     *
     * @return NaN where a pixel that it takes lies outside the frame
     */
    double at(int x, int y) {
        int left = x + right;
        int top = y + down;
        if (left < 1 || top < 1 || left + 2 >= frame.widthPx() || top + 2 >= frame.heightPx()) {
            return whole && left >= 0 && top >= 0 && left < frame.widthPx() && top < frame.heightPx()
                    ? frame.at(left, top)
                    : Double.NaN;
        }
        double sum = 0;
        for (int row = 0; row < 4; row++) {
            double line = 0;
            for (int column = 0; column < 4; column++) {
                line += across[column] * frame.at(left + column - 1, top + row - 1);
            }
            sum += below[row] * line;
        }
        return sum;
    }

    private static double weight(double distance) {
        double d = Math.abs(distance);
        if (d <= 1) {
            return (1.5 * d - 2.5) * d * d + 1;
        }
        return d < 2 ? ((-0.5 * d + 2.5) * d - 4) * d + 2 : 0;
    }
}
