package org.vanewright.installation.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.RequestMapping;
import org.vanewright.installation.InstallationDocument;
import org.vanewright.installation.InstallationRules;
import org.vanewright.installation.InstallationService;
import org.vanewright.platform.editing.DraftEditor;
import org.vanewright.platform.editing.UploadedPhotographs;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;

/** Recording an installation. */
@Controller
@RequestMapping("/installations")
class InstallationEditor extends DraftEditor<InstallationDocument> {
    private static final Pattern REMOVE = Pattern.compile("remove (leftOff|samples)\\[(\\d{1,2})]");

    private final InstallationFormPages forms;

    InstallationEditor(
            InstallationService installations, InstallationFormPages forms, UploadedPhotographs photographs) {
        super(installations, photographs);
        this.forms = forms;
    }

    @Override
    protected Form blank(HttpServletRequest request, Units units) {
        return forms.blank(request.getParameter("layout"), request.getParameter("printRun"));
    }

    /** Its measures are small and in millimetres, whatever the units of airframes. */
    @Override
    protected Form form(InstallationDocument installation, UnitSystem units) {
        return InstallationForms.of(installation);
    }

    @Override
    protected Form posted(HttpServletRequest request, String action) {
        Form form = Form.posted(request.getParameterMap());
        Matcher remove = REMOVE.matcher(action);
        if (remove.matches()) {
            form.remove(remove.group(1), Integer.parseInt(remove.group(2)));
        }
        switch (action) {
            case "add leftOff" -> InstallationForms.addLeftOff(form);
            case "add samples" -> InstallationForms.addSample(form, "");
            default -> {}
        }
        return form.limit(InstallationForms.LEFT_OFF, InstallationRules.MAX_LEFT_OFF)
                .limit(InstallationForms.SAMPLES, InstallationRules.MAX_SAMPLES);
    }

    @Override
    protected InstallationDocument read(Form form, @Nullable InstallationDocument before) {
        return InstallationForms.read(form);
    }

    @Override
    protected void offer(Form form, Model model) {
        model.addAttribute("choices", forms.choices(form));
    }

    @Override
    protected void draw(Form form, InstallationDocument typed, Model model) {
        model.addAttribute("samples", forms.samples(typed));
    }
}
