package org.vanewright.testing;

import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;

/** A PDF page rendered by poppler, measured in mm from the lower left corner of the page. */
public final class Raster {
    public static final int DPI = 300;

    private final BufferedImage image;

    private Raster(BufferedImage image) {
        this.image = image;
    }

    /** Renders one page, counted from 1. */
    public static Raster ofPdfPage(Path pdf, int page, Path workDirectory) {
        String prefix = workDirectory.resolve("page-" + page).toString();
        Tools.run(
                "pdftoppm",
                "-r",
                Integer.toString(DPI),
                "-gray",
                "-png",
                "-singlefile",
                "-f",
                Integer.toString(page),
                "-l",
                Integer.toString(page),
                pdf.toString(),
                prefix);
        try {
            return new Raster(ImageIO.read(new File(prefix + ".png")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public double widthMm() {
        return image.getWidth() * 25.4 / DPI;
    }

    public double heightMm() {
        return image.getHeight() * 25.4 / DPI;
    }

    /** Centres in mm of the dark runs along the horizontal line at {@code yMm} between two abscissae. */
    public List<Double> darkAcross(double yMm, double fromXMm, double toXMm) {
        int row = image.getHeight() - 1 - (int) Math.floor(yMm / 25.4 * DPI);
        double[] ink = new double[image.getWidth()];
        for (int x = 0; x < ink.length; x++) {
            ink[x] = ink(x, row);
        }
        return centres(ink, fromXMm, toXMm);
    }

    /** Centres in mm of the dark runs along the vertical line at {@code xMm} between two ordinates. */
    public List<Double> darkAlong(double xMm, double fromYMm, double toYMm) {
        int column = (int) Math.floor(xMm / 25.4 * DPI);
        int height = image.getHeight();
        double[] ink = new double[height];
        for (int y = 0; y < height; y++) {
            // turned over, so that index and mm both grow upward
            ink[y] = ink(column, height - 1 - y);
        }
        return centres(ink, fromYMm, toYMm);
    }

    private double ink(int x, int y) {
        return 1 - image.getRaster().getSample(x, y, 0) / 255.0;
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
