package org.vanewright.review.web;

import java.util.Locale;
import org.springframework.web.util.HtmlUtils;
import org.vanewright.review.Lineage;

/** A small tree of revisions; the list beside it says the same in words. */
final class LineageDrawing {
    private static final int ROW = 30;
    private static final int COLUMN = 28;
    private static final int MARGIN = 16;
    private static final int LETTERING = 260;

    private final StringBuilder lines = new StringBuilder();
    private final StringBuilder marks = new StringBuilder();
    private int rows;
    private int deepest;

    private LineageDrawing() {}

    static String svg(Lineage root) {
        LineageDrawing drawing = new LineageDrawing();
        drawing.add(root, 0, "");
        int width = 2 * MARGIN + drawing.deepest * COLUMN + LETTERING;
        int height = 2 * MARGIN + (drawing.rows - 1) * ROW;
        return format(
                        "<svg class=\"lineage-tree\" role=\"img\" viewBox=\"0 0 %d %d\" width=\"%d\" height=\"%d\""
                                + " aria-labelledby=\"lineage-name\"><title id=\"lineage-name\">Tree of %d"
                                + " revisions; the list below says the same in words</title>",
                        width, height, width, height, root.size())
                + drawing.lines + drawing.marks + "</svg>";
    }

    private int add(Lineage node, int depth, String parentSlug) {
        int row = rows++;
        deepest = Math.max(deepest, depth);
        int x = MARGIN + depth * COLUMN;
        int y = MARGIN + row * ROW;
        String words = "r" + node.revision().number();
        if (!node.revision().slug().equals(parentSlug)) {
            words = shortened(node.revision().content().name()) + " " + words;
        }
        marks.append(format(
                "<circle class=\"%s\" cx=\"%d\" cy=\"%d\" r=\"6\"/><text x=\"%d\" y=\"%d\">%s</text>",
                node.here() ? "here" : "other", x, y, x + 13, y + 5, HtmlUtils.htmlEscape(words)));
        for (Lineage child : node.children()) {
            int childY = MARGIN + add(child, depth + 1, node.revision().slug()) * ROW;
            lines.append(format("<path d=\"M%d %dV%dH%d\"/>", x, y, childY, x + COLUMN));
        }
        return row;
    }

    private static String shortened(String name) {
        return name.length() <= 28 ? name : name.substring(0, 27) + "…";
    }

    private static String format(String pattern, Object... arguments) {
        return String.format(Locale.ROOT, pattern, arguments);
    }
}
