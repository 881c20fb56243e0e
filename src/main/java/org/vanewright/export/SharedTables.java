package org.vanewright.export;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.ImportOrigin;
import org.vanewright.record.Licence;
import org.vanewright.record.RecordState;
import org.vanewright.record.Revision;
import org.vanewright.record.photograph.PhotographUse;
import org.vanewright.record.provenance.FigureOrigin;

/** The tables that all kinds of records have in common. */
final class SharedTables {
    private static final List<String> REVISION = List.of("kind", "slug", "revision");

    /** A revision with where its document stands. */
    record Entry(String kind, Revision<?> revision, String document, int line) {
        @Nullable
        ImportOrigin origin() {
            return revision.standing().origin();
        }

        boolean withdrawn() {
            return revision.state() == RecordState.WITHDRAWN;
        }
    }

    /** Something that a revision has several of. */
    record Part<R>(String kind, Revision<?> revision, int number, R item) {}

    /** A photograph as a file of the export. */
    record Photograph(String sha256, String path, int bytes) {}

    static final Table<Entry> REVISIONS = Table.of(
            "revisions",
            "Every revision that is or was published, of every kind; a withdrawn one stays readable with its reason",
            REVISION,
            new Columns<Entry>()
                    .text("kind", "Kind of record", Entry::kind)
                    .text(
                            "slug",
                            "Name of the record in addresses",
                            e -> e.revision().slug())
                    .whole(
                            "revision",
                            "Number of the revision",
                            e -> e.revision().number())
                    .choice(
                            "state",
                            "PUBLISHED is the current one, SUPERSEDED an earlier one, WITHDRAWN not to be used",
                            e -> e.revision().state())
                    .text(
                            "name",
                            "What people call it",
                            e -> e.revision().content().name())
                    .yesNo(
                            "invented",
                            "Whether it is demonstration data",
                            e -> e.revision().content().invented())
                    .text(
                            "sha256",
                            "SHA-256 of its document as it is hashed",
                            e -> e.revision().sha256())
                    .text("document_path", "File that holds its document", Entry::document)
                    .whole("document_line", "Line of that file, from 1", Entry::line)
                    .text(
                            "contributor",
                            "Name, at that time, of who submitted it",
                            e -> e.revision().contributor())
                    .time(
                            "submitted_at",
                            "When it was submitted, to the second",
                            e -> e.revision().createdAt())
                    .time(
                            "published_at",
                            "When it became public here, to the second",
                            e -> e.revision().standing().publishedAt())
                    .text("licence", "SPDX identifier; empty where none is stated", e -> spdx(e.revision()))
                    .text(
                            "derived_from_slug",
                            "Record of the same kind that it was made from",
                            e -> e.revision().derivedFrom() == null
                                    ? null
                                    : e.revision().derivedFrom().slug())
                    .whole(
                            "derived_from_revision",
                            "Its revision",
                            e -> e.revision().derivedFrom() == null
                                    ? null
                                    : (Integer) e.revision().derivedFrom().revision())
                    .time(
                            "withdrawn_at",
                            "When it was withdrawn, to the second",
                            e -> e.withdrawn() ? e.revision().standing().closedAt() : null)
                    .text(
                            "withdrawn_reason",
                            "Why it was withdrawn",
                            e -> e.withdrawn() ? e.revision().standing().reason() : null)
                    .text(
                            "origin_instance",
                            "Name of the instance it was imported from",
                            e -> e.origin() == null ? null : e.origin().instance())
                    .text(
                            "origin_url",
                            "Address of that instance",
                            e -> e.origin() == null ? null : e.origin().url())
                    .text(
                            "origin_slug",
                            "Name of the record there; its document names records as there",
                            e -> e.origin() == null ? null : e.origin().slug())
                    .whole(
                            "origin_revision",
                            "Number of the revision there",
                            e -> e.origin() == null
                                    ? null
                                    : (Integer) e.origin().revision())
                    .refers(List.of("licence"), "licences", List.of("spdx")));

    static final Table<Licence> LICENCES = Table.of(
            "licences",
            "Licences that contributions may carry",
            List.of("spdx"),
            new Columns<Licence>()
                    .text("spdx", "Identifier in the SPDX License List", Licence::spdx)
                    .text("label", "What people call it", Licence::label)
                    .text("url", "Where it stands", Licence::url)
                    .text("meaning", "In one sentence", Licence::meaning));

    static final Table<Part<FigureOrigin>> ORIGINS = Table.of(
            "figure_origins",
            "How figures of a document are known",
            List.of("kind", "slug", "revision", "statement"),
            SharedTables.<FigureOrigin>part("statement")
                    .text(
                            "figures",
                            "Path in the document, which covers everything beneath",
                            p -> p.item().figures())
                    .choice("origin", "How they are known", p -> p.item().origin())
                    .text(
                            "by",
                            "Who measured, calculated or estimated them",
                            p -> p.item().by())
                    .day("on", "The day", p -> p.item().on())
                    .text(
                            "instrument",
                            "What they were measured with",
                            p -> p.item().instrument())
                    .text(
                            "citation",
                            "Author, title, year and page",
                            p -> p.item().citation())
                    .text(
                            "note",
                            "The method, and whatever else helps to judge them",
                            p -> p.item().note()));

    static final Table<Part<PhotographUse>> PHOTOGRAPH_USES = Table.of(
            "photograph_uses",
            "Which revisions show which photographs",
            List.of("kind", "slug", "revision", "photograph"),
            SharedTables.<PhotographUse>part("photograph")
                    .text("sha256", "SHA-256 of the photograph", p -> p.item().sha256())
                    .text("caption", "What stands beneath it", p -> p.item().caption())
                    .text(
                            "alt",
                            "What it shows, for whoever does not see it",
                            p -> p.item().alt())
                    .refers(List.of("sha256"), "photographs", List.of("sha256")));

    static final Table<Photograph> PHOTOGRAPHS = Table.of(
            "photographs",
            "Photographs that public revisions show; their licence is that of the revision",
            List.of("sha256"),
            new Columns<Photograph>()
                    .text("sha256", "SHA-256 of the file", Photograph::sha256)
                    .text("path", "The file", Photograph::path)
                    .whole("size_bytes", "Its size", Photograph::bytes));

    private SharedTables() {}

    static List<Table<?>> all() {
        return List.of(REVISIONS, LICENCES, ORIGINS, PHOTOGRAPHS, PHOTOGRAPH_USES);
    }

    private static <R> Columns<Part<R>> part(String number) {
        return new Columns<Part<R>>()
                .text("kind", "Kind of record", Part::kind)
                .text(
                        "slug",
                        "Name of the record in addresses",
                        p -> p.revision().slug())
                .whole("revision", "Number of the revision", p -> p.revision().number())
                .whole(number, "Its number within the revision, from 1", Part::number)
                .refers(REVISION, "revisions", REVISION);
    }

    private static @Nullable String spdx(Revision<?> revision) {
        Licence licence = revision.standing().licence();
        return licence == null ? null : licence.spdx();
    }
}
