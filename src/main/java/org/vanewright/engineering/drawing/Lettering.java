package org.vanewright.engineering.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * Measures of the one typeface all files use, Liberation Sans, read from the font itself. It has the widths of the
 * common sans-serif faces, so the same figures serve where a viewer substitutes another.
 */
public final class Lettering {
    /** Height of a capital letter over the size of the font (OS/2 table, sCapHeight 1409 of 2048 units). */
    static final double CAP_HEIGHT_PER_EM = 1409.0 / 2048;

    /** Highest and lowest ink over the size of the font (hhea table, 1854 and -434 of 2048 units). */
    static final double ASCENT_PER_EM = 1854.0 / 2048;

    static final double DESCENT_PER_EM = 434.0 / 2048;

    private static final String RESOURCE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";
    private static final char REPLACEMENT = '?';

    private Lettering() {}

    /** Width in mm of one line of text with capitals {@code heightMm} high. */
    public static double widthMm(String text, double heightMm) {
        String drawn = printable(text);
        long units = 0;
        for (int i = 0; i < drawn.length(); i++) {
            units += Font.ADVANCE[drawn.charAt(i)];
        }
        return units * heightMm / CAP_HEIGHT_PER_EM / Font.unitsPerEm;
    }

    /** The text itself when it is no wider than {@code maxWidthMm}, else its beginning and an ellipsis. */
    public static String fit(String text, double heightMm, double maxWidthMm) {
        if (widthMm(text, heightMm) <= maxWidthMm) {
            return text;
        }
        int end = text.length();
        while (end > 0 && widthMm(text.substring(0, end).stripTrailing() + "…", heightMm) > maxWidthMm) {
            end = text.offsetByCodePoints(end, -1);
        }
        return text.substring(0, end).stripTrailing() + "…";
    }

    /** Control characters out, line breaks and tabs as blanks, characters the font lacks as question marks. */
    static String printable(String text) {
        StringBuilder out = new StringBuilder(text.length());
        text.codePoints().forEach(c -> {
            if (c == '\n' || c == '\r' || c == '\t') {
                out.append(' ');
            } else if (!Character.isISOControl(c) && Character.getType(c) != Character.FORMAT) {
                out.append(c <= 0xFFFF && Font.ADVANCE[c] >= 0 ? (char) c : REPLACEMENT);
            }
        });
        return out.toString();
    }

    static byte[] fontFile() {
        return Font.FILE.clone();
    }

    /** Loaded at first use. */
    private static final class Font {
        static final byte[] FILE = read();
        /** Advance width in font units by character, -1 where the font has no glyph. */
        static final int[] ADVANCE = new int[0x10000];

        static int unitsPerEm;

        static {
            try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(FILE))) {
                unitsPerEm = font.getUnitsPerEm();
                CmapLookup glyphs = font.getUnicodeCmapLookup();
                Arrays.fill(ADVANCE, -1);
                for (int c = ' '; c < ADVANCE.length; c++) {
                    int glyph = glyphs.getGlyphId(c);
                    if (glyph != 0) {
                        ADVANCE[c] = font.getAdvanceWidth(glyph);
                    }
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private static byte[] read() {
            try (InputStream in = Lettering.class.getResourceAsStream(RESOURCE)) {
                if (in == null) {
                    throw new IllegalStateException("font not on the class path: " + RESOURCE);
                }
                return in.readAllBytes();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
