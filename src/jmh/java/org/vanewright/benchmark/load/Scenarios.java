package org.vanewright.benchmark.load;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import org.vanewright.load.CatalogueSize;
import org.vanewright.load.LargeCatalogue.Kind;

/** What clients ask for. Labels that begin alike are of one kind of request. */
final class Scenarios {
    /** Answered without the database: a page of links through the same filters, frame and compression. */
    static final String EMPTY = "empty page";

    private static final String[] FACETS = {
        "kind:layout",
        "kind:campaign",
        "kind:device",
        "basis:type-certificated",
        "chord:1200-1500",
        "height:8-10",
        "planform:ogival",
        "position:8-12",
        "arrangement:co-rotating",
        "flown:flown",
        "interval:excludes-zero",
        "change:2-4"
    };
    private static final String[] OTHERS = {
        "/", "/people", "/evidence", "/retention", "/feed.atom", "/sitemap.xml", "/compare"
    };
    private static final int WARM = 20;
    private static final int STRIDE = 7919;

    private final CatalogueSize size;
    private final AtomicInteger neverMade = new AtomicInteger();

    Scenarios(CatalogueSize size) {
        this.size = size;
    }

    /** One request, or the few that belong together. */
    interface Scenario {
        void once(Visitor visitor);
    }

    /** With its name. */
    record Named(String name, Scenario scenario) {}

    List<Named> all(Writers writers) {
        List<Named> all = new ArrayList<>();
        all.add(new Named("browse", this::browse));
        all.add(new Named("search", this::search));
        all.add(new Named("show", this::show));
        all.add(new Named("others", v -> {
            String path = OTHERS[v.below(OTHERS.length)];
            v.get("other: " + path, path);
        }));
        all.add(new Named("template cold", v -> template(v, "template, cold", cold())));
        all.add(new Named("template warm", v -> template(v, "template, warm", v.below(WARM))));
        all.add(new Named("drawing cold", v -> drawing(v, "drawing, cold", cold())));
        all.add(new Named("drawing warm", v -> drawing(v, "drawing, warm", v.below(WARM))));
        all.add(new Named("API read", this::api));
        all.add(new Named("write", writers::once));
        return all;
    }

    void empty(Visitor visitor) {
        visitor.get(EMPTY, "/bench");
    }

    private String slug(Kind kind, Visitor visitor) {
        return kind.slug(size, visitor.below(kind.count(size)));
    }

    private static Kind some(Visitor visitor) {
        int of = visitor.below(100);
        return of < 50 ? Kind.LAYOUT : of < 65 ? Kind.DEVICE : of < 80 ? Kind.AIRFRAME : Kind.CAMPAIGN;
    }

    private void browse(Visitor visitor) {
        int of = visitor.below(100);
        Kind kind = of < 80 ? some(visitor) : of < 90 ? Kind.INSTALLATION : Kind.INSPECTION;
        String path = "/" + kind.plural();
        if (visitor.below(3) > 0) {
            path += "?cursor=" + kind.cursor(size, visitor.below(kind.count(size)));
        }
        visitor.get("browse: " + kind.plural(), path);
    }

    private void show(Visitor visitor) {
        Kind kind = some(visitor);
        visitor.get("show: " + kind.plural(), "/" + kind.plural() + "/" + slug(kind, visitor));
    }

    private void api(Visitor visitor) {
        Kind kind = some(visitor);
        visitor.get("API read", "/api/v1/" + kind.plural() + "/" + slug(kind, visitor));
    }

    private int cold() {
        return (int) ((long) neverMade.getAndIncrement() * STRIDE % size.layouts());
    }

    private void template(Visitor visitor, String label, int layout) {
        visitor.get(label, "/layouts/" + Kind.LAYOUT.slug(size, layout) + "/template.pdf?paper=A4&side=LEFT");
    }

    /** What the page of a layout or a device loads by itself. */
    private void drawing(Visitor visitor, String label, int number) {
        Kind kind = visitor.below(3) > 0 ? Kind.LAYOUT : Kind.DEVICE;
        String file = kind == Kind.LAYOUT ? "plans/1-metric.svg" : visitor.below(2) > 0 ? "still.svg" : "views.svg";
        visitor.get(
                label, "/" + kind.plural() + "/" + kind.slug(size, number % kind.count(size)) + "/revisions/1/" + file);
    }

    private void search(Visitor visitor) {
        String[] words = words(visitor);
        String word = words[visitor.below(words.length)];
        switch (visitor.below(6)) {
            case 0 -> search(visitor, "words", word, 0);
            case 1 -> search(visitor, "words", words[0] + " " + words[words.length - 1], 0);
            case 2 -> search(visitor, "typo", misspelt(word, visitor), 0);
            case 3 -> search(visitor, "prefix", word.substring(0, Math.min(4, word.length())), 0);
            case 4 -> search(visitor, "facets", "", 1 + visitor.below(2));
            default -> search(visitor, "words and facets", word, 1 + visitor.below(2));
        }
    }

    private static void search(Visitor visitor, String what, String text, int facets) {
        StringBuilder path = new StringBuilder("/search?q=" + URLEncoder.encode(text, StandardCharsets.UTF_8));
        for (int i = 0; i < facets; i++) {
            path.append("&facet=").append(FACETS[visitor.below(FACETS.length)]);
        }
        if (visitor.below(4) == 0) {
            path.append("&sort=").append(visitor.below(2) == 0 ? "date" : "effect");
        }
        visitor.get("search: " + what, path.toString());
    }

    /** Of a record's name, without its number. */
    private String[] words(Visitor visitor) {
        Kind kind = some(visitor);
        String name =
                kind.documents(size).apply(visitor.below(kind.count(size))).name();
        return name.toLowerCase(Locale.ROOT).replaceFirst(" \\d+$", "").split("[^a-z]+");
    }

    /** With two letters swapped. */
    private static String misspelt(String word, Visitor visitor) {
        if (word.length() < 5) {
            return word + "x";
        }
        int at = 1 + visitor.below(word.length() - 2);
        return word.substring(0, at) + word.charAt(at + 1) + word.charAt(at) + word.substring(at + 2);
    }

    /** What a club's visitors and members do at once. */
    Scenario mixture(Writers writers) {
        return visitor -> {
            int of = visitor.below(100);
            if (of < 25) {
                browse(visitor);
            } else if (of < 45) {
                search(visitor);
            } else if (of < 75) {
                show(visitor);
            } else if (of < 82) {
                String path = OTHERS[visitor.below(OTHERS.length)];
                visitor.get("other: " + path, path);
            } else if (of < 87) {
                template(visitor, "template, cold", cold());
            } else if (of < 97) {
                api(visitor);
            } else {
                writers.once(visitor);
            }
        };
    }
}
