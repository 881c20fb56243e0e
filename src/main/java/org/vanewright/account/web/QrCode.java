package org.vanewright.account.web;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;

/**
 * A text as a picture for cameras (ISO/IEC 18004).
 *
 * @param size modules across, the quiet zone included
 * @param path of the dark modules, as SVG writes paths
 */
record QrCode(int size, String path) {
    private static final int QUIET = 4;

    static QrCode of(String text) {
        try {
            return of(Encoder.encode(text, ErrorCorrectionLevel.M).getMatrix());
        } catch (WriterException e) {
            throw new IllegalArgumentException(e);
        }
    }

    private static QrCode of(ByteMatrix modules) {
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < modules.getHeight(); y++) {
            for (int x = 0; x < modules.getWidth(); x++) {
                if (modules.get(x, y) == 1) {
                    path.append('M')
                            .append(x + QUIET)
                            .append(' ')
                            .append(y + QUIET)
                            .append("h1v1h-1z");
                }
            }
        }
        return new QrCode(modules.getWidth() + 2 * QUIET, path.toString());
    }
}
