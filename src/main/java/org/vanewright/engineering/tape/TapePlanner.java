package org.vanewright.engineering.tape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Lays pieces on a roll in strips across it. Each kind lies one way, or turned by 90°; pieces go longest first into the
 * first strip with room beside what lies there, as in first-fit decreasing height (E. G. Coffman, M. R. Garey, D. S.
 * Johnson, R. E. Tarjan, Performance Bounds for Level-Oriented Two-Dimensional Packing Algorithms, SIAM Journal on Computing
 * 9(4), 1980, from memory). The shortest of all ways of turning few kinds is taken; of many kinds, each is turned the way
 * that is shorter for it alone. Rectangles round the outlines never overlap and keep the gap between them.
 */
public final class TapePlanner {
    /** Most pieces of one plan. */
    public static final int MOST_PIECES = 5_000;

    public static final double NARROWEST_MM = 3;
    public static final double WIDEST_MM = 2_000;

    private static final int MOST_TRIED = 6;

    private TapePlanner() {}

    /**
     * @param rollWidthMm {@value #NARROWEST_MM} to {@value #WIDEST_MM}
     * @param gapMm between pieces; the edges of the roll need none
     * @throws InvalidInputException naming {@code rollWidthMm} or {@code spares} where the pieces do not fit
     */
    public static TapePlan plan(List<TapePiece> kinds, double rollWidthMm, double gapMm) {
        check(kinds, rollWidthMm);
        List<CutPiece> best = List.of();
        double shortest = Double.POSITIVE_INFINITY;
        for (List<KindShape> way : ways(kinds, rollWidthMm, gapMm)) {
            List<CutPiece> cuts = lay(kinds, way, rollWidthMm, gapMm);
            double length = length(cuts);
            if (length < shortest) {
                shortest = length;
                best = cuts;
            }
        }
        double area =
                kinds.stream().mapToDouble(k -> k.count() * area(k.outline())).sum();
        return new TapePlan(rollWidthMm, best.isEmpty() ? 0 : shortest, area, kinds, best);
    }

    private static void check(List<TapePiece> kinds, double rollWidthMm) {
        Checks checks = new Checks();
        checks.range("rollWidthMm", rollWidthMm, NARROWEST_MM, WIDEST_MM, "mm");
        int pieces = kinds.stream().mapToInt(TapePiece::count).sum();
        checks.require(pieces <= MOST_PIECES, "spares", pieces, "at most " + MOST_PIECES + " pieces in all");
        checks.throwIfAny();
        for (int i = 0; i < kinds.size(); i++) {
            KindShape flat = KindShape.of(i, kinds.get(i), false);
            double least = Math.min(flat.alongMm(), flat.acrossMm());
            if (least > rollWidthMm) {
                throw new InvalidInputException(new FieldProblem(
                        "rollWidthMm",
                        String.valueOf(rollWidthMm),
                        "at least " + Math.ceil(least * 10) / 10 + " mm, the width of the base of "
                                + kinds.get(i).name()));
            }
        }
    }

    private static List<List<KindShape>> ways(List<TapePiece> kinds, double rollWidthMm, double gapMm) {
        List<List<KindShape>> ways = new ArrayList<>();
        ways.add(List.of());
        boolean few = kinds.size() <= MOST_TRIED;
        for (int i = 0; i < kinds.size(); i++) {
            List<KindShape> choices = choices(i, kinds.get(i), rollWidthMm);
            List<KindShape> tried = few ? choices : List.of(shorter(choices, kinds.get(i), rollWidthMm, gapMm));
            List<List<KindShape>> longer = new ArrayList<>();
            for (List<KindShape> way : ways) {
                for (KindShape choice : tried) {
                    List<KindShape> next = new ArrayList<>(way);
                    next.add(choice);
                    longer.add(next);
                }
            }
            ways = longer;
        }
        return ways;
    }

    private static List<KindShape> choices(int kind, TapePiece piece, double rollWidthMm) {
        return Stream.of(KindShape.of(kind, piece, false), KindShape.of(kind, piece, true))
                .filter(s -> s.fits(rollWidthMm))
                .toList();
    }

    /** By what many pieces of this kind alone would take. */
    private static KindShape shorter(List<KindShape> choices, TapePiece piece, double rollWidthMm, double gapMm) {
        return choices.stream()
                .min(Comparator.comparingDouble(s -> {
                    double side = Math.floor((rollWidthMm + gapMm) / (s.acrossMm() + gapMm));
                    return Math.ceil(piece.count() / side) * (s.alongMm() + gapMm);
                }))
                .orElseThrow();
    }

    private static List<CutPiece> lay(List<TapePiece> kinds, List<KindShape> way, double rollWidthMm, double gapMm) {
        List<KindShape> sorted = way.stream()
                .sorted(Comparator.comparingDouble(KindShape::alongMm).reversed())
                .toList();
        List<Strip> strips = new ArrayList<>();
        List<CutPiece> cuts = new ArrayList<>();
        double next = 0;
        for (KindShape shape : sorted) {
            int from = 0;
            for (int n = 0; n < kinds.get(shape.kind()).count(); n++) {
                // what had no room for one piece has none for the next of the same kind
                while (from < strips.size() && !strips.get(from).hasRoom(shape, rollWidthMm)) {
                    from++;
                }
                if (from == strips.size()) {
                    strips.add(new Strip(next));
                    next += shape.alongMm() + gapMm;
                }
                cuts.add(strips.get(from).add(shape, gapMm));
            }
        }
        return cuts;
    }

    /** A stretch of the roll, filled across. */
    private static final class Strip {
        private final double fromMm;
        private double filledMm;

        Strip(double fromMm) {
            this.fromMm = fromMm;
        }

        boolean hasRoom(KindShape shape, double rollWidthMm) {
            return filledMm + shape.acrossMm() <= rollWidthMm;
        }

        CutPiece add(KindShape shape, double gapMm) {
            Point2 at = new Point2(fromMm, filledMm);
            filledMm += shape.acrossMm() + gapMm;
            return new CutPiece(
                    shape.kind(),
                    shape.turned(),
                    new Bounds(at.x(), at.y(), at.x() + shape.alongMm(), at.y() + shape.acrossMm()),
                    shape.outline().stream().map(p -> p.plus(at)).toList());
        }
    }

    private static double length(List<CutPiece> cuts) {
        return cuts.stream().mapToDouble(c -> c.bounds().maxXMm()).max().orElse(0);
    }

    private static double area(List<Point2> outline) {
        double twice = 0;
        for (int i = 0; i < outline.size(); i++) {
            twice += outline.get(i).cross(outline.get((i + 1) % outline.size()));
        }
        return Math.abs(twice) / 2;
    }
}
