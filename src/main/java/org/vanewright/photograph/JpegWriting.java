package org.vanewright.photograph;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Writes pictures as JPEG with nothing but their pixels. */
final class JpegWriting {
    private static final float[] QUALITIES = {0.85f, 0.75f, 0.6f, 0.4f, 0.2f};

    private JpegWriting() {}

    /** In the best quality that keeps within the bytes; smaller where none does. */
    static byte[] write(BufferedImage picture, int mostBytes) throws IOException {
        for (float quality : QUALITIES) {
            byte[] bytes = write(picture, quality);
            if (bytes.length <= mostBytes) {
                return bytes;
            }
        }
        int smaller = Math.max(picture.getWidth(), picture.getHeight()) * 3 / 4;
        return write(Scaling.within(picture, smaller), mostBytes);
    }

    private static byte[] write(BufferedImage picture, float quality) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(quality);
            writer.write(null, new IIOImage(picture, null, null), param);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
