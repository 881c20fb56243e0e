package org.vanewright.engineering.tuft;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.stat.StatUtils;
import org.jspecify.annotations.Nullable;

/** What the pixels of each cell did, all frames together. */
final class CellStatistics {
    private static final int LEAST_SEEN = 3;
    private static final int LEAST_PIXELS = 30;
    /** A tuft makes a cell stand out by so much at least, in grey levels squared, or by that part of the noise. */
    private static final double LEAST_CONTRAST = 1;

    private static final double LEAST_OVER_NOISE = 0.05;
    private static final double NEAR_ROOT = 0.2;
    private static final double CLEAR_OF_NOISE = 4;

    private final TuftCells cells;
    private final PixelSums sums;
    private final int widthPx;

    CellStatistics(TuftCells cells, PixelSums sums, int widthPx) {
        this.cells = cells;
        this.sums = sums;
        this.widthPx = widthPx;
    }

    /** One for each mark. */
    List<TuftMotion> motions() {
        List<Cell> all = new ArrayList<>();
        int first = 0;
        for (int tuft = 0; tuft < cells.pixels().length; tuft++) {
            all.add(cell(cells.marks().get(tuft), cells.pixels()[tuft], first));
            first += cells.pixels()[tuft].length;
        }
        double[] quiet = all.stream()
                .filter(Cell::isSeen)
                .mapToDouble(c -> median(c.variances))
                .toArray();
        double noise = quiet.length == 0 ? 0 : median(quiet);
        return all.stream().map(c -> c.motion(noise)).toList();
    }

    private static double median(double[] values) {
        return StatUtils.percentile(values, 50);
    }

    private Cell cell(@Nullable TuftMark mark, int[] pixels, int first) {
        int[] seen = java.util.stream.IntStream.range(0, pixels.length)
                .filter(i -> sums.count(first + i) >= LEAST_SEEN)
                .toArray();
        return new Cell(
                mark,
                Arrays.stream(seen).mapToDouble(i -> pixels[i] % widthPx).toArray(),
                Arrays.stream(seen).mapToDouble(i -> pixels[i] / widthPx).toArray(),
                Arrays.stream(seen).mapToDouble(i -> sums.mean(first + i)).toArray(),
                Arrays.stream(seen).mapToDouble(i -> sums.variance(first + i)).toArray(),
                Arrays.stream(seen).map(i -> sums.count(first + i)).toArray());
    }

    /** The pixels of one cell that were seen often enough. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Cell(
            @Nullable TuftMark mark, double[] x, double[] y, double[] means, double[] variances, int[] counts) {
        boolean isSeen() {
            return mark != null && x.length >= LEAST_PIXELS;
        }

        TuftMotion motion(double noise) {
            if (mark == null || !isSeen()) {
                return TuftMotion.NOT_MARKED;
            }
            double[] standing = new SkinPlane(x, y, means).residuals();
            double still = 0;
            double changing = 0;
            for (int i = 0; i < x.length; i++) {
                still += standing[i] * standing[i] - noise / counts[i];
                changing += variances[i] - noise;
            }
            double variance = StatUtils.mean(variances);
            if ((still + changing) / x.length < Math.max(LEAST_CONTRAST, LEAST_OVER_NOISE * noise)) {
                return TuftMotion.unseen(variance, noise);
            }
            double moving = Math.max(0, Math.min(1, changing / (Math.max(0, still) + Math.max(0, changing))));
            return TuftMotion.of(variance, noise, moving, along(mark, standing, noise));
        }

        /** Mean direction of all by which the tuft stands out, still or moving, against the direction it was marked in. */
        private double along(TuftMark mark, double[] standing, double noise) {
            double downstream = 0;
            double all = 0;
            for (int i = 0; i < x.length; i++) {
                double distance = Math.hypot(x[i] - mark.rootX(), y[i] - mark.rootY());
                double bound = CLEAR_OF_NOISE * noise * Math.sqrt(2.0 / (counts[i] - 1));
                double stands = standing[i] * standing[i] + variances[i] - noise - bound;
                if (stands > 0 && distance >= NEAR_ROOT * mark.lengthPx()) {
                    downstream += stands * mark.downstreamPx(x[i], y[i]);
                    all += stands * distance;
                }
            }
            return all == 0 ? 0 : downstream / all;
        }
    }
}
