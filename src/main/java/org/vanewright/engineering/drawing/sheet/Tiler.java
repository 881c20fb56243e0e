package org.vanewright.engineering.drawing.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.vanewright.engineering.drawing.Bounds;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.PdfPage;
import org.vanewright.engineering.drawing.Shape;
import org.vanewright.engineering.drawing.Similarity;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Spreads a drawing at true scale over sheets. Neighbours share a strip; sheets are cut or laid along its middle, the
 * seam. Of portrait and landscape the one with fewer sheets is taken.
 */
public final class Tiler {
    static final int MAX_SHEETS = 400;
    /** Kept free around the drawing so that no line runs along the edge of a sheet's frame. */
    private static final double ROOM_MM = 1;

    /** Even, so that the steps lie on both sides of the middle. */
    private static final int SLIDES = 40;

    private final List<Placed> shapes;
    private final Bounds content;
    private final double overlapMm;

    private Tiler(Drawing drawing, double overlapMm) {
        shapes = drawing.shapes().stream().map(s -> new Placed(s, Bounds.of(s))).toList();
        content = Bounds.of(drawing).grown(ROOM_MM);
        this.overlapMm = overlapMm;
    }

    private record Placed(Shape shape, Bounds bounds) {}

    private record Cell(int row, int column) {}

    /** With the usual margin and overlap of 10 mm each, on paper other than a roll. */
    public static TilePlan tile(Drawing drawing, Paper paper) {
        return tile(drawing, paper, SheetSpec.DEFAULT_MARGIN_MM, SheetSpec.DEFAULT_OVERLAP_MM, 1);
    }

    /**
     * On paper other than a roll.
     *
     * @param footerLines lines of lettering to leave room for at the foot of each sheet
     * @throws InvalidInputException if the drawing is empty, not finite, or takes more than 400 sheets
     */
    public static TilePlan tile(Drawing drawing, Paper paper, double marginMm, double overlapMm, int footerLines) {
        SheetFrame upright = new SheetFrame(paper.portrait(), marginMm, footerLines);
        return new Tiler(drawing, overlapMm).best(List.of(upright, upright.turned()));
    }

    /**
     * On lengths of a roll: as few pieces as the longest PDF page allows, all of one length, and no longer than
     * needed.
     */
    static TilePlan roll(Drawing drawing, double rollWidthMm, double marginMm, double overlapMm, int footerLines) {
        Tiler tiler = new Tiler(drawing, overlapMm);
        SheetFrame longest = new SheetFrame(new SheetSize(PdfPage.MAX_SIDE_MM, rollWidthMm), marginMm, footerLines);
        double along = tiler.evenLength(longest.drawing().widthMm(), tiler.content.widthMm());
        SheetFrame lying = new SheetFrame(
                new SheetSize(along + longest.widthBesideDrawingMm(), rollWidthMm), marginMm, footerLines);
        SheetFrame standing = longest.turned();
        double down = tiler.evenLength(standing.drawing().heightMm(), tiler.content.heightMm());
        SheetFrame upright = new SheetFrame(
                new SheetSize(rollWidthMm, down + longest.heightBesideDrawingMm()), marginMm, footerLines);
        return tiler.best(List.of(lying, upright));
    }

    private double evenLength(double longestMm, double neededMm) {
        int pieces = count(neededMm, longestMm);
        return (neededMm + (pieces - 1) * overlapMm) / pieces + 1e-6;
    }

    private TilePlan best(List<SheetFrame> frames) {
        Comparator<TilePlan> fewest =
                Comparator.comparingInt(plan -> plan.tiles().size());
        List<TilePlan> plans = frames.stream().flatMap(this::plan).toList();
        return plans.stream()
                .min(fewest.thenComparingDouble(
                        plan -> plan.tiles().size() * plan.sheet().areaMm2()))
                .orElseThrow(() -> new InvalidInputException(new FieldProblem(
                        "paper",
                        Math.round(content.widthMm()) + " mm by " + Math.round(content.heightMm()) + " mm",
                        "a drawing that fits on " + MAX_SHEETS + " sheets; choose larger paper")));
    }

    /** The plan for one orientation; none when it takes too many sheets. */
    private Stream<TilePlan> plan(SheetFrame frame) {
        Bounds window = frame.drawing();
        int columns = count(content.widthMm(), window.widthMm());
        int rows = count(content.heightMm(), window.heightMm());
        if ((long) rows * columns > 8L * MAX_SHEETS) {
            return Stream.empty();
        }
        double gridWidth = columns * (window.widthMm() - overlapMm) + overlapMm;
        double gridHeight = rows * (window.heightMm() - overlapMm) + overlapMm;
        double left = start(
                content.minXMm(), content.maxXMm(), gridWidth, columns, b -> new double[] {b.minXMm(), b.maxXMm()});
        double bottom =
                start(content.minYMm(), content.maxYMm(), gridHeight, rows, b -> new double[] {b.minYMm(), b.maxYMm()});
        Bounds grid = new Bounds(left, bottom, left + gridWidth, bottom + gridHeight);
        List<Tile> tiles = tiles(window, grid, rows, columns);
        return tiles.size() > MAX_SHEETS
                ? Stream.empty()
                : Stream.of(new TilePlan(frame.sheet(), frame.marginMm(), rows, columns, grid, overlapMm, tiles));
    }

