package org.vanewright.record.provenance;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.springframework.web.util.UriUtils;

/** One entity for each group of figures whose origin is stated, with the activity, instrument and source behind it. */
final class FigureProvenance {
    private final ProvDocument prov;
    private final String revision;

    FigureProvenance(ProvDocument prov, String revision) {
        this.prov = prov;
        this.revision = revision;
    }

    void add(FigureOrigins origins) {
        for (FigureOrigin stated : origins.stated()) {
            String path = stated.figures();
            Origin origin = stated.origin();
            if (path != null && origin != null) {
                // Brackets may not stand in a qualified name (PROV-N, 3.7.1); percent signs may.
                String figures = revision + "#figures/" + UriUtils.encode(path, StandardCharsets.UTF_8);
                prov.element("entity", figures)
                        .text("prov:label", origins.words(path))
                        .text("vw:path", path)
                        .text("vw:origin", origin.name());
                prov.relation("hadMember").text("prov:collection", revision).text("prov:entity", figures);
                finding(figures, origin, stated);
                source(figures, stated);
            }
        }
    }

    private void finding(String figures, Origin origin, FigureOrigin stated) {
        String activity = figures + "/" + origin.name().toLowerCase(Locale.ROOT).replace('_', '-');
        prov.element("activity", activity)
                .text("prov:label", origin.label())
                .typed("vw:day", stated.on(), "xsd:date")
                .text("vw:note", stated.note());
        prov.relation("wasGeneratedBy").text("prov:entity", figures).text("prov:activity", activity);
        if (given(stated.by())) {
            String agent = figures + "/by";
            prov.element("agent", agent).text("prov:label", stated.by());
            prov.relation("wasAssociatedWith").text("prov:activity", activity).text("prov:agent", agent);
            prov.relation("wasAttributedTo").text("prov:entity", figures).text("prov:agent", agent);
        }
        if (given(stated.instrument())) {
            String instrument = figures + "/instrument";
            prov.element("entity", instrument)
                    .name("prov:type", "vw:Instrument")
                    .text("prov:label", stated.instrument());
            prov.relation("used").text("prov:activity", activity).text("prov:entity", instrument);
        }
    }

    private void source(String figures, FigureOrigin stated) {
        if (given(stated.citation())) {
            String source = figures + "/source";
            prov.element("entity", source).text("dcterms:bibliographicCitation", stated.citation());
            prov.relation("wasDerivedFrom")
                    .text("prov:generatedEntity", figures)
                    .text("prov:usedEntity", source)
                    .name("prov:type", "prov:PrimarySource");
        }
    }

    private static boolean given(@Nullable String text) {
        return text != null && !text.isEmpty();
    }
}
