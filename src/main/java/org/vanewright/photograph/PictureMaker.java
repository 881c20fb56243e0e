package org.vanewright.photograph;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.concurrent.Semaphore;

/** Makes from an uploaded file the pictures that are served: upright, at most so large, and nothing but pixels. */
final class PictureMaker {
    static final int LARGE_PX = 2400;
    static final int SMALL_PX = 480;

    /** H2 holds 1 048 576 bytes in a column of bytes. */
    static final int MOST_BYTES = 1_000_000;

    /** One picture being decoded may take 50 MB of memory. */
    static final Semaphore AT_ONCE = new Semaphore(2);

    private PictureMaker() {}

    /** One that was made elsewhere and stays as it is. */
    static Picture adopted(byte[] large) {
        PictureFile file = PictureFile.of(large);
        AT_ONCE.acquireUninterruptibly();
        try {
            BufferedImage pixels = file.decode(2 * LARGE_PX);
            if (Math.max(pixels.getWidth(), pixels.getHeight()) > LARGE_PX) {
                throw new IllegalArgumentException("larger than " + LARGE_PX + " pixels a side");
            }
            return new Picture(large, JpegWriting.write(Scaling.within(pixels, SMALL_PX), MOST_BYTES));
        } catch (IOException | RuntimeException e) {
            throw PictureFile.undecodable(e);
        } finally {
            AT_ONCE.release();
        }
    }

    /** @throws org.vanewright.engineering.input.InvalidInputException for what is not a photograph within the bounds */
    static Picture make(byte[] content) {
        PictureFile file = PictureFile.of(content);
        AT_ONCE.acquireUninterruptibly();
        try {
            BufferedImage upright = ExifOrientation.of(content).apply(file.decode(2 * LARGE_PX));
            BufferedImage large = Scaling.within(upright, LARGE_PX);
            byte[] bytes = JpegWriting.write(large, MOST_BYTES);
            byte[] small = JpegWriting.write(Scaling.within(large, SMALL_PX), MOST_BYTES);
            return new Picture(bytes, small);
        } catch (IOException | RuntimeException e) {
            throw PictureFile.undecodable(e);
        } finally {
            AT_ONCE.release();
        }
    }
}
