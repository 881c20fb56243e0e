package org.vanewright.testing;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import javax.imageio.ImageIO;
import org.vanewright.engineering.tuft.GreyFrame;

/** Pictures as cameras and drawing programs write them. */
public final class Pictures {
    /** 52° 12' 34" north, as cameras write it: three fractions. */
    private static final int[] LATITUDE = {52, 1, 12, 1, 34, 1};

    private Pictures() {}

    /** Red on the upper left quarter, green on the upper right, blue on the lower left, white on the lower right. */
    public static BufferedImage quarters(int width, int height) {
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = picture.createGraphics();
        Color[] colors = {Color.RED, Color.GREEN, Color.BLUE, Color.WHITE};
        for (int i = 0; i < 4; i++) {
            graphics.setColor(colors[i]);
            graphics.fillRect(i % 2 * width / 2, i / 2 * height / 2, (width + 1) / 2, (height + 1) / 2);
        }
        graphics.dispose();
        return picture;
    }

    /** A frame in grey. */
    public static BufferedImage grey(GreyFrame frame) {
        BufferedImage image = new BufferedImage(frame.widthPx(), frame.heightPx(), BufferedImage.TYPE_INT_RGB);
        for (int y = 0; y < frame.heightPx(); y++) {
            for (int x = 0; x < frame.widthPx(); x++) {
                image.setRGB(x, y, 0x010101 * Math.round(frame.level(x, y)));
            }
        }
        return image;
    }

    /** @param format {@code jpeg} or {@code png} */
    public static byte[] encoded(BufferedImage picture, String format) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            if (!ImageIO.write(picture, format, out)) {
                throw new IllegalArgumentException("no writer for " + format);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    public static BufferedImage decoded(byte[] picture) {
        try {
            return Objects.requireNonNull(ImageIO.read(new ByteArrayInputStream(picture)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A JPEG with what a camera adds: how it was held, its maker, and where it was. */
    public static byte[] withExif(byte[] jpeg, int orientation) {
        byte[] exif = exif(orientation);
        return ByteBuffer.allocate(jpeg.length + exif.length + 4)
                .put(jpeg, 0, 2)
                .putShort((short) 0xFFE1)
                .putShort((short) (exif.length + 2))
                .put(exif)
                .put(jpeg, 2, jpeg.length - 2)
                .array();
    }

    /** A header, one directory with three entries, and a directory of positions behind it (Exif 2.32, from memory). */
    private static byte[] exif(int orientation) {
        byte[] maker = "Invented camera\0".getBytes(StandardCharsets.US_ASCII);
        int first = 8;
        int makerAt = first + 2 + 3 * 12 + 4;
        int positions = makerAt + maker.length;
        int latitudeAt = positions + 2 + 2 * 12 + 4;
        ByteBuffer out = ByteBuffer.allocate(6 + latitudeAt + 4 * LATITUDE.length);
        out.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
        out.putShort((short) 0x4D4D).putShort((short) 42).putInt(first).putShort((short) 3);
        entry(out, 0x010F, 2, maker.length, makerAt);
        entry(out, 0x0112, 3, 1, orientation << 16);
        entry(out, 0x8825, 4, 1, positions);
        out.putInt(0).put(maker).putShort((short) 2);
        entry(out, 0x0001, 2, 2, 'N' << 24);
        entry(out, 0x0002, 5, 3, latitudeAt);
        out.putInt(0);
        for (int part : LATITUDE) {
            out.putInt(part);
        }
        return out.array();
    }

    private static void entry(ByteBuffer out, int tag, int type, int count, int content) {
        out.putShort((short) tag).putShort((short) type).putInt(count).putInt(content);
    }
}
