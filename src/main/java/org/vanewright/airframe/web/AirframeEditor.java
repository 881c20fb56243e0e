package org.vanewright.airframe.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.AirframeRules;
import org.vanewright.airframe.AirframeService;
import org.vanewright.platform.EditingPolicy;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.FormAction;
import org.vanewright.platform.form.FormDifference;
import org.vanewright.platform.page.Units;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionConflictException;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.Contributors;
import org.vanewright.record.web.RecordPaths;

/** Describing and changing an airframe. */
@Controller
class AirframeEditor {
    private static final String EDIT = "/airframes/" + RecordPaths.SLUG + "/edit";

    private final AirframeService airframes;
    private final EditingPolicy editing;

    AirframeEditor(AirframeService airframes, EditingPolicy editing) {
        this.airframes = airframes;
        this.editing = editing;
    }

    @GetMapping("/airframes/new")
    String blank(@RequestAttribute("units") Units units, Model model) {
        editing.requireOpen();
        return page(AirframeForms.blank(units.system()), null, List.of(), model);
    }

    @GetMapping(EDIT)
    String edit(@PathVariable("slug") String slug, @RequestAttribute("units") Units units, Model model) {
        editing.requireOpen();
        Revision<AirframeDocument> base = airframes.published(slug);
        Form form = AirframeForms.of(base.content(), units.system());
        return page(form, base, AirframeDrawings.surfaces(base.content(), units), model);
    }

    @PostMapping("/airframes/new")
    String create(
            @RequestParam(name = "action", defaultValue = "check") String action,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        editing.requireOpen();
        Form form = posted(request, action);
        AirframeDocument typed = AirframeForms.read(form, null);
        if (!FormAction.changesList(action)) {
            form.refuse(AirframeRules.check(typed));
        }
        if (FormAction.saves(action) && !form.hasProblems()) {
            Revision<AirframeDocument> created = airframes.create(typed, Contributors.OPEN_EDITING, null);
            return "redirect:/airframes/" + created.slug();
        }
        return again(form, null, typed, action, response, model);
    }

    @PostMapping(EDIT)
    String revise(
            @PathVariable("slug") String slug,
            @RequestParam("base") int base,
            @RequestParam(name = "action", defaultValue = "check") String action,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        editing.requireOpen();
        Revision<AirframeDocument> started = airframes.exactly(new RevisionRef(slug, base));
        Form form = posted(request, action);
        AirframeDocument typed = AirframeForms.read(form, started.content());
        if (!FormAction.changesList(action)) {
            form.refuse(AirframeRules.check(typed));
        }
        if (FormAction.saves(action) && !form.hasProblems()) {
            try {
                airframes.revise(started.ref(), typed, Contributors.OPEN_EDITING);
                return "redirect:/airframes/" + slug;
            } catch (RevisionConflictException e) {
                return conflict(form, started, airframes.published(slug), typed, response, model);
            }
        }
        return again(form, started, typed, action, response, model);
    }

    /** What the form's drawing and errors would be, for the page to show beside it. */
    @PostMapping("/airframes/preview")
    String preview(HttpServletRequest request, Model model) {
        Form form = posted(request, "check");
        AirframeDocument typed = AirframeForms.read(form, null);
        form.refuse(AirframeRules.check(typed));
        model.addAttribute("form", form);
        model.addAttribute("surfaces", AirframePreview.surfaces(typed, new Units(form.units())));
        return "airframe/preview :: preview";
    }

    private static Form posted(HttpServletRequest request, String action) {
        Form form = Form.posted(request.getParameterMap());
        UploadedSections.take(request, form);
        AirframeFormLists.limit(form);
        AirframeFormLists.apply(form, action);
        return form;
    }

    private String conflict(
            Form form,
            Revision<AirframeDocument> started,
            Revision<AirframeDocument> current,
            AirframeDocument typed,
            HttpServletResponse response,
            Model model) {
        response.setStatus(HttpServletResponse.SC_CONFLICT);
        model.addAttribute("conflict", current);
        model.addAttribute(
                "differences",
                FormDifference.between(
                        AirframeForms.of(started.content(), form.units()),
                        AirframeForms.of(current.content(), form.units()),
                        AirframeForms.of(typed, form.units())));
        return page(form, current, AirframePreview.surfaces(typed, new Units(form.units())), model);
    }

    private String again(
            Form form,
            @Nullable Revision<AirframeDocument> base,
            AirframeDocument typed,
            String action,
            HttpServletResponse response,
            Model model) {
        if (FormAction.saves(action)) {
            response.setStatus(FormAction.REFUSED);
        }
        return page(form, base, AirframePreview.surfaces(typed, new Units(form.units())), model);
    }

    private static String page(
            Form form, @Nullable Revision<AirframeDocument> base, List<SurfaceView> surfaces, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("base", base);
        model.addAttribute("surfaces", surfaces);
        model.addAttribute("choices", Objects.requireNonNull(AirframeChoices.ALL));
        return "airframe/edit";
    }
}
