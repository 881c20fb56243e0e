package org.vanewright.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.account.OwnAccount;
import org.vanewright.account.PasswordStrength;
import org.vanewright.account.Person;
import org.vanewright.account.ProviderSignIn;
import org.vanewright.account.Providers;
import org.vanewright.account.Sessions;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.FormAction;
import org.vanewright.platform.form.KeptForm;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.platform.page.UnitSystem;

/** One's own account. */
@Controller
class AccountPages {
    private static final String PATH = "/account";
    private static final String PASSWORD = PATH + "/password";
    private static final String PAGE = "account/account";

    private final OwnAccount account;
    private final Sessions sessions;
    private final PasswordStrength strength;
    private final ProviderSignIn providerSignIn;
    private final Providers providers;

    AccountPages(
            OwnAccount account,
            Sessions sessions,
            PasswordStrength strength,
            ProviderSignIn providerSignIn,
            Providers providers) {
        this.account = account;
        this.sessions = sessions;
        this.strength = strength;
        this.providerSignIn = providerSignIn;
        this.providers = providers;
    }

    @GetMapping(PATH)
    String show(HttpServletRequest request, Model model) {
        Person me = account.mine();
        Form form = KeptForm.take(request, PATH).orElseGet(() -> details(me));
        return page(me, form, empty(), model);
    }

    @PostMapping(PATH)
    Object describe(HttpServletRequest request, HttpServletResponse response, Model model) {
        Person me = account.mine();
        Form form = Form.posted(request.getParameterMap());
        try {
            account.describe(form.text("name"), form.text("about"));
            return SeeOther.at(PATH);
        } catch (InvalidInputException e) {
            response.setStatus(FormAction.REFUSED);
            return page(me, form.refuse(e.problems()), empty(), model);
        }
    }

    @PostMapping(PASSWORD)
    Object changePassword(
            @RequestParam(name = "currentPassword", defaultValue = "") String current,
            @RequestParam(name = "newPassword", defaultValue = "") String next,
            @RequestParam(name = "action", defaultValue = FormAction.SAVE) String action,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Person me = account.mine();
        if (!FormAction.saves(action)) {
            model.addAttribute("estimate", strength.of(next, me.email(), me.name()));
            return page(me, details(me), empty(), model);
        }
        try {
            account.changePassword(current, next, request.getRemoteAddr());
        } catch (InvalidInputException e) {
            response.setStatus(FormAction.REFUSED);
            model.addAttribute("estimate", strength.of(next, me.email(), me.name()));
            return page(me, details(me), empty().refuse(e.problems()), model);
        }
        // This session ended with the others; a new one takes its place.
        sessions.end(request);
        sessions.begin(request, response, me, "password changed");
        return SeeOther.at(PATH + "?changed");
    }

    @PostMapping(PATH + "/sign-out-everywhere")
    ResponseEntity<Void> signOutEverywhere(HttpServletRequest request) {
        account.signOutEverywhere();
        sessions.end(request);
        return SeeOther.at("/sign-in");
    }

    private static Form details(Person me) {
        return empty().put("name", (Object) me.name()).put("about", (Object) me.about());
    }

    private static Form empty() {
        return new Form(UnitSystem.METRIC);
    }

    private String page(Person me, Form form, Form passwordForm, Model model) {
        model.addAttribute("mine", me);
        model.addAttribute("form", form);
        model.addAttribute("passwordForm", passwordForm);
        model.addAttribute("passwordSet", providerSignIn.passwordSet());
        model.addAttribute("providers", providers.all());
        return PAGE;
    }
}
