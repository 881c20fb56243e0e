package org.vanewright.photograph;

import java.awt.geom.AffineTransform;
import java.awt.image.AffineTransformOp;
import java.awt.image.BufferedImage;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/**
 * How a camera was held (Exif 2.32, tag 0x0112 of the first image directory; from memory): 1 is upright, 2 to 8 are the
 * other turns and mirrorings.
 */
record ExifOrientation(int code) {
    private static final ExifOrientation UPRIGHT = new ExifOrientation(1);
    private static final int TAG = 0x0112;
    private static final int SHORT = 3;
    private static final int START_OF_SCAN = 0xDA;
    private static final int APP1 = 0xE1;
    private static final String EXIF = "Exif\0\0";

    /** As the file says; upright where it says nothing that can be read. */
    static ExifOrientation of(byte[] file) {
        try {
            return find(ByteBuffer.wrap(file));
        } catch (BufferUnderflowException | IllegalArgumentException | IndexOutOfBoundsException e) {
            return UPRIGHT;
        }
    }

    private static ExifOrientation find(ByteBuffer jpeg) {
        if ((jpeg.getShort() & 0xFFFF) != 0xFFD8) {
            return UPRIGHT;
        }
        while (jpeg.remaining() >= 4 && (jpeg.get() & 0xFF) == 0xFF) {
            int marker = jpeg.get() & 0xFF;
            int length = (jpeg.getShort() & 0xFFFF) - 2;
            if (marker == START_OF_SCAN) {
                return UPRIGHT;
            }
            ByteBuffer segment = jpeg.slice(jpeg.position(), length);
            if (marker == APP1 && isExif(segment)) {
                return inDirectory(segment.slice(EXIF.length(), length - EXIF.length()));
            }
            jpeg.position(jpeg.position() + length);
        }
        return UPRIGHT;
    }

    private static boolean isExif(ByteBuffer segment) {
        byte[] head = new byte[EXIF.length()];
        if (segment.remaining() < head.length) {
            return false;
        }
        segment.get(0, head);
        return new String(head, StandardCharsets.ISO_8859_1).equals(EXIF);
    }

    private static ExifOrientation inDirectory(ByteBuffer tiff) {
        tiff.order(tiff.getShort(0) == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        int directory = tiff.getInt(4);
        int entries = tiff.getShort(directory) & 0xFFFF;
        for (int i = 0; i < entries; i++) {
            int entry = directory + 2 + 12 * i;
            if ((tiff.getShort(entry) & 0xFFFF) == TAG && tiff.getShort(entry + 2) == SHORT) {
                int code = tiff.getShort(entry + 8) & 0xFFFF;
                return code >= 1 && code <= 8 ? new ExifOrientation(code) : UPRIGHT;
            }
        }
        return UPRIGHT;
    }

    /** Whether width and height change places. */
    boolean lying() {
        return code >= 5;
    }

    /** The picture turned so that it stands upright. */
    BufferedImage apply(BufferedImage picture) {
        if (code == 1) {
            return picture;
        }
        int w = picture.getWidth();
        int h = picture.getHeight();
        AffineTransform turn = switch (code) {
            case 2 -> new AffineTransform(-1, 0, 0, 1, w, 0);
            case 3 -> new AffineTransform(-1, 0, 0, -1, w, h);
            case 4 -> new AffineTransform(1, 0, 0, -1, 0, h);
            case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
            case 6 -> new AffineTransform(0, 1, -1, 0, h, 0);
            case 7 -> new AffineTransform(0, -1, -1, 0, h, w);
            default -> new AffineTransform(0, -1, 1, 0, 0, w);
        };
        BufferedImage upright = new BufferedImage(lying() ? h : w, lying() ? w : h, BufferedImage.TYPE_INT_RGB);
        return new AffineTransformOp(turn, AffineTransformOp.TYPE_NEAREST_NEIGHBOR).filter(picture, upright);
    }
}
