package org.vanewright.engineering.drawing;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** A line of {@link Lettering} as one outline, with every character that the font has. */
public final class GlyphPaths {
    private GlyphPaths() {}

    /** Base line along y = 0 from x = 0, y up; filled where it winds round. */
    public static Path2D of(String text, double capHeight) {
        String drawn = Lettering.printable(text);
        Path2D line = new Path2D.Double(Path2D.WIND_NON_ZERO);
        try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(Lettering.fontFile()))) {
            CmapLookup glyphs = font.getUnicodeCmapLookup();
            double scale = capHeight / Lettering.CAP_HEIGHT_PER_EM / font.getUnitsPerEm();
            double x = 0;
            for (int i = 0; i < drawn.length(); i++) {
                int id = glyphs.getGlyphId(drawn.charAt(i));
                GlyphData glyph = font.getGlyph().getGlyph(id);
                if (glyph != null) {
                    GeneralPath path = glyph.getPath();
                    line.append(path.createTransformedShape(new AffineTransform(scale, 0, 0, scale, x, 0)), false);
                }
                x += font.getAdvanceWidth(id) * scale;
            }
            return line;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
