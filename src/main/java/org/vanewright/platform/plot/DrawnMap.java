package org.vanewright.platform.plot;

import java.util.ArrayList;
import java.util.List;

/**
 * A map ready for a page.
 *
 * @param plot what is drawn
 * @param svg its drawing
 * @param caption what stands beneath it
 */
public record DrawnMap(MapPlot plot, String svg, String caption) {
    private static final int MOST_COLUMNS = 8;
    private static final int MOST_ROWS = 6;

    /** A row of the table beneath it: its value up, and the mapped value in each column. */
    public record Row(String y, List<String> cells) {}

    /** @param id of its drawing, unique in its page */
    public static DrawnMap of(MapPlot plot, String id, String caption) {
        return new DrawnMap(plot, SvgPlots.svg(plot, id, 720, 380), caption);
    }

    /** What each colour means, from the palest. */
    public List<String> key() {
        List<String> key = new ArrayList<>();
        List<Double> steps = plot.steps();
        key.add("below " + DrawnPlot.digits(steps.get(0)));
        for (int i = 1; i < steps.size(); i++) {
            key.add(DrawnPlot.digits(steps.get(i - 1)) + " to " + DrawnPlot.digits(steps.get(i)));
        }
        key.add("above " + DrawnPlot.digits(steps.get(steps.size() - 1)));
        return key;
    }

    /** Heads of the table's columns, thinned to what a person can read. */
    public List<String> columns() {
        return thinned(plot.xs().length, MOST_COLUMNS).stream()
                .map(i -> DrawnPlot.digits(plot.xs()[i]))
                .toList();
    }

    public List<Row> rows() {
        List<Integer> columns = thinned(plot.xs().length, MOST_COLUMNS);
        return thinned(plot.ys().length, MOST_ROWS).stream()
                .map(row -> new Row(
                        DrawnPlot.digits(plot.ys()[row]),
                        columns.stream()
                                .map(column -> cell(plot.values()[row][column]))
                                .toList()))
                .toList();
    }

    private static String cell(double value) {
        return Double.isNaN(value) ? "–" : DrawnPlot.digits(value);
    }

    private static List<Integer> thinned(int count, int most) {
        List<Integer> picked = new ArrayList<>();
        int shown = Math.min(count, most);
        for (int i = 0; i < shown; i++) {
            picked.add(shown == 1 ? 0 : i * (count - 1) / (shown - 1));
        }
        return picked;
    }
}
