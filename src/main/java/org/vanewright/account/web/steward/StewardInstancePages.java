package org.vanewright.account.web.steward;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.vanewright.account.InstanceSettings;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.FormAction;
import org.vanewright.platform.form.KeptForm;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.platform.page.UnitSystem;

/** What stewards choose for this instance. */
@Controller
class StewardInstancePages {
    private static final String PATH = "/steward/instance";
    private static final String PAGE = "steward/instance";
    private static final String REGISTERING = "registering";

    private final InstanceSettings settings;

    StewardInstancePages(InstanceSettings settings) {
        this.settings = settings;
    }

    @GetMapping(PATH)
    String show(HttpServletRequest request, Model model) {
        InstanceSettings.Chosen now = settings.chosen();
        return page(KeptForm.take(request, PATH).orElseGet(() -> form(now)), model);
    }

    @PostMapping(PATH)
    Object change(HttpServletRequest request, HttpServletResponse response, Model model) {
        Form form = Form.posted(request.getParameterMap());
        try {
            settings.change(form.text("name"), form.text("contact"), form.checked(REGISTERING));
            return SeeOther.at(PATH + "?changed");
        } catch (InvalidInputException e) {
            response.setStatus(FormAction.REFUSED);
            return page(form.refuse(e.problems()), model);
        }
    }

    private static Form form(InstanceSettings.Chosen now) {
        return new Form(UnitSystem.METRIC)
                .put("name", (Object) now.name())
                .put("contact", (Object) now.contact())
                .put(REGISTERING, (Object) (now.registeringOpen() ? "true" : ""));
    }

    private static String page(Form form, Model model) {
        model.addAttribute("form", form);
        return PAGE;
    }
}
