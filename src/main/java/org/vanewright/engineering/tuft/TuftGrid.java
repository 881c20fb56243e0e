package org.vanewright.engineering.tuft;

import java.util.ArrayList;
import java.util.List;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.wing.WingPanel;

/**
 * Tufts at span stations and chord fractions of a straight-tapered surface. A cell reaches half way to the next tuft on
 * every side; at the ends as far outwards as inwards, though never beyond the surface's edges. A grid of one station or
 * one row covers the whole span or chord. Order of the tufts: the right side, then the left; within a side by stations
 * from the root outboard; within a station from front to rear.
 */
public final class TuftGrid {
    private final List<Tuft> tufts;
    private final int stations;
    private final int rows;

    private TuftGrid(List<Tuft> tufts, int stations, int rows) {
        this.tufts = List.copyOf(tufts);
        this.stations = stations;
        this.rows = rows;
    }

    /**
     * The tufts of a grid with their cells.
     *
     * @param panels of one side, from the root outboard
     * @param stationsMm increasing, between root and tip
     * @param chordFractions increasing, between 0 and 1
     * @throws InvalidInputException naming {@code stationsMm} or {@code chordFractions} where they are not so
     */
    public static TuftGrid of(
            List<WingPanel> panels, List<Double> stationsMm, List<Double> chordFractions, Wings wings) {
        double root = panels.get(0).innerStationMm();
        double tip = panels.get(panels.size() - 1).outerStationMm();
        requireIncreasing("stationsMm", stationsMm, root, tip, "mm");
        requireIncreasing("chordFractions", chordFractions, 0, 1, "of the chord");
        double[] spans = edges(stationsMm, root, tip);
        double[] chords = edges(chordFractions, 0, 1);
        List<Tuft> tufts = new ArrayList<>();
        for (boolean left : wings.sides()) {
            for (int s = 0; s < stationsMm.size(); s++) {
                double strip = areaMm2(panels, spans[s], spans[s + 1]);
                for (int r = 0; r < chordFractions.size(); r++) {
                    tufts.add(new Tuft(
                            left,
                            s,
                            r,
                            stationsMm.get(s),
                            chordFractions.get(r),
                            new Tuft.Cell(spans[s], spans[s + 1], chords[r], chords[r + 1]),
                            strip * (chords[r + 1] - chords[r])));
                }
            }
        }
        return new TuftGrid(tufts, stationsMm.size(), chordFractions.size());
    }

    private static void requireIncreasing(String field, List<Double> values, double low, double high, String unit) {
        for (int i = 0; i < values.size(); i++) {
            double value = values.get(i);
            boolean follows = i == 0 ? value >= low : value > values.get(i - 1);
            if (!follows || !(value <= high)) {
                throw new InvalidInputException(new FieldProblem(
                        field,
                        trimmed(value),
                        "increasing numbers from " + trimmed(low) + " to " + trimmed(high) + " " + unit));
            }
        }
        if (values.isEmpty()) {
            throw new InvalidInputException(new FieldProblem(field, "none", "at least one number"));
        }
    }

    private static String trimmed(double number) {
        return number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
    }

    private static double[] edges(List<Double> centres, double low, double high) {
        int count = centres.size();
        double[] edges = new double[count + 1];
        if (count == 1) {
            return new double[] {low, high};
        }
        for (int i = 1; i < count; i++) {
            edges[i] = (centres.get(i - 1) + centres.get(i)) / 2;
        }
        edges[0] = Math.max(low, 2 * centres.get(0) - edges[1]);
        edges[count] = Math.min(high, 2 * centres.get(count - 1) - edges[count - 1]);
        return edges;
    }

    /** Plan area of one side between two span stations. */
    private static double areaMm2(List<WingPanel> panels, double fromMm, double toMm) {
        double area = 0;
        for (WingPanel panel : panels) {
            double from = Math.max(fromMm, panel.innerStationMm());
            double to = Math.min(toMm, panel.outerStationMm());
            if (to > from) {
                area += (to - from) * (panel.chordMm(from) + panel.chordMm(to)) / 2;
            }
        }
        return area;
    }

    /** In the grid's order. */
    public List<Tuft> tufts() {
        return tufts;
    }

    public int size() {
        return tufts.size();
    }

    /** Number of span stations on each side. */
    public int stations() {
        return stations;
    }

    /** Number of tufts one behind the other. */
    public int rows() {
        return rows;
    }

    /** Sum of the cells. */
    public double areaMm2() {
        return tufts.stream().mapToDouble(Tuft::areaMm2).sum();
    }
}
