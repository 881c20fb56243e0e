package org.vanewright.platform.plot;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Plots as files of their own, which bring the colours of the pages' style sheet for light and dark with them. */
public final class PlotFiles {
    private static final Pattern COLOURS = Pattern.compile("(@media [a-z(): -]+ \\{\\s*)?:root \\{([^}]*)}");
    private static final Pattern COLOUR = Pattern.compile("--[a-z0-9-]+: #[0-9a-f]+;");
    private static final String STYLE = style();

    private PlotFiles() {}

    /** @return a whole SVG document */
    public static String svg(CurvePlot plot) {
        String inline = SvgPlots.svg(plot, "plot", DrawnPlot.WIDTH_PX, DrawnPlot.HEIGHT_PX);
        int content = inline.indexOf('>') + 1;
        return inline.substring(0, content) + STYLE + inline.substring(content);
    }

    private static String style() {
        StringBuilder style = new StringBuilder("<style>\n");
        Matcher rules = COLOURS.matcher(sheet());
        while (rules.find()) {
            String rule = COLOUR.matcher(rules.group(2))
                    .results()
                    .map(MatchResult::group)
                    .collect(Collectors.joining(" ", ":root { ", " }"));
            String medium = rules.group(1);
            style.append(medium == null ? rule : medium.strip() + " " + rule + " }")
                    .append('\n');
        }
        return style.append(
                        "text { font-family: sans-serif; paint-order: stroke; stroke: var(--sheet); stroke-width: 3px; }\n")
                .append("</style>")
                .toString();
    }

    private static String sheet() {
        try (InputStream sheet = PlotFiles.class.getResourceAsStream("/static/css/vanewright.css")) {
            if (sheet == null) {
                throw new IllegalStateException("no style sheet on the class path");
            }
            return new String(sheet.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
