package org.vanewright.study.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.ModelAndView;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceService;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutService;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.record.Draft;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.RecordPaths;
import org.vanewright.study.Guidance;
import org.vanewright.study.SuggestedRow;
import org.vanewright.study.Suggester;

/** Looks for a row that meets recommendations, and makes a draft of one. */
@Controller
class SuggestionPages {
    private final LayoutService layouts;
    private final DeviceService devices;
    private final Suggester suggester;
    private final Guidance guidance;

    SuggestionPages(LayoutService layouts, DeviceService devices, Suggester suggester, Guidance guidance) {
        this.layouts = layouts;
        this.devices = devices;
        this.suggester = suggester;
        this.guidance = guidance;
    }

    @GetMapping("/layouts/" + RecordPaths.REVISION + "/suggestions")
    String suggestions(
            @PathVariable("slug") String slug,
            @PathVariable("number") int number,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Revision<LayoutDocument> layout = layouts.exactly(new RevisionRef(slug, number));
        SuggestionForm asked = SuggestionForm.of(request, guidance.all());
        Form form = asked.form();
        if (!form.hasProblems()) {
            try {
                model.addAttribute("suggestions", suggester.of(layout, asked.query()));
            } catch (InvalidInputException e) {
                StudyLooks.refuse(e.problems(), form, request, model);
            }
        }
        if (form.isRefused()) {
            response.setStatus(HttpServletResponse.SC_BAD_REQUEST);
        }
        model.addAttribute("form", form);
        model.addAttribute("revision", layout);
        model.addAttribute("layout", layout.content());
        model.addAttribute("rows", StudyPages.rows(layout.content()));
        model.addAttribute("choices", asked.choices(guidance.all()));
        model.addAttribute("devices", asked.devices(suggester.devices()));
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

    private LayoutDocument changed(LayoutDocument layout, Form form) {
        int index = SuggestionForm.row(form);
        String device = form.text("device");
        Integer revision = StudyForm.whole(form, "deviceRevision", 1);
        Double chord = form.number("chordFraction");
        Double pitch = form.number("pitchMm");
        Double angle = form.number("angleDeg");
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
        RevisionRef ref = new RevisionRef(device, revision);
        Revision<DeviceDocument> found = devices.find(ref)
                .orElseThrow(() -> new InvalidInputException(List.of(
                        new FieldProblem("device", device + " revision " + revision, "an existing device revision"))));
        return new SuggestedRow(found, chord, pitch, angle).in(layout, index);
    }
}
