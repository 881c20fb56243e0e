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
