package org.vanewright.engineering.tuft;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Computed pictures of tufts on a skin with stains, rivets and a seam, seen by a camera that shakes, with noise. Every
 * place is computed where it lies, never interpolated, so that shifts between pixels are exact.
 */
public final class SyntheticTufts {
    private static final double SKIN = 175;
    private static final double TUFT = 60;
    private static final double THICK_PX = 2.4;

    private final int widthPx;
    private final int heightPx;
    private final Random chance;
    private final double seamY;
    private final List<double[]> stains = new ArrayList<>();
    private final List<TuftMark> marks = new ArrayList<>();
    private final List<TuftState> states = new ArrayList<>();

    public SyntheticTufts(int widthPx, int heightPx, long seed) {
        this.widthPx = widthPx;
        this.heightPx = heightPx;
        this.chance = new Random(seed);
        this.seamY = heightPx * (0.1 + 0.8 * chance.nextDouble());
        int count = widthPx * heightPx / 1500;
        for (int i = 0; i < count; i++) {
            boolean rivet = i % 3 == 0;
            stains.add(new double[] {
                chance.nextDouble() * widthPx,
                chance.nextDouble() * heightPx,
                rivet ? 1.2 : 4 + 12 * chance.nextDouble(),
                rivet ? -25 : 24 * chance.nextDouble() - 12
            });
        }
    }

    /** Tufts in rows and columns, each doing what is drawn by chance. */
    public SyntheticTufts grid(int rows, int columns) {
        double length = 0.5 * Math.min((double) widthPx / columns, (double) heightPx / rows);
        for (int i = 0; i < rows * columns; i++) {
            double x = (i % columns + 0.5) * widthPx / columns + 4 * chance.nextDouble();
            double y = (i / columns + 0.35) * heightPx / rows + 4 * chance.nextDouble();
            double lean = 0.3 * (chance.nextDouble() - 0.5);
            tuft(
                    new TuftMark(x, y, x + length * Math.sin(lean), y + length * Math.cos(lean)),
                    TuftState.values()[chance.nextInt(3)]);
        }
        return this;
    }

    /** Upright in rows and columns. */
    static List<TuftMark> marks(int widthPx, int heightPx, int rows, int columns) {
        double length = 0.5 * Math.min((double) widthPx / columns, (double) heightPx / rows);
        List<TuftMark> marks = new ArrayList<>();
        for (int i = 0; i < rows * columns; i++) {
            double x = (i % columns + 0.5) * widthPx / columns;
            double y = (i / columns + 0.35) * heightPx / rows;
            marks.add(new TuftMark(x, y, x, y + length));
        }
        return marks;
    }

    /** {@code NOT_SEEN} has come off. */
    SyntheticTufts tuft(TuftMark mark, TuftState state) {
        marks.add(mark);
        states.add(state);
        return this;
    }

    public List<TuftMark> marks() {
        return List.copyOf(marks);
    }

    public List<TuftState> states() {
        return List.copyOf(states);
    }

    /** The next frame, so far to the right and down, so light, with that standard deviation of noise. */
    public GreyFrame frame(double rightPx, double downPx, double light, double noise) {
        float[] levels = new float[widthPx * heightPx];
        for (int y = 0; y < heightPx; y++) {
            for (int x = 0; x < widthPx; x++) {
                // a skin that is lit from one side, and a seam along it
                double seam = -15 * Math.max(0, 1.5 - Math.abs(y - downPx - seamY));
                levels[y * widthPx + x] = (float) (SKIN + 20 * (x - rightPx) / widthPx + seam);
            }
        }
        stains.forEach(s -> stain(levels, s[0] + rightPx, s[1] + downPx, s[2], s[3]));
        for (int i = 0; i < marks.size(); i++) {
            draw(levels, marks.get(i), states.get(i), rightPx, downPx);
        }
        for (int i = 0; i < levels.length; i++) {
            double level = light * levels[i] + noise * chance.nextGaussian();
            levels[i] = (float) Math.max(0, Math.min(255, level));
        }
        return new GreyFrame(widthPx, heightPx, levels);
    }

    private void stain(float[] levels, double x, double y, double radius, double depth) {
        for (int row = (int) (y - 4 * radius); row <= y + 4 * radius; row++) {
            for (int column = (int) (x - 4 * radius); column <= x + 4 * radius; column++) {
                if (row >= 0 && row < heightPx && column >= 0 && column < widthPx) {
                    double far = Math.hypot(column - x, row - y) / radius;
                    levels[row * widthPx + column] += (float) (depth * Math.exp(-far * far / 2));
                }
            }
        }
    }

    private void draw(float[] levels, TuftMark mark, TuftState state, double rightPx, double downPx) {
        if (state == TuftState.NOT_SEEN) {
            return;
        }
        double swing = state == TuftState.STEADY ? 2 : state == TuftState.UNSTEADY ? 35 : 20;
        double turn = Math.toRadians((state == TuftState.REVERSED ? 180 : 0) + swing * (2 * chance.nextDouble() - 1));
        double alongX = mark.tipX() - mark.rootX();
        double alongY = mark.tipY() - mark.rootY();
        double x = mark.rootX() + rightPx;
        double y = mark.rootY() + downPx;
        TuftMark now = new TuftMark(
                x,
                y,
                x + alongX * Math.cos(turn) - alongY * Math.sin(turn),
                y + alongX * Math.sin(turn) + alongY * Math.cos(turn));
        double reach = mark.lengthPx() + 3;
        for (int row = (int) (y - reach); row <= y + reach; row++) {
            for (int column = (int) (x - reach); column <= x + reach; column++) {
                if (row >= 0 && row < heightPx && column >= 0 && column < widthPx) {
                    int at = row * widthPx + column;
                    double covered = Math.max(0, Math.min(1, 0.5 + THICK_PX / 2 - now.distancePx(column, row)));
                    levels[at] += (float) (covered * (TUFT - levels[at]));
                }
            }
        }
    }
}
