package org.vanewright.kit;

import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.platform.page.Cautions;
import org.vanewright.record.Licence;

/** The plain texts of a kit. */
@Component
class KitTexts {
    private final Cautions cautions;

    KitTexts(Cautions cautions) {
        this.cautions = cautions;
    }

    String cautions(KitPlan plan) {
        StringBuilder text = new StringBuilder("CAUTIONS\n\n");
        plan.revisions().stream()
                .map(KitRevision::entry)
                .filter(e -> e.withdrawn() != null)
                .forEach(e -> text.append("WITHDRAWN: do not build from ")
                        .append(words(e))
                        .append(". ")
                        .append(line(e.withdrawn()))
                        .append("\n\n"));
        cautions.all(plan.layout().content().invented())
                .forEach(c -> text.append("- ").append(c).append('\n'));
        return text.toString();
    }

    static String licences(KitPlan plan) {
        StringBuilder text = new StringBuilder("LICENCES\n\nOf each record, and of every file made from it:\n\n");
        for (KitRevision<?> r : plan.revisions()) {
            KitIndex.Entry e = r.entry();
            text.append("- ")
                    .append(words(e))
                    .append(", by ")
                    .append(line(e.contributor()))
                    .append(": ")
                    .append(licence(r))
                    .append('\n');
            if (e.derivedFrom() != null) {
                text.append("  made from ")
                        .append(e.plural())
                        .append('/')
                        .append(e.derivedFrom().slug())
                        .append(" revision ")
                        .append(e.derivedFrom().revision())
                        .append('\n');
            }
        }
        return text.toString();
    }

    private static String licence(KitRevision<?> revision) {
        Licence licence = revision.there().standing().licence();
        return licence == null ? "none is stated; ask the contributor" : licence.label() + ", " + licence.url();
    }

    static String readMe(KitPlan plan) {
        KitIndex.Entry layout = plan.main().entry();
        String results = plan.results().isEmpty()
                ? "none"
                : plan.revisions().stream()
                        .filter(r -> r.service().kind().equals("campaign"))
                        .map(r -> words(r.entry()))
                        .collect(Collectors.joining("; "));
        return """
                KIT OF A LAYOUT

                %s
                SHA-256 of its document: %s
                Published by: %s

                layouts/     templates for both wings, station table, install sheet, test card to begin with
                devices/     solids to print and plates of twelve
                campaigns/   test cards and results
                records/     every revision involved as canonical JSON (RFC 8785), and its history (W3C PROV-JSON)
                photographs/ of these records
                CAUTIONS.txt and LICENCES.txt hold for every file.

                Results in this kit: %s.
                A later campaign makes another kit; the address of a kit names its campaigns.

                To check it: sha256sum -c manifest-sha256.txt
                The same layout with the same results gives the same bytes, so that two clubs can compare this file's
                SHA-256. Nothing in it is compressed, since compression is not the same everywhere.
                ro-crate-metadata.json describes it for programs (RO-Crate 1.1); kit.json is what another instance reads
                to take it in.
                """.formatted(words(layout), layout.sha256(), origins(plan), results);
    }

    private static String origins(KitPlan plan) {
        return String.join(
                "; ",
                new TreeSet<>(plan.revisions().stream()
                        .map(r -> line(r.entry().instance()) + " (" + r.entry().url() + ")")
                        .toList()));
    }

    private static String words(KitIndex.Entry e) {
        return line(e.name()) + " (" + e.plural() + "/" + e.slug() + " revision " + e.revision() + ")";
    }

    private static String line(@Nullable String text) {
        return Objects.requireNonNullElse(text, "").replaceAll("\\s+", " ").strip();
    }
}
