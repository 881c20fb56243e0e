package org.vanewright.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import java.util.Optional;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.account.PasswordReset;
import org.vanewright.account.PasswordStrength;
import org.vanewright.account.Person;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.FormAction;
import org.vanewright.platform.form.KeptForm;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.platform.page.UnitSystem;

/** A new password for who forgot theirs. */
@Controller
class ResetPages {
    private static final String PATH = "/reset";
    private static final String LINK = PATH + "/{secret}";
    private static final String ASK = "account/reset";
    private static final String CHOOSE = "account/new-password";
    private static final String FORM = "form";

    private final PasswordReset reset;
    private final PasswordStrength strength;

    ResetPages(PasswordReset reset, PasswordStrength strength) {
        this.reset = reset;
        this.strength = strength;
    }

    @GetMapping(PATH)
    String show(HttpServletRequest request, Model model) {
        return ask(KeptForm.take(request, PATH).orElseGet(ResetPages::empty), model);
    }

    @PostMapping(PATH)
    String ask(HttpServletRequest request, HttpServletResponse response, Model model) {
        Form form = Form.posted(request.getParameterMap());
        try {
            Duration delay = reset.ask(form.value("email"), request.getRemoteAddr());
            if (delay.isZero()) {
                model.addAttribute("sent", true);
            } else {
                Waits.set(response, delay);
                model.addAttribute("refusal", Waits.words(delay));
            }
        } catch (InvalidInputException e) {
            response.setStatus(FormAction.REFUSED);
            form.refuse(e.problems());
        }
        return ask(form, model);
    }

    @GetMapping(LINK)
    String open(@PathVariable("secret") String secret, HttpServletResponse response, Model model) {
        return reset.holder(secret).isPresent() ? choose(secret, empty(), response, model) : gone(response, model);
    }

    @PostMapping(LINK)
    Object choose(
            @PathVariable("secret") String secret,
            @RequestParam(name = "newPassword", defaultValue = "") String password,
            @RequestParam(name = "action", defaultValue = FormAction.SAVE) String action,
            HttpServletResponse response,
            Model model) {
        Optional<Person> holder = reset.holder(secret);
        if (holder.isEmpty()) {
            return gone(response, model);
        }
        model.addAttribute(
                "estimate",
                strength.of(password, holder.get().email(), holder.get().name()));
        if (!FormAction.saves(action)) {
            return choose(secret, empty(), response, model);
        }
        try {
            if (!reset.choose(secret, password)) {
                return gone(response, model);
            }
        } catch (InvalidInputException e) {
            response.setStatus(FormAction.REFUSED);
            return choose(secret, empty().refuse(e.problems()), response, model);
        }
        return SeeOther.at("/sign-in?changed");
    }

    private String ask(Form form, Model model) {
        model.addAttribute(FORM, form);
        model.addAttribute("byMail", reset.byMail());
        return ASK;
    }

    private static String choose(String secret, Form form, HttpServletResponse response, Model model) {
        response.setHeader(HttpHeaders.CACHE_CONTROL, "no-store");
        model.addAttribute(FORM, form);
        model.addAttribute("secret", secret);
        return CHOOSE;
    }

    private static String gone(HttpServletResponse response, Model model) {
        response.setStatus(HttpStatus.GONE.value());
        model.addAttribute("gone", true);
        return CHOOSE;
    }

    private static Form empty() {
        return new Form(UnitSystem.METRIC);
    }
}
