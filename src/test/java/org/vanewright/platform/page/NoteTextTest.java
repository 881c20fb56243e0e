package org.vanewright.platform.page;

import static java.time.Duration.ofSeconds;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class NoteTextTest {
    private static final Set<String> ELEMENTS = Set.of(
            "p",
            "br",
            "hr",
            "ul",
            "ol",
            "li",
            "em",
            "strong",
            "code",
            "pre",
            "blockquote",
            "a",
            "h3",
            "h4",
            "h5",
            "h6");

    private final NoteText notes = new NoteText();

    private Element shown(String note) {
        return Jsoup.parseBodyFragment(notes.html(note)).body();
    }

    @Test
    void nothingGivesNothing() {
        assertThat(notes.html(null)).isEmpty();
        assertThat(notes.html(" \n ")).isEmpty();
    }

    @Test
    void marksBecomeElementsAndHeadingsStandBelowThoseOfThePage() {
        Element body =
                shown("# Fit\nPress *firmly* and **evenly**.\nWait.\n\n- one\n- two\n\n1. first\n\n> quoted\n\n`code`");

        assertThat(body.select("h3").text()).isEqualTo("Fit");
        assertThat(body.select("p em").text()).isEqualTo("firmly");
        assertThat(body.select("p strong").text()).isEqualTo("evenly");
        assertThat(body.select("p br")).as("a line stays a line").hasSize(1);
        assertThat(body.select("ul li").eachText()).containsExactly("one", "two");
        assertThat(body.select("ol li").eachText()).containsExactly("first");
        assertThat(body.select("blockquote").text()).isEqualTo("quoted");
        assertThat(body.select("code").text()).isEqualTo("code");
        assertThat(shown("###### Deep").select("h6").text()).isEqualTo("Deep");
    }

    @Test
    void linksLeadToTheWebOnlyAndVouchForNothing() {
        Element link = shown("[data](https://example.org/a?b=1&c=2 'title')").expectFirst("a");

        assertThat(link.attr("href")).isEqualTo("https://example.org/a?b=1&c=2");
        assertThat(link.attr("rel").split(" ")).containsExactlyInAnyOrder("nofollow", "ugc", "noopener");
        assertThat(link.hasAttr("title")).isFalse();
        assertThat(shown("<HTTP://example.org>").select("a")).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "javascript:alert(1)",
                "JaVaScRiPt:alert(1)",
                "&#106;avascript:alert(1)",
                "java&#x09;script:alert(1)",
                "%6Aavascript:alert(1)",
                "data:text/html;base64,PHNjcmlwdD4=",
                "vbscript:x",
                "file:///etc/passwd",
                "mailto:someone@example.org",
                "//example.org/x",
                "/airframes",
                "\\\\\\\\example.org",
                "http:example.org",
                "\u0001javascript:alert(1)",
            })
    void linksToAnythingElseLeaveTheirWords(String address) {
        for (String note : List.of("[words](" + address + ")", "[words][r]\n\n[r]: " + address)) {
            Element body = shown(note);

            assertThat(body.select("a")).as(note).isEmpty();
            assertThat(body.text()).contains("words");
        }
    }

    @Test
    void imagesLeaveTheirWords() {
        Element body = shown("See ![the *rig*](https://example.org/x.png) here");

        assertThat(body.select("img")).isEmpty();
        assertThat(body.text()).isEqualTo("See the rig here");
    }

    @Test
    void htmlShowsAsItWasTyped() {
        Element body = shown("<script>alert(1)</script> <b onclick=x>bold</b>");

        assertThat(body.select("script, b")).isEmpty();
        assertThat(body.text()).isEqualTo("<script>alert(1)</script> <b onclick=x>bold</b>");
    }

    static Stream<String> hostile() {
        return Stream.of(
                "<img src=x onerror=alert(1)>",
                "<svg/onload=alert(1)>",
                "&lt;script&gt;alert(1)&lt;/script&gt;",
                "&#60;script&#62;alert(1)&#60;/script&#62;",
                "`<script>alert(1)</script>`",
                "```html\"><script>\n</code></pre><script>alert(1)</script>\n```",
                "[x](https://a.example/\"onmouseover=\"alert(1))",
                "[x](<https://a.example/ onmouseover=alert(1)>)",
                "[x](https://a.example 'a\" onclick=\"alert(1)')",
                "<https://a.example/\"onclick=alert(1)>",
                "![x\" onerror=\"alert(1)](x)",
                "# <style>*{display:none}</style>",
                "- <iframe srcdoc='<script>alert(1)</script>'></iframe>",
                "<a href='javascript:alert(1)'>x</a>",
                "<!--><script>alert(1)</script>-->",
                "<math><mi//xlink:href=\"data:x,<script>alert(4)</script>\">",
                "<form action=https://a.example><input name=password></form>",
                "<p style='position:fixed;inset:0'>x</p>",
                "\u2028<script>\u2029alert(1)</script>",
                "<scr\0ipt>alert(1)</scr\0ipt>");
    }

    @ParameterizedTest
    @MethodSource("hostile")
    void hostileNotesHaveNoElementAndNoAttributeButTheKnownOnes(String note) {
        assertHarmless(note);
    }

    @Test
    void anyMixtureOfMarksIsHarmless() {
        String[] parts = {
            "<script>",
            "</script>",
            "[",
            "](",
            ")",
            "javascript:",
            "https://a.example",
            "<",
            ">",
            "\"",
            "'",
            "&#x6A;",
            "*",
            "**",
            "`",
            "```\n",
            "\n",
            "\n\n",
            "> ",
            "- ",
            "1. ",
            "# ",
            "![",
            "onerror=",
            "=",
            "&lt;",
            "\\",
            "x",
            " "
        };
        Random random = new Random(7);
        for (int i = 0; i < 3000; i++) {
            StringBuilder note = new StringBuilder();
            for (int j = random.nextInt(40); j >= 0; j--) {
                note.append(parts[random.nextInt(parts.length)]);
            }
            assertHarmless(note.toString());
        }
    }

    static Stream<String> deep() {
        return Stream.of(
                        ">", "> ", "- ", "[", "![", "*a ", "**a", "`", "[a](", "<", "&", "_a_", "[a][", "\\", "1. ",
                        "~")
                .flatMap(part -> Stream.of(6_000, 10_000, 400_000).map(times -> part.repeat(times)));
    }

    @ParameterizedTest
    @MethodSource("deep")
    void deeplyNestedNotesAreShownSoonAndKeepTheirStack(String note) {
        // No measure of speed: a guard against a run that never ends.
        String html = assertTimeoutPreemptively(ofSeconds(30), () -> notes.html(note));

        assertThat(html.length()).isBetween(1, note.length() * 12 + 100);
    }

    @Test
    void anOverlongNoteIsShownAsTyped() {
        Element body = shown("*a* <b>".repeat(NoteText.LONGEST));

        assertThat(body.select("em, b")).isEmpty();
        assertThat(body.text()).startsWith("*a* <b>*a*");
    }

    private void assertHarmless(String note) {
        for (Element element : shown(note).getAllElements()) {
            if (element.tagName().equals("body")) {
                continue;
            }
            assertThat(ELEMENTS).as(note).contains(element.tagName());
            for (Attribute attribute : element.attributes()) {
                assertThat(element.tagName()).as(note).isEqualTo("a");
                assertThat(attribute.getKey()).as(note).isIn("href", "rel");
                if (attribute.getKey().equals("href")) {
                    assertThat(attribute.getValue()).as(note).matches("(?is)https?://.*");
                }
            }
        }
    }
}
