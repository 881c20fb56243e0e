package org.vanewright.photograph;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/** An uploaded file that begins as a JPEG or PNG, and whose header says a size that may be decoded. */
@SuppressWarnings("ArrayRecordComponent") // never compared
record PictureFile(byte[] content, String format, int widthPx, int heightPx) {
    static final int MOST_BYTES = 8 * 1024 * 1024;
    static final int MOST_PX_A_SIDE = 12_000;
    static final long MOST_PX = 40_000_000;

    /** Each scan of a progressive JPEG costs a pass over the whole picture; cameras write ten or so. */
    private static final int MOST_SCANS = 64;

    private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF};
    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

    /** Looks at the beginning and the header only. */
    static PictureFile of(byte[] content) {
        if (content.length > MOST_BYTES) {
            throw refused(content.length + " bytes", "a file of at most 8 MiB");
        }
        String format = starts(content, JPEG) ? "jpeg" : starts(content, PNG) ? "png" : "";
        if (format.isEmpty()) {
            throw refused("another kind of file", "a JPEG or PNG");
        }
        if (format.equals("jpeg") && scans(content) > MOST_SCANS) {
            throw refused("a JPEG in more than " + MOST_SCANS + " scans", "a JPEG as cameras write it");
        }
        ImageReader reader = reader(content, format);
        try {
            return sized(content, format, reader.getWidth(0), reader.getHeight(0));
        } catch (IOException | IndexOutOfBoundsException | IllegalStateException e) {
            throw undecodable(e);
        } finally {
            reader.dispose();
        }
    }

    private static PictureFile sized(byte[] content, String format, int width, int height) {
        boolean fits = width >= 1
                && height >= 1
                && width <= MOST_PX_A_SIDE
                && height <= MOST_PX_A_SIDE
                && (long) width * height <= MOST_PX;
        if (!fits) {
            throw refused(width + " × " + height + " pixels", "at most 40 megapixels and 12000 pixels a side");
        }
        return new PictureFile(content, format, width, height);
    }

    /** The pixels, on white where they are transparent; every other one is left out while a side is over the limit. */
    BufferedImage decode(int mostPxASide) throws IOException {
        ImageReader reader = reader(content, format);
        try {
            ImageReadParam param = reader.getDefaultReadParam();
            int step = Math.max(1, Math.max(widthPx, heightPx) / mostPxASide);
            param.setSourceSubsampling(step, step, 0, 0);
            BufferedImage read = reader.read(0, param);
            BufferedImage plain = new BufferedImage(read.getWidth(), read.getHeight(), BufferedImage.TYPE_INT_RGB);
            Graphics2D graphics = plain.createGraphics();
            graphics.drawImage(read, 0, 0, Color.WHITE, null);
            graphics.dispose();
            return plain;
        } finally {
            reader.dispose();
        }
    }

    /** Metadata is not read: it may be packed to many times its size. */
    private static ImageReader reader(byte[] content, String format) {
        ImageReader reader = ImageIO.getImageReadersByFormatName(format).next();
        reader.setInput(new MemoryCacheImageInputStream(new ByteArrayInputStream(content)), true, true);
        return reader;
    }

    private static int scans(byte[] content) {
        int scans = 0;
        for (int i = 0; i + 1 < content.length; i++) {
            if (content[i] == (byte) 0xFF && content[i + 1] == (byte) 0xDA) {
                scans++;
            }
        }
        return scans;
    }

    private static boolean starts(byte[] content, byte[] mark) {
        return content.length > mark.length && Arrays.equals(content, 0, mark.length, mark, 0, mark.length);
    }

    static InvalidInputException undecodable(Exception cause) {
        InvalidInputException refused = refused("a picture that cannot be decoded", "a JPEG in RGB or grey, or a PNG");
        refused.addSuppressed(cause);
        return refused;
    }

    private static InvalidInputException refused(String value, String allowed) {
        return new InvalidInputException(new FieldProblem("photographs", value, allowed));
    }
}
