package org.vanewright.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.account.Joining;
import org.vanewright.account.web.JoinForm.Way;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.FormAction;

/** Asking to be admitted, where stewards allow it. */
@Controller
class RegisterPages {
    private static final String PATH = "/join";
    private static final Way WAY = new Way("register", PATH);

    private final Joining joining;
    private final JoinForm page;

    RegisterPages(Joining joining, JoinForm page) {
        this.joining = joining;
        this.page = page;
    }

    @GetMapping(PATH)
    String show(HttpServletRequest request, HttpServletResponse response, Model model) {
        return joining.registeringIsOpen() ? page.empty(WAY, request, model) : closed(response, model);
    }

    @PostMapping(PATH)
    String register(
            @RequestParam(name = "action", defaultValue = FormAction.SAVE) String action,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        if (!joining.registeringIsOpen()) {
            return closed(response, model);
        }
        Form form = Form.posted(request.getParameterMap());
        if (!FormAction.saves(action)) {
            return page.estimated(WAY, form, model);
        }
        try {
            Duration delay = joining.register(JoinForm.details(form), request.getRemoteAddr());
            if (!delay.isZero()) {
                Waits.set(response, delay);
                model.addAttribute("refusal", Waits.words(delay));
                return page.show(WAY, form, model);
            }
        } catch (InvalidInputException e) {
            return page.refused(WAY, form, e, response, model);
        }
        return thanks(model);
    }

    static String thanks(Model model) {
        return JoinForm.instead(
                "Thank you", "A steward will look at it. Once you are admitted, you can sign in.", model);
    }

    static String closed(HttpServletResponse response, Model model) {
        response.setStatus(HttpStatus.NOT_FOUND.value());
        return JoinForm.instead("Joining is by invitation", "Ask a steward of this service for a link.", model);
    }
}
