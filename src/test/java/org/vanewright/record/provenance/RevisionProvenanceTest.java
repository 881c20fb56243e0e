package org.vanewright.record.provenance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.openprovenance.prov.json.ProvDeserialiser;
import org.openprovenance.prov.model.Activity;
import org.openprovenance.prov.model.Agent;
import org.openprovenance.prov.model.Document;
import org.openprovenance.prov.model.Entity;
import org.openprovenance.prov.model.HadMember;
import org.openprovenance.prov.model.QualifiedName;
import org.openprovenance.prov.model.StatementOrBundle;
import org.openprovenance.prov.model.Used;
import org.openprovenance.prov.model.WasAssociatedWith;
import org.openprovenance.prov.model.WasAttributedTo;
import org.openprovenance.prov.model.WasDerivedFrom;
import org.openprovenance.prov.model.WasGeneratedBy;
import org.openprovenance.prov.model.WasInvalidatedBy;
import org.openprovenance.prov.vanilla.ProvFactory;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.Licence;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordState;
import org.vanewright.record.RecordUse;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.Standing;

/** Read back by ProvToolbox, a reader of PROV-JSON that is not ours. */
class RevisionProvenanceTest {
    private static final String BASE = "https://club.example/";
    private static final String ID = BASE + "layouts/high-wing/revisions/2";
    private static final Instant SUBMITTED = Instant.parse("2026-05-17T10:15:30Z");
    private static final Instant PUBLISHED = Instant.parse("2026-05-18T08:00:00.123456Z");

    record Thing(String name, boolean invented, List<FigureOrigin> provenance) implements RecordContent {
        @Override
        public List<FigureGroup> figureGroups() {
            return List.of(new FigureGroup("rows[0]", "Row 1"));
        }

        @Override
        public List<RecordUse> uses() {
            return List.of(new RecordUse("devices", new RevisionRef("vane", 3)));
        }
    }

    private static final List<FigureOrigin> ORIGINS = List.of(
            new FigureOrigin("rows[0]", Origin.MEASURED, "A \"member\"", "2026-05-01", "Steel rule", null, "Twice"),
            new FigureOrigin("rows[0].pitchMm", Origin.LITERATURE, null, null, null, "A book, 1950", null));

    private static Revision<Thing> revision(RecordState state, @Nullable RevisionRef from, @Nullable Instant closed) {
        Standing standing = new Standing(
                "person-1",
                Licence.CC_BY_4_0,
                "New pitch",
                "draft-1",
                PUBLISHED,
                "A maintainer",
                closed,
                closed == null ? null : "A steward",
                closed == null ? null : "Wrong chord");
        return new Revision<>(
                "high-wing",
                2,
                state,
                new Thing("High wing", true, ORIGINS),
                "ab".repeat(32),
                "A contributor",
                SUBMITTED,
                from,
                standing);
    }

    private static String json(Revision<?> revision) {
        return new CanonicalJson().write(RevisionProvenance.of(BASE, "layouts", revision));
    }

    private static List<StatementOrBundle> read(String json) throws IOException {
        Document document = new ProvDeserialiser(new ProvFactory())
                .deserialiseDocument(new ByteArrayInputStream(json.getBytes(StandardCharsets.UTF_8)));
        return document.getStatementOrBundle();
    }

    private static <S> List<S> all(List<StatementOrBundle> statements, Class<S> type) {
        return statements.stream().filter(type::isInstance).map(type::cast).toList();
    }

    private static String uri(QualifiedName name) {
        return Objects.requireNonNull(name).getUri();
    }

    @Test
    void anOutsideReaderFindsWhoMadeTheRevisionFromWhat() throws IOException {
        List<StatementOrBundle> prov =
                read(json(revision(RecordState.PUBLISHED, new RevisionRef("high-wing", 1), null)));

        assertThat(all(prov, Entity.class))
                .extracting(e -> uri(e.getId()))
                .contains(ID, BASE + "layouts/high-wing/revisions/1", BASE + "devices/vane/revisions/3");
        assertThat(all(prov, WasGeneratedBy.class))
                .filteredOn(g -> uri(g.getEntity()).equals(ID))
                .singleElement()
                .satisfies(g -> {
                    assertThat(uri(g.getActivity())).isEqualTo(ID + "#drafting");
                    assertThat(g.getTime().toGregorianCalendar().toInstant()).isEqualTo(SUBMITTED);
                });
        assertThat(all(prov, WasAttributedTo.class))
                .filteredOn(a -> uri(a.getEntity()).equals(ID))
                .extracting(a -> uri(a.getAgent()))
                .containsExactly(ID + "#contributor");
        assertThat(all(prov, WasAssociatedWith.class))
                .extracting(a -> uri(a.getActivity()) + " " + uri(a.getAgent()))
                .contains(
                        ID + "#drafting " + ID + "#contributor",
                        ID + "#drafting " + BASE + "service",
                        ID + "#publication " + ID + "#publisher");
        assertThat(all(prov, Used.class))
                .extracting(u -> uri(u.getActivity()) + " " + uri(u.getEntity()))
                .contains(
                        ID + "#drafting " + BASE + "layouts/high-wing/revisions/1",
                        ID + "#drafting " + BASE + "devices/vane/revisions/3",
                        ID + "#publication " + ID);
        assertThat(all(prov, Agent.class))
                .flatExtracting(Agent::getLabel)
                .extracting(label -> label.getValue())
                .contains("A contributor", "A maintainer", "Vanewright", "A \"member\"");
    }

