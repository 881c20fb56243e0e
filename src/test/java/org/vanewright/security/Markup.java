package org.vanewright.security;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;

/** Looks whether a text that somebody typed has become more than text in an answer. */
final class Markup {
    /** An element that no page of the service has. */
    static final String PROBE = "xss-probe";

    /** Each breaks out of another place. */
    static final List<String> HOSTILE = List.of(
            "\"'><script>alert(1)</script><xss-probe onclick=x>",
            "</title></textarea></svg><img src=x onerror=alert(1)>",
            "[a](javascript:alert(1)) <javascript:alert(1)> ![](data:x)",
            "<svg onload=alert(1)><xss-probe>&lt;xss-probe&gt;",
            "${7*191} [[${7*191}]] __${7*191}__ *{7*191} #{x}");

    /** What an expression in a hostile text would come to. */
    private static final String EVALUATED = "1337";

    private static final Set<String> ADDRESSES = Set.of(
            "href", "src", "action", "formaction", "xlink:href", "data", "poster", "srcset", "hx-get", "hx-post");
    private static final Set<String> BANNED = Set.of(
            PROBE, "iframe", "object", "embed", "base", "style", "applet", "frame", "foreignobject", "animate", "set");

    private Markup() {}

    /** What is wrong with an answer; empty where a browser runs none of what somebody typed. */
    static List<String> faults(HttpResponse<String> answer) {
        List<String> faults = new ArrayList<>();
        String type = answer.headers().firstValue("Content-Type").orElse("").toLowerCase(Locale.ROOT);
        if (!answer.headers().firstValue("X-Content-Type-Options").orElse("").equals("nosniff")) {
            faults.add("no nosniff");
        }
        if (answer.statusCode() >= 500) {
            faults.add("status " + answer.statusCode());
        }
        if (type.startsWith("text/html")) {
            faults.addAll(faults(Jsoup.parse(answer.body())));
        } else if (type.contains("xml")) {
            faults.addAll(faults(Jsoup.parse(answer.body(), Parser.xmlParser())));
        } else if (type.matches("text/(?!csv|plain).*")
                || (type.isEmpty() && !answer.body().isEmpty())) {
            faults.add("type " + type);
        }
        if (answer.uri().getPath().startsWith("/api/")
                && !type.contains("json")
                && !answer.body().isEmpty()) {
            faults.add("the API answers as " + type);
        }
        return faults.stream().map(f -> answer.uri().getPath() + ": " + f).toList();
    }

    private static List<String> faults(Document page) {
        List<String> faults = new ArrayList<>();
        page.getAllElements().forEach(element -> look(element, faults));
        if (page.text().contains(EVALUATED)) {
            faults.add("an expression was evaluated");
        }
        return faults;
    }

    private static void look(Element element, List<String> faults) {
        String name = element.normalName();
        boolean ownScript = name.equals("script")
                && element.attr("src").matches("/(js|webjars/htmx[.]org/dist)/[a-z.-]+[.]js")
                && element.data().isEmpty();
        // Data for machines; a browser runs nothing of another type.
        boolean data = element.attr("type").equals("application/ld+json")
                && element.attr("src").isEmpty()
                && !element.data().contains("<");
        if (BANNED.contains(name) || (name.equals("script") && !ownScript && !data)) {
            faults.add(element.outerHtml());
        }
        for (Attribute attribute : element.attributes()) {
            String key = attribute.getKey().toLowerCase(Locale.ROOT);
            String value =
                    attribute.getValue().replaceAll("[\\s\\p{Cntrl}]", "").toLowerCase(Locale.ROOT);
            boolean handler = key.startsWith("on") || key.equals("style") || key.equals("srcdoc");
            boolean script = ADDRESSES.contains(key) && value.matches("(javascript|vbscript|data:(?!image/)).*");
            if (handler || script || (name.equals("meta") && key.equals("http-equiv"))) {
                faults.add(name + " " + key + "=" + attribute.getValue());
            }
        }
    }
}
