package org.vanewright.engineering.drawing;

import java.awt.geom.PathIterator;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.vanewright.engineering.geometry.Point2;

/** The letters of {@link Lettering} as closed outlines, for what is cut or raised rather than printed. ASCII only. */
public final class GlyphOutlines {
    private static final int FIRST = ' ';
    private static final int LAST = '~';
    /** Curves are off by no more than this part of an em: 0.03 mm at capitals 5 mm high. */
    private static final double FLATNESS_EM = 0.004;

    private GlyphOutlines() {}

    /**
     * Outlines of one line of text, letter by letter; counters, such as the inside of an O, are rings of their own, so a
     * place is inked where an odd number of a letter's rings goes round it.
     *
     * @param text ASCII; other characters become question marks
     * @param heightMm of a capital
     * @return letters with any ink, each its rings; base line along y = 0 from x = 0
     */
    public static List<List<List<Point2>>> of(String text, double heightMm) {
        double scale = heightMm / Lettering.CAP_HEIGHT_PER_EM;
        List<List<List<Point2>>> letters = new ArrayList<>();
        StringBuilder before = new StringBuilder();
        for (char c : text.toCharArray()) {
            char drawn = c >= FIRST && c <= LAST ? c : '?';
            double x = Lettering.widthMm(before.toString(), heightMm);
            List<List<Point2>> rings = Font.RINGS.get(drawn - FIRST).stream()
                    .map(ring -> ring.stream()
                            .map(p -> new Point2(x + p.x() * scale, p.y() * scale))
                            .toList())
                    .toList();
            if (!rings.isEmpty()) {
                letters.add(rings);
            }
            before.append(drawn);
        }
        return letters;
    }

    /** Loaded at first use; per em. */
    private static final class Font {
        static final List<List<List<Point2>>> RINGS = read();

        private static List<List<List<Point2>>> read() {
            try (TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(Lettering.fontFile()))) {
                CmapLookup glyphs = font.getUnicodeCmapLookup();
                List<List<List<Point2>>> all = new ArrayList<>();
                for (int c = FIRST; c <= LAST; c++) {
                    GlyphData glyph = font.getGlyph().getGlyph(glyphs.getGlyphId(c));
                    all.add(
                            glyph == null
                                    ? List.of()
                                    : rings(
                                            glyph.getPath().getPathIterator(null, FLATNESS_EM * font.getUnitsPerEm()),
                                            font.getUnitsPerEm()));
                }
                return all;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private static List<List<Point2>> rings(PathIterator path, double unitsPerEm) {
            List<List<Point2>> rings = new ArrayList<>();
            List<Point2> ring = new ArrayList<>();
            double[] at = new double[6];
            for (; !path.isDone(); path.next()) {
                int kind = path.currentSegment(at);
                if (kind == PathIterator.SEG_MOVETO) {
                    ring = new ArrayList<>();
                    rings.add(ring);
                }
                if (kind != PathIterator.SEG_CLOSE) {
                    ring.add(new Point2(at[0] / unitsPerEm, at[1] / unitsPerEm));
                }
            }
            return rings.stream().map(Font::open).filter(r -> r.size() > 2).toList();
        }

        /** Without the first point again at the end. */
        private static List<Point2> open(List<Point2> ring) {
            int last = ring.size() - 1;
            return last > 0 && ring.get(0).distanceTo(ring.get(last)) < 1e-9 ? ring.subList(0, last) : ring;
        }
    }
}
