package org.vanewright.installsheet.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.context.request.WebRequest;
import org.vanewright.adhesive.AdhesiveDocument;
import org.vanewright.adhesive.AdhesiveService;
import org.vanewright.engineering.drawing.sheet.Paper;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.installsheet.InstallFacts;
import org.vanewright.installsheet.InstallSheets;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutService;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.GeneratedFile;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.Cautions;
import org.vanewright.printrun.PrintRunDocument;
import org.vanewright.printrun.PrintRunService;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;

/** The install sheet of a layout. */
@Controller
class InstallSheetFiles {
    private final LayoutService layouts;
    private final AdhesiveService adhesives;
    private final PrintRunService runs;
    private final InstallSheets sheets;
    private final Downloads downloads;
    private final Cautions cautions;

    InstallSheetFiles(
            LayoutService layouts,
            AdhesiveService adhesives,
            PrintRunService runs,
            InstallSheets sheets,
            Downloads downloads,
            Cautions cautions) {
        this.layouts = layouts;
        this.adhesives = adhesives;
        this.runs = runs;
        this.sheets = sheets;
        this.downloads = downloads;
        this.cautions = cautions;
    }

    /** {@code adhesive} and {@code run} are slugs of records here; what is not given is left to be filled in. */
    @GetMapping("/layouts/" + RecordPaths.SLUG + "/install-sheet.pdf")
    ResponseEntity<byte[]> pdf(@PathVariable("slug") String slug, HttpServletRequest asked, WebRequest request) {
        Query query = Query.of(asked);
        Revision<AdhesiveDocument> adhesive = adhesive(query);
        Revision<PrintRunDocument> run = run(query);
        query.throwIfAny();
        Integer number = query.revision();
        Revision<LayoutDocument> layout =
                number == null ? layouts.published(slug) : layouts.exactly(new RevisionRef(slug, number));
        String side = query.wing() == null ? "" : "-" + query.wing().name().toLowerCase(Locale.ROOT);
        String name = layout.slug() + "-r" + layout.number() + "-install-sheet" + side + ".pdf";
        String key = layout.contentKey() + " " + layout.ref() + " " + layout.isReleased() + " install sheet "
                + named(adhesive) + " " + named(run) + side + " " + query.paper();
        return downloads.send(
                request,
                new GeneratedFile(name, MediaType.APPLICATION_PDF, key, true, () -> {
                    InstallFacts facts = sheets.of(layout, adhesive, run, query.wing());
                    return InstallSheetPdf.of(facts, query.paper(), cautions.all(facts.invented()));
                }),
                number != null && run == null && (adhesive == null || query.adhesiveRevision() != null),
                adhesive == null || adhesive.isPublic() ? layout : adhesive);
    }

    private static String named(@Nullable Revision<?> revision) {
        return revision == null ? "none" : revision.slug() + " " + revision.number() + " " + revision.sha256();
    }

    private @Nullable Revision<PrintRunDocument> run(Query query) {
        String slug = query.run();
        if (slug == null) {
            return null;
        }
        Optional<Revision<PrintRunDocument>> found = runs.latest(slug);
        Checks checks = new Checks();
        checks.require(found.isPresent(), "run", slug, "the slug of a published print run");
        query.form().refuse(checks.problems());
        return found.orElse(null);
    }

    /** Who may not see the adhesive gets the answer of one who names none that exists. */
    private @Nullable Revision<AdhesiveDocument> adhesive(Query query) {
        String slug = query.adhesive();
        if (slug == null) {
            return null;
        }
        Integer exact = query.adhesiveRevision();
        Optional<Revision<AdhesiveDocument>> found =
                exact == null ? adhesives.latest(slug) : adhesives.find(new RevisionRef(slug, exact));
        Checks checks = new Checks();
        checks.require(found.isPresent(), "adhesive", slug, "the slug of a published adhesive");
        query.form().refuse(checks.problems());
        return found.orElse(null);
    }

    /** What an address asks for. */
    private record Query(
            Form form,
            @Nullable Integer revision,
            @Nullable String adhesive,
            @Nullable Integer adhesiveRevision,
            @Nullable String run,
            @Nullable Wing wing,
            Paper paper) {
        static Query of(HttpServletRequest request) {
            Form form = Form.posted(request.getParameterMap());
            Checks checks = new Checks();
            Integer revision = whole(form, "revision", checks);
            Integer adhesiveRevision = whole(form, "adhesiveRevision", checks);
            Paper paper = form.choice("paper", Paper.class);
            checks.require(paper != Paper.ROLL, "paper", paper, "A4, A3, LETTER or TABLOID");
            Wing wing = form.choice("side", Wing.class);
            form.refuse(checks.problems());
            return new Query(
                    form,
                    revision,
                    form.text("adhesive"),
                    adhesiveRevision,
                    form.text("run"),
                    wing,
                    paper == null ? Paper.A4 : paper);
        }

        private static @Nullable Integer whole(Form form, String field, Checks checks) {
            String typed = form.text(field);
            boolean ok = typed == null || typed.matches("[1-9][0-9]{0,5}");
            checks.require(ok, field, typed, "a whole number from 1 to 999999");
            return typed == null || !ok ? null : Integer.valueOf(typed);
        }

        /** @throws InvalidInputException with every parameter that cannot be used */
        void throwIfAny() {
            if (form.hasProblems()) {
                throw new InvalidInputException(form.problems());
            }
        }
    }
}
