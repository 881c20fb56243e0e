package org.vanewright.photograph;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;

/** Makes pictures smaller by halves, so that every pixel counts. */
final class Scaling {
    private Scaling() {}

    /** The picture with no side longer than that; a smaller one stays as it is. */
    static BufferedImage within(BufferedImage picture, int mostPx) {
        int longest = Math.max(picture.getWidth(), picture.getHeight());
        if (longest <= mostPx) {
            return picture;
        }
        BufferedImage scaled = picture;
        int side = longest;
        while (side > mostPx) {
            side = Math.max(mostPx, (side + 1) / 2);
            double scale = (double) side / longest;
            int width = Math.max(1, (int) Math.round(picture.getWidth() * scale));
            int height = Math.max(1, (int) Math.round(picture.getHeight() * scale));
            scaled = drawn(scaled, width, height);
        }
        return scaled;
    }

    private static BufferedImage drawn(BufferedImage picture, int width, int height) {
        BufferedImage scaled = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = scaled.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        graphics.drawImage(picture, 0, 0, width, height, null);
        graphics.dispose();
        return scaled;
    }
}
