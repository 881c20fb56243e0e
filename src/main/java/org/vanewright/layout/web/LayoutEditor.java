package org.vanewright.layout.web;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.RequestMapping;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutRules;
import org.vanewright.layout.LayoutService;
import org.vanewright.platform.editing.DraftEditor;
import org.vanewright.platform.editing.UploadedPhotographs;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;

/** Laying out rows and changing a layout. */
@Controller
@RequestMapping("/layouts")
class LayoutEditor extends DraftEditor<LayoutDocument> {
    private static final String ADD_ROW = "add rows";
    private static final String REMOVE_ROW = "remove rows\\[(\\d{1,2})]";

    private final LayoutFormPages forms;

    LayoutEditor(LayoutService layouts, LayoutFormPages forms, UploadedPhotographs photographs) {
        super(layouts, photographs);
        this.forms = forms;
    }

    @Override
    protected Form blank(HttpServletRequest request, Units units) {
        return forms.blank(units, request.getParameter("airframe"));
    }

    @Override
    protected Form form(LayoutDocument layout, UnitSystem units) {
        return LayoutForms.of(layout, units);
    }

    @Override
    protected Form posted(HttpServletRequest request, String action) {
        Form form = Form.posted(request.getParameterMap());
        if (action.equals(ADD_ROW)) {
            LayoutForms.addRow(form);
        } else if (action.matches(REMOVE_ROW)) {
            form.remove("rows", Integer.parseInt(action.replaceAll("\\D", "")));
        }
        return form.limit("rows", LayoutRules.MAX_ROWS);
    }

    @Override
    protected LayoutDocument read(Form form, @Nullable LayoutDocument before) {
        return LayoutForms.read(form);
    }

    @Override
    protected void offer(Form form, Model model) {
        model.addAttribute("choices", forms.choices(form));
    }

    @Override
    protected void draw(Form form, LayoutDocument typed, Model model) {
        forms.draw(form, forms.plan(typed), model);
    }
}
