package org.vanewright.layout.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestAttribute;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.layout.LayoutRules;
import org.vanewright.layout.LayoutService;
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

/** Laying out rows and changing a layout. */
@Controller
class LayoutEditor {
    private static final String ADD_ROW = "add rows";
    private static final String REMOVE_ROW = "remove rows\\[(\\d{1,2})]";
    private static final String EDIT = "/layouts/" + RecordPaths.SLUG + "/edit";

    private final LayoutService layouts;
    private final LayoutFormPages pages;
    private final EditingPolicy editing;

    LayoutEditor(LayoutService layouts, LayoutFormPages pages, EditingPolicy editing) {
        this.layouts = layouts;
        this.pages = pages;
        this.editing = editing;
    }

    @GetMapping("/layouts/new")
    String blank(
            @RequestParam(name = "airframe", required = false) @Nullable String airframe,
            @RequestAttribute("units") Units units,
            Model model) {
        editing.requireOpen();
        return pages.page(pages.blank(units, airframe), null, Optional.empty(), model);
    }

    @GetMapping(EDIT)
    String edit(@PathVariable("slug") String slug, @RequestAttribute("units") Units units, Model model) {
        editing.requireOpen();
        Revision<LayoutDocument> base = layouts.published(slug);
        Form form = LayoutForms.of(base.content(), units.system());
        return pages.page(form, base, pages.plan(base.content()), model);
    }

    @PostMapping("/layouts/new")
    String create(
            @RequestParam(name = "action", defaultValue = "check") String action,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        editing.requireOpen();
        Form form = posted(request, action);
        LayoutDocument typed = LayoutForms.read(form, false);
        Optional<LayoutPlan> plan = planned(form, typed, action);
        if (FormAction.saves(action) && plan.isPresent()) {
            return "redirect:/layouts/"
                    + layouts.create(typed, Contributors.OPEN_EDITING, null).slug();
        }
        return again(form, null, plan, action, response, model);
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
        Revision<LayoutDocument> started = layouts.exactly(new RevisionRef(slug, base));
        Form form = posted(request, action);
        LayoutDocument typed = LayoutForms.read(form, started.content().invented());
        Optional<LayoutPlan> plan = planned(form, typed, action);
        if (FormAction.saves(action) && plan.isPresent()) {
            try {
                layouts.revise(started.ref(), typed, Contributors.OPEN_EDITING);
                return "redirect:/layouts/" + slug;
            } catch (RevisionConflictException e) {
                return conflict(form, started, plan, response, model);
            }
        }
        return again(form, started, plan, action, response, model);
    }

    /** What the form's drawing and errors would be, for the page to show beside it. */
    @PostMapping("/layouts/preview")
    String preview(HttpServletRequest request, Model model) {
        Form form = posted(request, "check");
        pages.preview(form, pages.check(form, LayoutForms.read(form, false)), model);
        model.addAttribute("form", form);
        return "layout/preview :: preview";
    }

    private Optional<LayoutPlan> planned(Form form, LayoutDocument typed, String action) {
        return FormAction.changesList(action) ? pages.plan(typed) : pages.check(form, typed);
    }

    private static Form posted(HttpServletRequest request, String action) {
        Form form = Form.posted(request.getParameterMap());
        if (action.equals(ADD_ROW)) {
            LayoutForms.addRow(form);
        } else if (action.matches(REMOVE_ROW)) {
            form.remove("rows", Integer.parseInt(action.replaceAll("\\D", "")));
        }
        return form.limit("rows", LayoutRules.MAX_ROWS);
    }

    private String conflict(
            Form form,
            Revision<LayoutDocument> started,
            Optional<LayoutPlan> plan,
            HttpServletResponse response,
            Model model) {
        response.setStatus(HttpServletResponse.SC_CONFLICT);
        Revision<LayoutDocument> current = layouts.published(started.slug());
        model.addAttribute("conflict", current);
        model.addAttribute(
                "differences",
                FormDifference.between(
                        LayoutForms.of(started.content(), form.units()),
                        LayoutForms.of(current.content(), form.units()),
                        form));
        return pages.page(form, current, plan, model);
    }

    private String again(
            Form form,
            @Nullable Revision<LayoutDocument> base,
            Optional<LayoutPlan> plan,
            String action,
            HttpServletResponse response,
            Model model) {
        if (FormAction.saves(action)) {
            response.setStatus(FormAction.REFUSED);
        }
        return pages.page(form, base, plan, model);
    }
}
