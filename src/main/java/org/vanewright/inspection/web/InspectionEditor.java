package org.vanewright.inspection.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.RequestMapping;
import org.vanewright.inspection.InspectionDocument;
import org.vanewright.inspection.InspectionRules;
import org.vanewright.inspection.InspectionService;
import org.vanewright.platform.editing.DraftEditor;
import org.vanewright.platform.editing.UploadedPhotographs;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;

/** Recording an inspection. */
@Controller
@RequestMapping("/inspections")
class InspectionEditor extends DraftEditor<InspectionDocument> {
    private static final Pattern REMOVE = Pattern.compile("remove losses\\[(\\d{1,2})]");

    private final InspectionFormPages forms;

    InspectionEditor(InspectionService inspections, InspectionFormPages forms, UploadedPhotographs photographs) {
        super(inspections, photographs);
        this.forms = forms;
    }

    @Override
    protected Form blank(HttpServletRequest request, Units units) {
        return forms.blank(request.getParameter("installation"));
    }

    @Override
    protected Form form(InspectionDocument inspection, UnitSystem units) {
        return InspectionForms.of(inspection);
    }

    @Override
    protected Form posted(HttpServletRequest request, String action) {
        Form form = Form.posted(request.getParameterMap());
        Matcher remove = REMOVE.matcher(action);
        if (remove.matches()) {
            form.remove(InspectionForms.LOSSES, Integer.parseInt(remove.group(1)));
        }
        if (action.equals("add losses")) {
            InspectionForms.addLoss(form);
        }
        return form.limit(InspectionForms.LOSSES, InspectionRules.MAX_LOSSES);
    }

    @Override
    protected InspectionDocument read(Form form, @Nullable InspectionDocument before) {
        return InspectionForms.read(form);
    }

    @Override
    protected void offer(Form form, Model model) {
        model.addAttribute("choices", forms.choices(form));
    }

    @Override
    protected void draw(Form form, InspectionDocument typed, Model model) {
        model.addAttribute("earlier", forms.earlier(typed));
    }
}
