package org.vanewright.adhesive.web;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.RequestMapping;
import org.vanewright.adhesive.AdhesiveDocument;
import org.vanewright.adhesive.AdhesiveService;
import org.vanewright.platform.editing.DraftEditor;
import org.vanewright.platform.editing.UploadedPhotographs;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;

/** Describing and changing an adhesive. */
@Controller
@RequestMapping("/adhesives")
class AdhesiveEditor extends DraftEditor<AdhesiveDocument> {
    AdhesiveEditor(AdhesiveService adhesives, UploadedPhotographs photographs) {
        super(adhesives, photographs);
    }

    @Override
    protected Form blank(HttpServletRequest request, Units units) {
        return AdhesiveForms.blank();
    }

    /** Each strength has its own unit beside it, whatever the units of airframes. */
    @Override
    protected Form form(AdhesiveDocument adhesive, UnitSystem units) {
        return AdhesiveForms.of(adhesive);
    }

    @Override
    protected Form posted(HttpServletRequest request, String action) {
        return Form.posted(request.getParameterMap());
    }

    @Override
    protected AdhesiveDocument read(Form form, @Nullable AdhesiveDocument before) {
        return AdhesiveForms.read(form);
    }

    @Override
    protected void offer(Form form, Model model) {
        model.addAttribute("choices", AdhesiveChoices.ALL);
    }

    @Override
    protected void draw(Form form, AdhesiveDocument typed, Model model) {
        model.addAttribute("figures", AdhesiveFigures.of(typed, new Units(UnitSystem.METRIC)));
        model.addAttribute("origins", typed.figureOrigins());
    }
}
