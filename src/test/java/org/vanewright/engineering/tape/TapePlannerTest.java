package org.vanewright.engineering.tape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Fill;
import org.vanewright.engineering.drawing.Layer;
import org.vanewright.engineering.drawing.Pen;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.input.InvalidInputException;

class TapePlannerTest {
    private static final double SLACK = 1e-9;

    private static TapePiece rectangle(String name, double length, double width, int count) {
        return new TapePiece(
                name,
                List.of(
                        new Point2(-length / 2, -width / 2),
                        new Point2(length / 2, -width / 2),
                        new Point2(length / 2, width / 2),
                        new Point2(-length / 2, width / 2)),
                count);
    }

    @Test
    void oneKindIsTurnedTheWayThatIsShorter() {
        TapePlan plan = TapePlanner.plan(List.of(rectangle("a", 30, 16, 12)), 50, 1);
        assertThat(plan.cuts()).hasSize(12);
        // lengthways floor(51/17) = 3 across, 4 strips: 4 · 30 + 3 = 123; turned floor(51/31) = 1, 12 strips: 203
        assertThat(plan.lengthMm()).isCloseTo(123, within(SLACK));
        assertThat(plan.pieceAreaMm2()).isCloseTo(12 * 480, within(SLACK));
        assertThat(plan.waste()).isCloseTo(1 - 12 * 480 / (123 * 50.0), within(SLACK));
        // on 31 mm: lengthways 1 across, 12 · 30 + 11 = 371; turned 1 across of 30, 12 · 16 + 11 = 203
        TapePlan turned = TapePlanner.plan(List.of(rectangle("a", 30, 16, 12)), 31, 1);
        assertThat(turned.lengthMm()).isCloseTo(203, within(SLACK));
        assertThat(turned.cuts()).allMatch(CutPiece::turned);
    }

    @Test
    void nothingToCutTakesNothing() {
        assertThat(TapePlanner.plan(List.of(), 25, 1).lengthMm()).isZero();
        assertThat(TapePlanner.plan(List.of(), 25, 1).waste()).isZero();
    }

    @Test
    void aRollThatIsTooNarrowIsNamed() {
        assertThatThrownBy(() -> TapePlanner.plan(List.of(rectangle("wide", 30, 26, 4)), 25, 1))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("rollWidthMm")
                .hasMessageContaining("26");
        assertThatThrownBy(() -> TapePlanner.plan(List.of(rectangle("many", 10, 10, 5001)), 25, 1))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("spares");
    }

    @Test
    void piecesNeverOverlapAndStayOnTheRoll() {
        for (int seed = 0; seed < 500; seed++) {
            Random random = new Random(seed);
            List<TapePiece> kinds = new ArrayList<>();
            int wanted = 1 + random.nextInt(9);
            double narrowest = 0;
            int pieces = 0;
            for (int i = 0; i < wanted; i++) {
                double length = 5 + 50 * random.nextDouble();
                double width = 5 + 40 * random.nextDouble();
                int count = 1 + random.nextInt(30);
                kinds.add(
                        random.nextBoolean()
                                ? rectangle("r" + i, length, width, count)
                                : ellipse(length, width, count));
                narrowest = Math.max(narrowest, Math.min(length, width));
                pieces += count;
            }
            double roll = narrowest + (random.nextBoolean() ? 0.001 : 60 * random.nextDouble());
            double gap = 2 * random.nextDouble();
            TapePlan plan = TapePlanner.plan(kinds, roll, gap);

            assertThat(plan.cuts()).as("seed %d", seed).hasSize(pieces);
            assertThat(plan.waste()).isBetween(0.0, 1.0);
            for (int i = 0; i < kinds.size(); i++) {
                int kind = i;
                assertThat(plan.cuts().stream().filter(c -> c.kind() == kind))
                        .hasSize(kinds.get(i).count());
            }
            for (CutPiece cut : plan.cuts()) {
                Bounds drawn = Bounds.of(Shape.outline(Layer.CUT, Pen.THIN, Fill.NONE, cut.outline()));
                assertThat(drawn.minXMm()).isGreaterThanOrEqualTo(-SLACK);
                assertThat(drawn.minYMm()).isGreaterThanOrEqualTo(-SLACK);
                assertThat(drawn.maxYMm()).isLessThanOrEqualTo(roll + SLACK);
                assertThat(drawn.maxXMm()).isLessThanOrEqualTo(plan.lengthMm() + SLACK);
                assertThat(cut.bounds().grown(SLACK).contains(drawn)).isTrue();
            }
            assertApart(plan.cuts(), gap, seed);
        }
    }

    private static void assertApart(List<CutPiece> cuts, double gap, int seed) {
        for (int i = 0; i < cuts.size(); i++) {
            Bounds a = cuts.get(i).bounds();
            for (int j = i + 1; j < cuts.size(); j++) {
                Bounds b = cuts.get(j).bounds();
                double along = Math.max(a.minXMm() - b.maxXMm(), b.minXMm() - a.maxXMm());
                double across = Math.max(a.minYMm() - b.maxYMm(), b.minYMm() - a.maxYMm());
                if (Math.max(along, across) < gap - SLACK) {
                    throw new AssertionError(
                            "seed " + seed + ": pieces " + i + " and " + j + " are closer than " + gap);
                }
            }
        }
    }

    private static TapePiece ellipse(double length, double width, int count) {
        List<Point2> points = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            double a = 2 * Math.PI * i / 40;
            points.add(new Point2(length / 2 * Math.cos(a), width / 2 * Math.sin(a)));
        }
        return new TapePiece("ellipse", points, count);
    }
}
