package org.vanewright.platform.plot;

import java.awt.Color;
import java.util.HashMap;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Stands in for the page's colours while a plot is drawn: each has a value that nothing else has, and is replaced by the
 * style sheet's variable afterwards, so that plots follow light and dark.
 */
final class PageColours {
    static final Color INK = new Color(1, 1, 1);
    static final Color SOFT_INK = new Color(2, 2, 2);
    static final Color RULE = new Color(3, 3, 3);
    static final Color PAPER = new Color(5, 5, 5);
    static final Color ACCENT = new Color(4, 4, 4);
    private static final int CURVES = 11;
    private static final int STEPS = 31;

    private static final Pattern COLOUR = Pattern.compile("\"rgb\\(\\d++,\\d++,\\d++\\)\"");
    private static final Map<String, String> VARIABLES = variables();

    private PageColours() {}

    static Color curve(int index) {
        return new Color(CURVES + index, CURVES + index, CURVES + index);
    }

    static Color step(int index) {
        return new Color(STEPS + index, STEPS + index, STEPS + index);
    }

    private static Map<String, String> variables() {
        Map<String, String> map = new HashMap<>();
        map.put(text(INK), "var(--ink)");
        map.put(text(SOFT_INK), "var(--ink-soft)");
        map.put(text(RULE), "var(--rule)");
        map.put(text(PAPER), "var(--paper)");
        map.put(text(ACCENT), "var(--accent)");
        for (int i = 0; i < CurvePlot.MOST_CURVES; i++) {
            map.put(text(curve(i)), "var(--curve-" + (i + 1) + ")");
        }
        for (int i = 0; i <= MapPlot.MOST_STEPS; i++) {
            map.put(text(step(i)), "var(--step-" + (i + 1) + ")");
        }
        return map;
    }

    private static String text(Color color) {
        return "\"rgb(" + color.getRed() + "," + color.getGreen() + "," + color.getBlue() + ")\"";
    }

    static String inPage(String svg) {
        return COLOUR.matcher(svg).replaceAll(colour -> {
            String variable = VARIABLES.get(colour.group());
            return variable == null ? colour.group() : "\"" + variable + "\"";
        });
    }
}
