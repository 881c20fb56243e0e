package org.vanewright.study.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.vane.Recommendation;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutService;
import org.vanewright.layout.RowDocument;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.record.Draft;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;
import org.vanewright.study.Guidance;
import org.vanewright.study.Suggester;
import org.vanewright.study.SuggestionQuery;

/** Looks for a row that meets recommendations, and makes a draft of one. */
@Controller
class SuggestionPages {
    private static final String USED = "use.";
    private static final double FRONT = 0.04;
    private static final double REAR = 0.2;

    private final LayoutService layouts;
    private final Suggester suggester;
    private final Guidance guidance;

    SuggestionPages(LayoutService layouts, Suggester suggester, Guidance guidance) {
        this.layouts = layouts;
        this.suggester = suggester;
        this.guidance = guidance;
    }

    /** A recommendation with the name of its tick. */
    public record Choice(Recommendation recommendation, String field) {}

    @GetMapping("/layouts/" + RecordPaths.REVISION + "/suggestions")
    String suggestions(
            @PathVariable("slug") String slug,
            @PathVariable("number") int number,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Revision<LayoutDocument> layout = layouts.exactly(new RevisionRef(slug, number));
        Form form = Form.posted(request.getParameterMap());
        Set<String> used = used(form);
        try {
            SuggestionQuery query = new SuggestionQuery(
                    row(form),
                    number(form, "leastFraction", FRONT),
                    number(form, "mostFraction", REAR),
                    used,
                    form.number("massKg"),
                    form.number("pressureAltitudeFt"));
            if (!form.hasProblems()) {
                model.addAttribute("suggestions", suggester.of(layout, query));
            }
        } catch (InvalidInputException e) {
            form.refuse(e.problems());
        }
        if (form.hasProblems()) {
            response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
        }
        for (Recommendation each : guidance.all()) {
            if (used.isEmpty() || used.contains(each.id())) {
                form.put(field(each), (Object) "true");
            }
        }
        putIfAbsent(form, "row", "0");
        putIfAbsent(form, "leastFraction", String.valueOf(FRONT));
        putIfAbsent(form, "mostFraction", String.valueOf(REAR));
        model.addAttribute("form", form);
        model.addAttribute("revision", layout);
        model.addAttribute("layout", layout.content());
        model.addAttribute(
                "choices",
                guidance.all().stream().map(r -> new Choice(r, field(r))).toList());
        return "study/suggestions";
    }

    /** A draft of a new layout like this one, with that row in place of its own. */
    @PostMapping("/layouts/" + RecordPaths.REVISION + "/suggestions")
    ModelAndView draft(
            @PathVariable("slug") String slug, @PathVariable("number") int number, HttpServletRequest request) {
        layouts.drafts().requireAuthor();
        Form form = Form.posted(request.getParameterMap());
        RevisionRef ref = new RevisionRef(slug, number);
        // Read first, so that what cannot be read leaves no draft behind.
        LayoutDocument changed = changed(layouts.exactly(ref).content(), form);
        Draft<LayoutDocument> draft = layouts.drafts().startFrom(ref);
        layouts.drafts().save(draft.id(), draft.version(), changed, null);
        return SeeOther.to("/layouts/drafts/" + draft.id());
    }

    private static LayoutDocument changed(LayoutDocument layout, Form form) {
        int index = row(form);
        String device = form.text("device");
        Integer revision = StudyForm.whole(form, "deviceRevision", 1);
        Double chord = form.number("chordFraction");
        if (form.hasProblems()) {
            throw new InvalidInputException(form.problems());
        }
        if (index >= layout.rows().size()) {
            throw new InvalidInputException(
                    new FieldProblem("row", String.valueOf(index), "a row of the layout, counted from 0"));
        }
        if (device == null || revision == null || chord == null) {
            throw new InvalidInputException(new FieldProblem("device", "missing", "a device and a place for it"));
        }
        List<RowDocument> rows = new ArrayList<>(layout.rows());
        rows.set(index, with(rows.get(index), new RevisionRef(device, revision), chord, form));
        return new LayoutDocument(
                layout.name(),
                layout.description(),
                layout.airframe(),
                rows,
                layout.invented(),
                layout.provenance(),
                layout.photographs());
    }

    private static RowDocument with(RowDocument row, RevisionRef device, double chordFraction, Form form) {
        Double angle = form.number("angleDeg");
        boolean toeOut = row.angleDeg() != null && row.angleDeg() < 0;
        return new RowDocument(
                row.name(),
                device,
                row.surface(),
                row.side(),
                row.fromMm(),
                row.toMm(),
                chordFraction,
                null,
                row.arrangement(),
                angle == null ? row.angleDeg() : Double.valueOf(toeOut ? -angle : angle),
                form.number("pitchMm"),
                row.pairGapMm(),
                row.wings(),
                row.onConflict(),
                row.register(),
                row.registerChordFraction());
    }

    private Set<String> used(Form form) {
        return guidance.all().stream()
                .filter(r -> form.text(field(r)) != null)
                .map(Recommendation::id)
                .collect(Collectors.toSet());
    }

    /** Name of its tick; names of fields have no hyphens. */
    private static String field(Recommendation recommendation) {
        return USED + recommendation.id().replace("-", "");
    }

    private static int row(Form form) {
        Integer row = StudyForm.whole(form, "row", 0);
        return row == null ? 0 : row;
    }

    private static double number(Form form, String field, double otherwise) {
        Double given = form.number(field);
        return given == null ? otherwise : given;
    }

    private static void putIfAbsent(Form form, String field, @Nullable String value) {
        if (form.text(field) == null) {
            form.put(field, (Object) value);
        }
    }
}
