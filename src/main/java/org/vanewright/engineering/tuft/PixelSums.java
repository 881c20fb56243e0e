package org.vanewright.engineering.tuft;

/** Mean and variance in time of the pixels of all cells. */
final class PixelSums {
    private final int[] pixels;
    private final int widthPx;
    private final float[] latest;
    private final double[] mean;
    private final double[] squares;
    private final byte[] counts;

    PixelSums(TuftCells cells, int widthPx) {
        int all = 0;
        for (int[] cell : cells.pixels()) {
            all += cell.length;
        }
        this.pixels = new int[all];
        int next = 0;
        for (int[] cell : cells.pixels()) {
            System.arraycopy(cell, 0, pixels, next, cell.length);
            next += cell.length;
        }
        this.widthPx = widthPx;
        this.latest = new float[all];
        this.mean = new double[all];
        this.squares = new double[all];
        this.counts = new byte[all];
    }

    /** Looks at a frame as it lies on the first one; mean level of what of it can be seen there. */
    double sample(GreyFrame frame, FrameShift shift) {
        ShiftedLevels levels = new ShiftedLevels(frame, shift.rightPx(), shift.downPx());
        double sum = 0;
        int seen = 0;
        for (int i = 0; i < pixels.length; i++) {
            double level = levels.at(pixels[i] % widthPx, pixels[i] / widthPx);
            latest[i] = (float) level;
            if (!Double.isNaN(level)) {
                sum += level;
                seen++;
            }
        }
        return seen == 0 ? 0 : sum / seen;
    }

    /** Takes in what was looked at last, times a factor. */
    void take(double gain) {
        for (int i = 0; i < pixels.length; i++) {
            double level = gain * latest[i];
            if (!Double.isNaN(level)) {
                counts[i]++;
                double off = level - mean[i];
                mean[i] += off / counts[i];
                squares[i] += off * (level - mean[i]);
            }
        }
    }

    /** In how many frames the pixel of that place was seen; places count through the cells in their order. */
    int count(int place) {
        return counts[place];
    }

    double mean(int place) {
        return mean[place];
    }

    /** With n − 1 in its denominator. */
    double variance(int place) {
        return squares[place] / (counts[place] - 1);
    }
}
