package org.vanewright.engineering.tuft;

/**
 * A still frame in grey levels, usually 0 to 255. A pixel's centre lies at whole numbers; x counts rightward, y downward
 * from the first pixel.
 */
public final class GreyFrame {
    private final int widthPx;
    private final int heightPx;
    private final float[] levels;

    /** @param levels row by row from the top; not copied, and not to be changed afterwards */
    public GreyFrame(int widthPx, int heightPx, float[] levels) {
        if (widthPx < 1 || heightPx < 1 || levels.length != widthPx * heightPx) {
            throw new IllegalArgumentException(levels.length + " levels of " + widthPx + " by " + heightPx);
        }
        this.widthPx = widthPx;
        this.heightPx = heightPx;
        this.levels = levels;
    }

    public int widthPx() {
        return widthPx;
    }

    public int heightPx() {
        return heightPx;
    }

    /** The level of one pixel. */
    public float level(int x, int y) {
        return levels[y * widthPx + x];
    }

    float at(int x, int y) {
        return levels[y * widthPx + x];
    }

    /** Blurred as by a normal distribution of about 2 pixels, by two means of five each way. */
    GreyFrame blurred() {
        float[] once = levels.clone();
        float[] line = new float[Math.max(widthPx, heightPx)];
        for (int round = 0; round < 2; round++) {
            for (int y = 0; y < heightPx; y++) {
                blur(once, y * widthPx, 1, widthPx, line);
            }
            for (int x = 0; x < widthPx; x++) {
                blur(once, x, widthPx, heightPx, line);
            }
        }
        return new GreyFrame(widthPx, heightPx, once);
    }

    private static void blur(float[] all, int from, int step, int count, float[] line) {
        for (int i = 0; i < count; i++) {
            float sum = 0;
            for (int k = i - 2; k <= i + 2; k++) {
                sum += all[from + Math.max(0, Math.min(count - 1, k)) * step];
            }
            line[i] = sum / 5;
        }
        for (int i = 0; i < count; i++) {
            all[from + i * step] = line[i];
        }
    }
}