    /**
     * Where the grid begins along one axis. It is longer than the content, so it can slide; of some even steps the one
     * is taken whose seams meet the fewest shapes, since a cut through a base outline or along a centre line costs
     * accuracy; among equals, the one nearest the middle.
     */
    private double start(
            double contentFrom, double contentTo, double gridMm, int cells, Function<Bounds, double[]> extent) {
        double slack = gridMm - (contentTo - contentFrom);
        double step = (gridMm - overlapMm) / cells;
        List<double[]> extents =
                shapes.stream().map(s -> extent.apply(s.bounds())).toList();
        double best = contentFrom - slack / 2;
        long fewest = Long.MAX_VALUE;
        for (int i = 0; i <= SLIDES; i++) {
            // 0, +1, -1, +2, -2 … steps from the middle
            int away = (i + 1) / 2 * (i % 2 == 0 ? -1 : 1);
            double from = contentFrom - slack / 2 + away * slack / SLIDES;
            long met = IntStream.range(1, cells)
                    .mapToDouble(cell -> from + cell * step + overlapMm / 2)
                    .mapToLong(seam -> extents.stream()
                            .filter(e -> e[0] <= seam + overlapMm / 2 && e[1] >= seam - overlapMm / 2)
                            .count())
                    .sum();
            if (met < fewest) {
                fewest = met;
                best = from;
            }
        }
        return best;
    }

    private List<Tile> tiles(Bounds window, Bounds grid, int rows, int columns) {
        List<Cell> used = new ArrayList<>();
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                Bounds core = region(window, grid, row, column).grown(-overlapMm / 2);
                Bounds cell = widened(core, row, column, rows, columns);
                if (shapes.stream().anyMatch(s -> s.bounds().touches(cell) && Touch.test(s.shape(), cell))) {
                    used.add(new Cell(row, column));
                }
            }
        }
        Set<Cell> present = used.stream().collect(Collectors.toUnmodifiableSet());
        return used.stream()
                .map(cell -> tile(cell, region(window, grid, cell.row(), cell.column()), window, present))
                .toList();
    }

    private Bounds region(Bounds window, Bounds grid, int row, int column) {
        double left = grid.minXMm() + column * (window.widthMm() - overlapMm);
        double top = grid.maxYMm() - row * (window.heightMm() - overlapMm);
        return new Bounds(left, top - window.heightMm(), left + window.widthMm(), top);
    }

    /** The outermost cells reach to the edge of the grid, so that the cells together cover all of it. */
    private Bounds widened(Bounds core, int row, int column, int rows, int columns) {
        double half = overlapMm / 2;
        return new Bounds(
                core.minXMm() - (column == 0 ? half : 0),
                core.minYMm() - (row == rows - 1 ? half : 0),
                core.maxXMm() + (column == columns - 1 ? half : 0),
                core.maxYMm() + (row == 0 ? half : 0));
    }

    private Tile tile(Cell cell, Bounds region, Bounds window, Set<Cell> present) {
        Map<Edge, String> neighbours = new EnumMap<>(Edge.class);
        for (Edge edge : Edge.values()) {
            Cell next = new Cell(cell.row() + edge.rowStep, cell.column() + edge.columnStep);
            if (present.contains(next)) {
                neighbours.put(edge, name(next));
            }
        }
        List<Shape> shown = shapes.stream()
                .filter(s -> s.bounds().touches(region))
                .map(Placed::shape)
                .toList();
        Similarity toSheet = Similarity.shift(window.minXMm() - region.minXMm(), window.minYMm() - region.minYMm());
        return new Tile(name(cell), cell.row(), cell.column(), region, toSheet, shown, neighbours);
    }

    private int count(double neededMm, double windowMm) {
        return Math.max(1, (int) Math.ceil((neededMm - overlapMm) / (windowMm - overlapMm) - 1e-9));
    }

    private static String name(Cell cell) {
        return rowName(cell.row()) + (cell.column() + 1);
    }

    /** A to Z, then AA, AB and so on. */
    static String rowName(int row) {
        String last = Character.toString((char) ('A' + row % 26));
        return row < 26 ? last : rowName(row / 26 - 1) + last;
    }
}
