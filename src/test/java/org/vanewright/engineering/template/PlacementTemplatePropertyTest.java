package org.vanewright.engineering.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Shape;

/** Whatever the wing, row, register line and side, the piece can be cut out, read and used. */
class PlacementTemplatePropertyTest {
    private static final int SAMPLES = 60;

    @Test
    void everyPieceIsSoundAndLegible() {
        RandomPieces random = new RandomPieces(20250211);
        int pieces = 0;
        int bases = 0;
        for (int i = 0; i < SAMPLES; i++) {
            RandomPieces.Sample sample = random.next();
            for (TemplatePiece piece : sample.pieces()) {
                String words = "sample " + i + ", piece " + piece.name() + " of " + sample.words();
                checkBases(piece, words);
                checkLettering(piece, words);
                pieces++;
            }
            int onPieces = sample.pieces().stream()
                    .filter(p -> !p.name().endsWith("strip"))
                    .mapToInt(p -> PieceShapes.cuts(p).size() - 1)
                    .sum();
            assertThat(onPieces).isEqualTo(sample.placement().stations().size());
            bases += onPieces;
        }
        assertThat(pieces).isGreaterThan(2 * SAMPLES);
        assertThat(bases).as("the seeds really placed devices").isGreaterThan(900);
    }

    private static void checkBases(TemplatePiece piece, String words) {
        Bounds bounds = Bounds.of(piece.drawing());
        assertThat(List.of(bounds.minXMm(), bounds.minYMm(), bounds.maxXMm(), bounds.maxYMm()))
                .as(words)
                .allSatisfy(v -> assertThat(v).isFinite());
        List<Polygon> cuts = PieceShapes.cuts(piece);
        Polygon outline = cuts.get(0);
        assertThat(outline.isValid()).as(words).isTrue();
        List<Polygon> bases = cuts.subList(1, cuts.size());
        for (int i = 0; i < bases.size(); i++) {
            assertThat(bases.get(i).isValid()).as(words).isTrue();
            assertThat(outline.contains(bases.get(i)))
                    .as("base %d inside the outline, %s", i, words)
                    .isTrue();
            for (int j = 0; j < i; j++) {
                assertThat(bases.get(i).intersection(bases.get(j)).getArea())
                        .as(words)
                        .isLessThan(0.01);
            }
        }
    }

    /** Upright as one reads, inside the paper, on nothing that is cut out, and no word on another. */
    private static void checkLettering(TemplatePiece piece, String words) {
        List<Polygon> cuts = PieceShapes.cuts(piece);
        var paper = cuts.get(0).buffer(0.05);
        List<Shape.Text> texts = PieceShapes.texts(piece);
        List<Polygon> boxes = new ArrayList<>();
        for (Shape.Text text : texts) {
            String which = "\"" + text.text() + "\", " + words;
            assertThat(text.rotationDeg()).as(which).isFinite().isBetween(-135.0, 135.0);
            assertThat(text.heightMm()).as(which).isBetween(0.9, 4.0);
            Polygon box = PieceShapes.box(text);
            assertThat(paper.contains(box)).as("inside the paper: " + which).isTrue();
            for (Polygon base : cuts.subList(1, cuts.size())) {
                assertThat(base.intersects(box)).as("on a base: " + which).isFalse();
            }
            for (int i = 0; i < boxes.size(); i++) {
                assertThat(boxes.get(i).intersects(box))
                        .as("on \"" + texts.get(i).text() + "\": " + which)
                        .isFalse();
            }
            boxes.add(box);
        }
    }
}
