package org.vanewright.platform.page;

import org.jspecify.annotations.Nullable;
import org.springframework.web.util.HtmlUtils;

/**
 * Rows of a long table as HTML, every text escaped. A template takes several times as long for each cell, so that a table of
 * a hundred rows would be half of the work on its page.
 */
public final class HtmlRows {
    private final StringBuilder html = new StringBuilder();

    /** Begins a row with its heading. */
    public HtmlRows row(String heading) {
        return row(heading, null);
    }

    /** As {@link #row(String)}, in words and not figures. */
    public HtmlRows rowOfWords(String heading) {
        return row(heading, "words");
    }

    private HtmlRows row(String heading, @Nullable String css) {
        html.append(html.isEmpty() ? "<tr>" : "</tr>\n<tr>");
        return element("th scope=\"row\"", css, heading, "th");
    }

    /** A figure. */
    public HtmlRows figure(String text) {
        return element("td", null, text, "td");
    }

    /** A cell of words. */
    public HtmlRows words(String text) {
        return element("td", "words", text, "td");
    }

    private HtmlRows element(String begin, @Nullable String css, String text, String end) {
        html.append('<').append(begin);
        if (css != null) {
            html.append(" class=\"").append(css).append('"');
        }
        html.append('>')
                .append(HtmlUtils.htmlEscape(text, "UTF-8"))
                .append("</")
                .append(end)
                .append('>');
        return this;
    }

    /** All of them; empty where there is none. */
    public String html() {
        return html.isEmpty() ? "" : html + "</tr>\n";
    }
}
