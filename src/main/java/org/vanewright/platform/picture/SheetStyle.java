package org.vanewright.platform.picture;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The part of the pages' style sheet that drawings need. A drawing that is a file of its own has no style sheet beside it
 * and brings this part with it, for light and dark.
 */
public final class SheetStyle {
    private static final Pattern COLOURS = Pattern.compile("(@media [a-z(): -]+ \\{\\s*)?:root \\{([^}]*)}");
    private static final Pattern COLOUR = Pattern.compile("--[a-z0-9-]+: #[0-9a-f]+;");
    private static final Pattern OF_DRAWINGS = Pattern.compile("(?m)^\\.drawing (\\S[^{]*\\{[^}]*})");
    private static final String SHEET = sheet();

    /** Colours by name, as {@code :root} rules. */
    public static final String COLOUR_RULES = colours();

    /** Colours, pens, fills and lettering of drawings in the core's classes. */
    public static final String DRAWING_RULES = COLOUR_RULES
            + OF_DRAWINGS
                    .matcher(SHEET)
                    .results()
                    .map(rule -> rule.group(1).replace("var(--sans)", "sans-serif"))
                    .collect(Collectors.joining("\n", "", "\n"));

    private SheetStyle() {}

    /**
     * @param inline an SVG element as it stands in a page
     * @return a whole document with the rules in it
     */
    public static String in(String inline, String rules) {
        int content = inline.indexOf('>') + 1;
        return inline.substring(0, content) + "\n<style>\n" + rules + "</style>" + inline.substring(content);
    }

    private static String colours() {
        StringBuilder style = new StringBuilder();
        Matcher rules = COLOURS.matcher(SHEET);
        while (rules.find()) {
            String rule = COLOUR.matcher(rules.group(2))
                    .results()
                    .map(MatchResult::group)
                    .collect(Collectors.joining(" ", ":root { ", " }"));
            String medium = rules.group(1);
            style.append(medium == null ? rule : medium.strip() + " " + rule + " }")
                    .append('\n');
        }
        return style.toString();
    }

    private static String sheet() {
        try (InputStream sheet = SheetStyle.class.getResourceAsStream("/static/css/vanewright.css")) {
            if (sheet == null) {
                throw new IllegalStateException("no style sheet on the class path");
            }
            return new String(sheet.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
