package org.vanewright.sharing;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Service;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import org.vanewright.record.RevisionHead;

/**
 * The map of all public pages by the protocol of sitemaps.org, version 0.9: an index, and files of at most {@value #PER_FILE}
 * addresses, fewer than the 50,000 that it allows.
 */
@Service
public class Sitemap {
    static final int PER_FILE = 10_000;

    private static final String NAMESPACE = "http://www.sitemaps.org/schemas/sitemap/0.9";
    private static final String DECLARATION = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    private static final List<String> PAGES =
            List.of("/", "/evidence", "/retention", "/bench", "/about/method", "/people");

    private final Records records;

    Sitemap(Records records) {
        this.records = records;
    }

    /** Addresses of the files. */
    public String index(String base) {
        StringBuilder out = new StringBuilder(DECLARATION)
                .append("<sitemapindex xmlns=\"")
                .append(NAMESPACE)
                .append("\">\n");
        for (String name : files()) {
            out.append("<sitemap><loc>")
                    .append(escaped(base + "/sitemap-" + name + ".xml"))
                    .append("</loc></sitemap>\n");
        }
        return out.append("</sitemapindex>\n").toString();
    }

    private List<String> files() {
        List<String> names = new ArrayList<>();
        names.add("pages");
        for (RecordService<?> each : records.services()) {
            int count = each.countPublished();
            for (int n = 1; (n - 1) * PER_FILE < count; n++) {
                names.add(each.plural() + "-" + n);
            }
        }
        return names;
    }

    /** Pages that span the records. */
    public String pages(String base) {
        StringBuilder out = start();
        PAGES.forEach(
                path -> out.append("<url><loc>").append(escaped(base + path)).append("</loc></url>\n"));
        records.services()
                .forEach(each -> out.append("<url><loc>")
                        .append(escaped(base + "/" + each.plural()))
                        .append("</loc></url>\n"));
        return end(out);
    }

    /** One file of records; empty where there is no such kind. */
    public Optional<String> records(String base, String plural, int number) {
        return records.ofPlural(plural).map(each -> {
            StringBuilder out = start();
            for (RevisionHead head : each.heads((number - 1) * PER_FILE, PER_FILE)) {
                out.append("<url><loc>")
                        .append(escaped(base + "/" + plural + "/" + head.slug()))
                        .append("</loc><lastmod>")
                        .append(head.publishedAt().truncatedTo(ChronoUnit.SECONDS))
                        .append("</lastmod></url>\n");
            }
            return end(out);
        });
    }

    private static StringBuilder start() {
        return new StringBuilder(DECLARATION)
                .append("<urlset xmlns=\"")
                .append(NAMESPACE)
                .append("\">\n");
    }

    private static String end(StringBuilder out) {
        return out.append("</urlset>\n").toString();
    }

    /** Addresses hold what the configuration says; slugs need nothing. */
    private static String escaped(String address) {
        return address.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("'", "&apos;")
                .replace("\"", "&quot;");
    }
}
