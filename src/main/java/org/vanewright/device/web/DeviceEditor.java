package org.vanewright.device.web;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.RequestMapping;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceService;
import org.vanewright.platform.editing.DraftEditor;
import org.vanewright.platform.editing.UploadedPhotographs;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;

/** Designing and changing a device. */
@Controller
@RequestMapping("/devices")
class DeviceEditor extends DraftEditor<DeviceDocument> {
    private final DevicePreview preview;

    DeviceEditor(DeviceService devices, DevicePreview preview, UploadedPhotographs photographs) {
        super(devices, photographs);
        this.preview = preview;
    }

    @Override
    protected Form blank(HttpServletRequest request, Units units) {
        return DeviceForms.blank();
    }

    /** A device is given in millimetres, whatever the units of airframes. */
    @Override
    protected Form form(DeviceDocument device, UnitSystem units) {
        return DeviceForms.of(device);
    }

    @Override
    protected Form posted(HttpServletRequest request, String action) {
        return Form.posted(request.getParameterMap());
    }

    @Override
    protected DeviceDocument read(Form form, @Nullable DeviceDocument before) {
        return DeviceForms.read(form);
    }

    @Override
    protected void offer(Form form, Model model) {
        model.addAttribute("choices", DeviceChoices.ALL);
    }

    @Override
    protected void draw(Form form, DeviceDocument typed, Model model) {
        model.addAttribute("view", preview.of(typed, "preview-"));
    }
}
