package org.vanewright.photograph;

import java.awt.image.BufferedImage;
import java.io.IOException;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Grey levels of uploaded pictures, checked as photographs are before anything is decoded. Nothing of a file but its
 * levels comes out, and nothing is kept.
 */
public final class GreyPictures {
    /** Largest file. */
    public static final int MOST_BYTES = PictureFile.MOST_BYTES;

    private GreyPictures() {}

    /**
     * A picture, upright and made smaller.
     *
     * @param widthPx of it as it came, upright
     * @param heightPx likewise
     * @param columns of the levels
     * @param rows of the levels
     * @param levels 0 to 255, row by row from the top
     */
    @SuppressWarnings("ArrayRecordComponent") // on their way into a computation, never compared
    public record Grey(int widthPx, int heightPx, int columns, int rows, float[] levels) {
        /** By how much it was made smaller, at most 1. */
        public double scale() {
            return (double) columns / widthPx;
        }
    }

    /**
     * Decodes a JPEG or PNG.
     *
     * @param mostPx most columns or rows of the levels
     * @throws InvalidInputException naming {@code photographs} for what is not a picture within the bounds
     */
    public static Grey read(byte[] content, int mostPx) {
        PictureFile file = PictureFile.of(content);
        PictureMaker.AT_ONCE.acquireUninterruptibly();
        try {
            ExifOrientation held = ExifOrientation.of(content);
            BufferedImage small = Scaling.within(held.apply(file.decode(2 * mostPx)), mostPx);
            boolean lying = held.lying();
            return new Grey(
                    lying ? file.heightPx() : file.widthPx(),
                    lying ? file.widthPx() : file.heightPx(),
                    small.getWidth(),
                    small.getHeight(),
                    levels(small));
        } catch (IOException | RuntimeException e) {
            throw PictureFile.undecodable(e);
        } finally {
            PictureMaker.AT_ONCE.release();
        }
    }

    /** Luma of Recommendation ITU-R BT.601 (from memory). */
    private static float[] levels(BufferedImage picture) {
        int width = picture.getWidth();
        int height = picture.getHeight();
        float[] levels = new float[width * height];
        int[] row = new int[width];
        for (int y = 0; y < height; y++) {
            picture.getRGB(0, y, width, 1, row, 0, width);
            for (int x = 0; x < width; x++) {
                int rgb = row[x];
                levels[y * width + x] =
                        0.299f * (rgb >> 16 & 0xFF) + 0.587f * (rgb >> 8 & 0xFF) + 0.114f * (rgb & 0xFF);
            }
        }
        return levels;
    }
}
