package org.vanewright.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A PDF page rendered by poppler, measured in mm from the lower left corner of the page. */
public final class Raster {
    public static final int DPI = 300;
    private static final double MM_PER_PIXEL = 25.4 / DPI;

    private final int width;
    private final int height;
    /** One byte a pixel from the upper left, 0 is black. */
    private final byte[] pixels;

    private Raster(int width, int height, byte[] pixels) {
        this.width = width;
        this.height = height;
        this.pixels = pixels;
    }

    /** Renders one page, counted from 1. */
    public static Raster ofPdfPage(Path pdf, int page, Path workDirectory) {
        String prefix = workDirectory.resolve("page-" + page).toString();
        Tools.run(
                "pdftoppm",
                "-r",
                Integer.toString(DPI),
                "-gray",
                "-singlefile",
                "-f",
                Integer.toString(page),
                "-l",
                Integer.toString(page),
                pdf.toString(),
                prefix);
        try {
            return ofPortableGraymap(Files.readAllBytes(Path.of(prefix + ".pgm")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Binary PGM: {@code P5}, width, height and the greatest value, then the pixels. */
    private static Raster ofPortableGraymap(byte[] file) {
        String[] head = new String(file, 0, Math.min(64, file.length), StandardCharsets.ISO_8859_1).split("\\s", 5);
        if (!head[0].equals("P5") || !head[3].equals("255")) {
            throw new AssertionError("not an 8-bit graymap: " + head[0]);
        }
        int width = Integer.parseInt(head[1]);
        int height = Integer.parseInt(head[2]);
        return new Raster(width, height, Arrays.copyOfRange(file, file.length - width * height, file.length));
    }

    public double widthMm() {
        return width * 25.4 / DPI;
    }

    public double heightMm() {
        return height * 25.4 / DPI;
    }

    /** Centres in mm of the dark runs along the horizontal line at {@code yMm} between two abscissae. */
    public List<Double> darkAcross(double yMm, double fromXMm, double toXMm) {
        int row = height - 1 - (int) Math.floor(yMm / 25.4 * DPI);
        double[] ink = new double[width];
        for (int x = 0; x < ink.length; x++) {
            ink[x] = ink(x, row);
        }
        return centres(ink, fromXMm, toXMm);
    }

    /** Centres in mm of the dark runs along the vertical line at {@code xMm} between two ordinates. */
    public List<Double> darkAlong(double xMm, double fromYMm, double toYMm) {
        int column = (int) Math.floor(xMm / 25.4 * DPI);
        double[] ink = new double[height];
        for (int y = 0; y < height; y++) {
            // turned over, so that index and mm both grow upward
            ink[y] = ink(column, height - 1 - y);
        }
        return centres(ink, fromYMm, toYMm);
    }

    /** Straight dark lines at least {@code leastMm} long that run level, from below upward. */
    public List<Line> levelLines(double leastMm) {
        return lines(leastMm, height, width, (row, x) -> ink(x, height - 1 - row));
    }

    /** Straight dark lines at least {@code leastMm} long that run upright, from the left. */
    public List<Line> uprightLines(double leastMm) {
        return lines(leastMm, width, height, (x, row) -> ink(x, height - 1 - row));
    }

    /**
     * A straight line parallel to an edge of the page.
     *
     * @param atMm its distance from the lower or left edge
     * @param fromMm where it begins along the edge
     * @param toMm where it ends
     */
    public record Line(double atMm, double fromMm, double toMm) {
        public double lengthMm() {
            return toMm - fromMm;
        }
    }

    private static List<Line> lines(double leastMm, int ranks, int length, Ink ink) {
        List<Line> found = new ArrayList<>();
        for (int rank = 0; rank < ranks; rank++) {
            int start = -1;
            for (int i = 0; i <= length; i++) {
                boolean dark = i < length && ink.at(rank, i) > 0.3;
                if (dark && start < 0) {
                    start = i;
                } else if (!dark && start >= 0) {
                    if ((i - start) * MM_PER_PIXEL >= leastMm) {
                        add(found, new Line((rank + 0.5) * MM_PER_PIXEL, start * MM_PER_PIXEL, i * MM_PER_PIXEL));
                    }
                    start = -1;
                }
            }
        }
        return found;
    }

    /** A line is a few pixels thick; later ranks of it are merged into the first. */
    private static void add(List<Line> found, Line next) {
        for (Line line : found) {
            if (next.atMm() - line.atMm() < 0.6 && Math.abs(next.fromMm() - line.fromMm()) < 1) {
                return;
            }
        }
        found.add(next);
    }

    private interface Ink {
        double at(int rank, int along);
    }

    private double ink(int x, int y) {
        return 1 - (pixels[y * width + x] & 255) / 255.0;
    }

    private List<Double> centres(double[] ink, double fromMm, double toMm) {
        List<Double> found = new ArrayList<>();
        int from = Math.max(0, (int) (fromMm / 25.4 * DPI));
        int to = Math.min(ink.length - 1, (int) (toMm / 25.4 * DPI));
        double weight = 0;
        double moment = 0;
        for (int i = from; i <= to + 1; i++) {
            double value = i <= to ? ink[i] : 0;
            if (value > 0.2) {
                weight += value;
                moment += value * (i + 0.5);
            } else if (weight > 0) {
                found.add(moment / weight * 25.4 / DPI);
                weight = 0;
                moment = 0;
            }
        }
        return found;
    }
}
