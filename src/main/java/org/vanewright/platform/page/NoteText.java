package org.vanewright.platform.page;

import java.util.List;
import java.util.Set;
import org.commonmark.node.Block;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.ListBlock;
import org.commonmark.node.ThematicBreak;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.jspecify.annotations.Nullable;
import org.owasp.html.HtmlPolicyBuilder;
import org.owasp.html.PolicyFactory;
import org.springframework.stereotype.Component;
import org.springframework.web.util.HtmlUtils;

/**
 * Notes that people write, as HTML: CommonMark (version 0.31.2 of its specification) without images and without HTML of
 * its own, which shows as it was typed. Whatever comes out passes a sanitiser that knows a few elements only. Templates
 * find it as {@code noteText}.
 */
@Component
public final class NoteText {
    /** For the hint beside a field. */
    public static final String HINT =
            "A blank line starts a paragraph, - a list, # a heading; *emphasis*, **strong**, `code`, [words](https://…).";

    /** Longer text is shown as typed, so that nothing costly is tried on it. */
    static final int LONGEST = 20_000;

    private static final int DEEPEST = 12;

    private static final Set<Class<? extends Block>> BLOCKS =
            Set.of(Heading.class, BlockQuote.class, FencedCodeBlock.class, ListBlock.class, ThematicBreak.class);

    private final Parser parser = Parser.builder()
            .enabledBlockTypes(BLOCKS)
            .maxOpenBlockParsers(DEEPEST)
            .maxInlineNesting(DEEPEST)
            .postProcessor(new NoteShape())
            .build();

    private final HtmlRenderer renderer = HtmlRenderer.builder()
            .escapeHtml(true)
            .sanitizeUrls(true)
            .softbreak("<br />\n")
            .build();

    private final PolicyFactory allowed = new HtmlPolicyBuilder()
            .allowElements("p", "br", "hr", "ul", "ol", "li", "em", "strong", "code", "pre", "blockquote", "a")
            .allowElements("h3", "h4", "h5", "h6")
            .allowUrlProtocols("http", "https")
            .allowAttributes("href")
            .matching(NoteText::isWebAddress)
            .onElements("a")
            .requireRelsOnLinks("nofollow", "ugc", "noopener")
            .toFactory();

    /** The note as HTML that may stand in a page below a heading of the second level; empty for no note. */
    public String html(@Nullable String note) {
        if (note == null || note.isBlank()) {
            return "";
        }
        if (note.length() > LONGEST) {
            return "<p>" + HtmlUtils.htmlEscape(note, "UTF-8") + "</p>";
        }
        return allowed.sanitize(renderer.render(parser.parse(note)));
    }

    /** What a person may use, for the hint beside the field. */
    public String hint() {
        return HINT;
    }

    private static boolean isWebAddress(String address) {
        return List.of("http://", "https://").stream()
                .anyMatch(start -> address.regionMatches(true, 0, start, 0, start.length()));
    }
}
