package org.vanewright.airframe.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.RequestMapping;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.AirframeService;
import org.vanewright.platform.editing.DraftEditor;
import org.vanewright.platform.editing.UploadedPhotographs;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;

/** Describing and changing an airframe. */
@Controller
@RequestMapping("/airframes")
class AirframeEditor extends DraftEditor<AirframeDocument> {
    AirframeEditor(AirframeService airframes, UploadedPhotographs photographs) {
        super(airframes, photographs);
    }

    @Override
    protected Form blank(HttpServletRequest request, Units units) {
        return AirframeForms.blank(units.system());
    }

    @Override
    protected Form form(AirframeDocument airframe, UnitSystem units) {
        return AirframeForms.of(airframe, units);
    }

    @Override
    protected Form posted(HttpServletRequest request, String action) {
        Form form = Form.posted(request.getParameterMap());
        UploadedSections.take(request, form);
        AirframeFormLists.limit(form);
        AirframeFormLists.apply(form, action);
        return form;
    }

    @Override
    protected AirframeDocument read(Form form, @Nullable AirframeDocument before) {
        return AirframeForms.read(form, before);
    }

    @Override
    protected void offer(Form form, Model model) {
        model.addAttribute("choices", Objects.requireNonNull(AirframeChoices.ALL));
    }

    @Override
    protected void draw(Form form, AirframeDocument typed, Model model) {
        model.addAttribute("surfaces", AirframePreview.surfaces(typed, "surface-", new Units(form.units())));
    }
}
