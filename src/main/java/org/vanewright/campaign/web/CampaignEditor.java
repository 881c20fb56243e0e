package org.vanewright.campaign.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.RequestMapping;
import org.vanewright.campaign.CampaignDocument;
import org.vanewright.campaign.CampaignRules;
import org.vanewright.campaign.CampaignService;
import org.vanewright.platform.editing.DraftEditor;
import org.vanewright.platform.editing.UploadedPhotographs;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.platform.page.Units;

/** Planning a campaign and changing its plan. */
@Controller
@RequestMapping("/campaigns")
class CampaignEditor extends DraftEditor<CampaignDocument> {
    private static final Pattern REMOVE =
            Pattern.compile("remove (plan\\.(?:configurations|instruments|roles))\\[(\\d{1,2})]");

    private final CampaignFormPages forms;

    CampaignEditor(CampaignService campaigns, CampaignFormPages forms, UploadedPhotographs photographs) {
        super(campaigns, photographs);
        this.forms = forms;
    }

    @Override
    protected Form blank(HttpServletRequest request, Units units) {
        return forms.blank(units, request.getParameter("airframe"), request.getParameter("layout"));
    }

    @Override
    protected Form form(CampaignDocument campaign, UnitSystem units) {
        return CampaignForms.of(campaign, units);
    }

    @Override
    protected Form posted(HttpServletRequest request, String action) {
        Form form = Form.posted(request.getParameterMap());
        Matcher remove = REMOVE.matcher(action);
        if (remove.matches()) {
            form.remove(remove.group(1), Integer.parseInt(remove.group(2)));
        }
        switch (action) {
            case "add configurations" -> CampaignForms.addConfiguration(form);
            case "add instruments" -> CampaignForms.addInstrument(form);
            case "add roles" -> CampaignForms.addRole(form);
            default -> {}
        }
        return form.limit(CampaignForms.CONFIGURATIONS, CampaignRules.MAX_CONFIGURATIONS)
                .limit(CampaignForms.INSTRUMENTS, CampaignRules.MAX_INSTRUMENTS)
                .limit(CampaignForms.ROLES, CampaignRules.MAX_ROLES);
    }

    @Override
    protected CampaignDocument read(Form form, @Nullable CampaignDocument before) {
        return CampaignForms.read(form, before);
    }

    @Override
    protected void offer(Form form, Model model) {
        model.addAttribute("choices", forms.choices(form));
    }

    @Override
    protected void draw(Form form, CampaignDocument typed, Model model) {
        forms.draw(typed, model);
    }
}
