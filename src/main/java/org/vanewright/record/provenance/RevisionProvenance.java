package org.vanewright.record.provenance;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.ImportOrigin;
import org.vanewright.record.Licence;
import org.vanewright.record.RecordState;
import org.vanewright.record.RecordUse;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** The history of one revision as a PROV document: who drafted and published it, from what, and its figures' origins. */
public final class RevisionProvenance {
    private final ProvDocument prov = new ProvDocument();
    private final Revision<?> revision;
    private final String plural;
    private final String id;

    private RevisionProvenance(String plural, Revision<?> revision) {
        this.plural = plural;
        this.revision = revision;
        this.id = id(plural, revision.ref());
    }

    /**
     * The document, ready to be written as JSON.
     *
     * @param base address of the service, ending in a slash; names of records are resolved against it
     * @param plural of the kind of record, such as {@code airframes}
     */
    public static Map<String, Map<String, Object>> of(String base, String plural, Revision<?> revision) {
        RevisionProvenance provenance = new RevisionProvenance(plural, revision);
        provenance
                .prov
                .prefix("rec", base)
                .prefix("vw", base + "terms#")
                .prefix("dcterms", "http://purl.org/dc/terms/");
        provenance.revision();
        provenance.drafting();
        provenance.publication();
        provenance.withdrawal();
        provenance.origin();
        new FigureProvenance(provenance.prov, provenance.id)
                .add(revision.content().figureOrigins());
        return provenance.prov.parts();
    }

    private static String id(String plural, RevisionRef ref) {
        return "rec:" + plural + "/" + ref.slug() + "/revisions/" + ref.revision();
    }

    private void revision() {
        Licence licence = revision.standing().licence();
        prov.element("entity", id)
                .name("prov:type", "prov:Collection")
                .text("prov:label", revision.content().name())
                .number("vw:revision", revision.number())
                .text("vw:sha256", revision.sha256())
                .text("vw:state", revision.state().name())
                .text("vw:summary", revision.standing().summary())
                .typed("dcterms:license", licence == null ? null : licence.url(), "xsd:anyURI");
    }

    private void drafting() {
        String drafting = id + "#drafting";
        prov.element("activity", drafting)
                .time("prov:endTime", revision.createdAt())
                .text("prov:label", "Drafting");
        generated(id, drafting);
        String contributor =
                agent("contributor", revision.contributor(), revision.standing().contributorId() != null);
        prov.relation("wasAttributedTo").text("prov:entity", id).text("prov:agent", contributor);
        associated(drafting, contributor);
        prov.element("agent", "rec:service")
                .name("prov:type", "prov:SoftwareAgent")
                .text("prov:label", "Vanewright");
        associated(drafting, "rec:service");
        parent(drafting);
        revision.content().uses().forEach(use -> uses(drafting, use));
    }

    private void parent(String drafting) {
        RevisionRef from = revision.derivedFrom();
        if (from == null) {
            return;
        }
        String parent = entity(plural, from);
        used(drafting, parent);
        ProvDocument.Attributes derivation = derived(id, parent).text("prov:activity", drafting);
        if (revision.base() != null) {
            derivation.name("prov:type", "prov:Revision");
        }
    }

    private void uses(String drafting, RecordUse use) {
        String other = entity(use.plural(), use.ref());
        used(drafting, other);
        derived(id, other);
    }

    private void publication() {
        if (revision.standing().publishedAt() == null) {
            return;
        }
        String publication = id + "#publication";
        prov.element("activity", publication)
                .time("prov:startTime", revision.standing().publishedAt())
                .time("prov:endTime", revision.standing().publishedAt())
                .text("prov:label", "Review and publication");
        used(publication, id);
        String publisher = revision.standing().publishedBy();
        if (publisher != null) {
            associated(
                    publication,
                    agent("publisher", publisher, revision.standing().contributorId() != null));
        }
    }

    private void withdrawal() {
        if (revision.state() != RecordState.WITHDRAWN || revision.standing().closedAt() == null) {
            return;
        }
        String withdrawal = id + "#withdrawal";
        prov.element("activity", withdrawal)
                .time("prov:startTime", revision.standing().closedAt())
                .time("prov:endTime", revision.standing().closedAt())
                .text("prov:label", "Withdrawal")
                .text("vw:reason", revision.standing().reason());
        prov.relation("wasInvalidatedBy")
                .text("prov:entity", id)
                .text("prov:activity", withdrawal)
                .time("prov:time", revision.standing().closedAt());
        String who = revision.standing().closedBy();
        if (who != null) {
            associated(withdrawal, agent("withdrawer", who, true));
        }
    }

    /** Where it was published before it was imported; what happened there is told there. */
    private void origin() {
        ImportOrigin origin = revision.standing().origin();
        if (origin == null) {
            return;
        }
        prov.prefix("origin", origin.url() + "/");
        String there = "origin:" + plural + "/" + origin.slug() + "/revisions/" + origin.revision();
        String importing = id + "#import";
        prov.element("entity", there).text("prov:label", origin.instance()).number("vw:revision", origin.revision());
        prov.element("activity", importing)
                .time("prov:startTime", origin.importedAt())
                .time("prov:endTime", origin.importedAt())
                .text("prov:label", "Import from a kit");
        used(importing, there);
        prov.relation("alternateOf").text("prov:alternate1", id).text("prov:alternate2", there);
        associated(importing, agent("importer", origin.importedBy(), true));
    }

    private String agent(String role, @Nullable String name, boolean person) {
        String agent = id + "#" + role;
        ProvDocument.Attributes attributes = prov.element("agent", agent).text("prov:label", name);
        if (person) {
            attributes.name("prov:type", "prov:Person");
        }
        return agent;
    }

    private String entity(String kind, RevisionRef ref) {
        String other = id(kind, ref);
        prov.element("entity", other).number("vw:revision", ref.revision());
        return other;
    }

    private void generated(String entity, String activity) {
        prov.relation("wasGeneratedBy")
                .text("prov:entity", entity)
                .text("prov:activity", activity)
                .time("prov:time", revision.createdAt());
    }

    private void used(String activity, String entity) {
        prov.relation("used").text("prov:activity", activity).text("prov:entity", entity);
    }

    private void associated(String activity, String agent) {
        prov.relation("wasAssociatedWith").text("prov:activity", activity).text("prov:agent", agent);
    }

    private ProvDocument.Attributes derived(String entity, String from) {
        return prov.relation("wasDerivedFrom")
                .text("prov:generatedEntity", entity)
                .text("prov:usedEntity", from);
    }
}
