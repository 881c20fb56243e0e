package org.vanewright.device.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceRules;
import org.vanewright.device.DeviceService;
import org.vanewright.platform.EditingPolicy;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.FormAction;
import org.vanewright.platform.form.FormDifference;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionConflictException;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.web.Contributors;
import org.vanewright.record.web.RecordPaths;

/** Designing and changing a device. */
@Controller
class DeviceEditor {
    private static final String EDIT = "/devices/" + RecordPaths.SLUG + "/edit";

    private final DeviceService devices;
    private final DevicePreview preview;
    private final EditingPolicy editing;

    DeviceEditor(DeviceService devices, DevicePreview preview, EditingPolicy editing) {
        this.devices = devices;
        this.preview = preview;
        this.editing = editing;
    }

    @GetMapping("/devices/new")
    String blank(Model model) {
        editing.requireOpen();
        Form form = DeviceForms.blank();
        return page(form, null, DeviceForms.read(form, false), model);
    }

    @GetMapping(EDIT)
    String edit(@PathVariable("slug") String slug, Model model) {
        editing.requireOpen();
        Revision<DeviceDocument> base = devices.published(slug);
        return page(DeviceForms.of(base.content()), base, base.content(), model);
    }

    @PostMapping("/devices/new")
    String create(
            @RequestParam(name = "action", defaultValue = "check") String action,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        editing.requireOpen();
        Form form = Form.posted(request.getParameterMap());
        DeviceDocument typed = checked(form, false);
        if (FormAction.saves(action) && !form.hasProblems()) {
            return "redirect:/devices/"
                    + devices.create(typed, Contributors.OPEN_EDITING, null).slug();
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
        Revision<DeviceDocument> started = devices.exactly(new RevisionRef(slug, base));
        Form form = Form.posted(request.getParameterMap());
        DeviceDocument typed = checked(form, started.content().invented());
        if (FormAction.saves(action) && !form.hasProblems()) {
            try {
                devices.revise(started.ref(), typed, Contributors.OPEN_EDITING);
                return "redirect:/devices/" + slug;
            } catch (RevisionConflictException e) {
                response.setStatus(HttpServletResponse.SC_CONFLICT);
                return conflict(form, started, devices.published(slug), typed, model);
            }
        }
        return again(form, started, typed, action, response, model);
    }

    /** What the form's drawings, figures and errors would be, for the page to show beside it. */
    @PostMapping("/devices/preview")
    String preview(HttpServletRequest request, Model model) {
        Form form = Form.posted(request.getParameterMap());
        DeviceDocument typed = checked(form, false);
        model.addAttribute("form", form);
        model.addAttribute("view", preview.of(typed));
        return "device/preview :: preview";
    }

    private static DeviceDocument checked(Form form, boolean invented) {
        DeviceDocument typed = DeviceForms.read(form, invented);
        form.refuse(DeviceRules.check(typed));
        return typed;
    }

    private String conflict(
            Form form,
            Revision<DeviceDocument> started,
            Revision<DeviceDocument> current,
            DeviceDocument typed,
            Model model) {
        model.addAttribute("conflict", current);
        model.addAttribute(
                "differences",
                FormDifference.between(
                        DeviceForms.of(started.content()), DeviceForms.of(current.content()), DeviceForms.of(typed)));
        return page(form, current, typed, model);
    }

    private String again(
            Form form,
            @Nullable Revision<DeviceDocument> base,
            DeviceDocument typed,
            String action,
            HttpServletResponse response,
            Model model) {
        if (FormAction.saves(action)) {
            response.setStatus(FormAction.REFUSED);
        }
        return page(form, base, typed, model);
    }

    private String page(Form form, @Nullable Revision<DeviceDocument> base, DeviceDocument typed, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("base", base);
        model.addAttribute("view", preview.of(typed));
        model.addAttribute("choices", DeviceChoices.ALL);
        return "device/edit";
    }
}