    @Test
    void theNextRevisionIsARevisionOfTheOneBeforeAndAStartFromAnotherIsNot() throws IOException {
        assertThat(derivation(new RevisionRef("high-wing", 1))).containsExactly("http://www.w3.org/ns/prov#Revision");
        assertThat(derivation(new RevisionRef("other", 4))).isEmpty();
    }

    private static List<String> derivation(RevisionRef from) throws IOException {
        return all(read(json(revision(RecordState.PUBLISHED, from, null))), WasDerivedFrom.class).stream()
                .filter(d -> uri(d.getUsedEntity()).endsWith(from.slug() + "/revisions/" + from.revision()))
                .flatMap(d -> d.getType().stream())
                .map(type -> uri((QualifiedName) type.getValue()))
                .toList();
    }

    @Test
    void everyStatedOriginIsAnEntityWithItsInstrumentAndSource() throws IOException {
        List<StatementOrBundle> prov = read(json(revision(RecordState.PUBLISHED, null, null)));
        String row = ID + "#figures/rows%5B0%5D";

        assertThat(all(prov, HadMember.class))
                .extracting(
                        m -> uri(m.getCollection()) + " " + uri(m.getEntity().get(0)))
                .containsExactlyInAnyOrder(ID + " " + row, ID + " " + row + ".pitchMm");
        assertThat(all(prov, Used.class))
                .extracting(u -> uri(u.getActivity()) + " " + uri(u.getEntity()))
                .contains(row + "/measured " + row + "/instrument");
        assertThat(all(prov, WasDerivedFrom.class))
                .filteredOn(d -> uri(d.getGeneratedEntity()).equals(row + ".pitchMm"))
                .singleElement()
                .satisfies(
                        d -> assertThat(uri((QualifiedName) d.getType().get(0).getValue()))
                                .isEqualTo("http://www.w3.org/ns/prov#PrimarySource"));
        assertThat(all(prov, Activity.class)).extracting(a -> uri(a.getId())).contains(row + ".pitchMm/literature");
    }

    @Test
    void aWithdrawalEndsTheRevision() throws IOException {
        List<StatementOrBundle> prov =
                read(json(revision(RecordState.WITHDRAWN, null, Instant.parse("2026-06-01T00:00:00Z"))));

        assertThat(all(prov, WasInvalidatedBy.class))
                .extracting(w -> uri(w.getEntity()) + " " + uri(w.getActivity()))
                .containsExactly(ID + " " + ID + "#withdrawal");
    }

    /** Sections 2 and 3 of the submission, from memory: what stands at the top, and that relations name what is there. */
    @Test
    @SuppressWarnings("unchecked") // a document of maps
    void everyPartIsOneOfTheStandardAndEveryNameIsDefined() {
        Map<String, Map<String, Object>> prov = RevisionProvenance.of(
                BASE, "layouts", revision(RecordState.WITHDRAWN, new RevisionRef("other", 4), PUBLISHED));
        Set<String> elements = Set.of("entity", "activity", "agent");
        Set<String> defined = elements.stream()
                .flatMap(kind -> Objects.requireNonNull(prov.get(kind)).keySet().stream())
                .collect(Collectors.toSet());

        assertThat(prov.keySet())
                .containsExactlyInAnyOrder(
                        "prefix",
                        "entity",
                        "activity",
                        "agent",
                        "wasGeneratedBy",
                        "wasAttributedTo",
                        "wasAssociatedWith",
                        "used",
                        "wasDerivedFrom",
                        "wasInvalidatedBy",
                        "hadMember");
        assertThat(defined).allMatch(name -> name.startsWith("rec:"));
        prov.forEach((kind, things) -> {
            if (kind.startsWith("was") || kind.equals("used") || kind.equals("hadMember")) {
                things.forEach((id, thing) -> {
                    assertThat(id).startsWith("_:");
                    ((Map<String, Object>) thing).forEach((role, value) -> {
                        if (!role.equals("prov:time") && !role.equals("prov:type")) {
                            assertThat(defined).as(kind + " " + role).contains((String) value);
                        }
                    });
                });
            }
        });
    }

    @Test
    void theSameRevisionGivesTheSameBytes() {
        Revision<Thing> revision = revision(RecordState.PUBLISHED, null, null);

        assertThat(json(revision)).isEqualTo(json(revision)).contains("\"vw:sha256\":\"" + "ab".repeat(32) + "\"");
    }
}
