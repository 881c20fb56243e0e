package org.vanewright.account.web.steward;

import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.account.AccountService;
import org.vanewright.account.LastStewardException;
import org.vanewright.account.PasswordReset;
import org.vanewright.account.PeopleDesk;
import org.vanewright.account.Role;
import org.vanewright.account.SecondFactor;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.FormAction;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.platform.page.UnitSystem;

/** What stewards do with one person's account. */
@Controller
class StewardPersonPages {
    private static final String PATH = "/steward/people/{id:[0-9a-f-]{36}}";
    private static final String PAGE = "steward/person";

    private final PeopleDesk people;
    private final AccountService accounts;
    private final SecondFactor secondFactor;
    private final PasswordReset reset;

    StewardPersonPages(PeopleDesk people, AccountService accounts, SecondFactor secondFactor, PasswordReset reset) {
        this.people = people;
        this.accounts = accounts;
        this.secondFactor = secondFactor;
        this.reset = reset;
    }

    @GetMapping(PATH)
    String show(@PathVariable("id") String id, Model model) {
        return page(people.one(id), null, model);
    }

    @PostMapping(PATH + "/role")
    Object changeRole(
            @PathVariable("id") String id,
            @RequestParam(name = "role", defaultValue = "") String role,
            HttpServletResponse response,
            Model model) {
        PeopleDesk.Seen seen = people.one(id);
        Form form = new Form(UnitSystem.METRIC).put("role", (Object) role);
        Role chosen = form.choice("role", Role.class);
        if (chosen == null) {
            response.setStatus(FormAction.REFUSED);
            return page(seen, form.refuse(new FieldProblem("role", role, "one of the choices")), model);
        }
        try {
            accounts.changeRole(id, chosen);
        } catch (LastStewardException e) {
            return refused(seen, e, response, model);
        }
        return done(id, "role");
    }

    @PostMapping(PATH + "/admit")
    ResponseEntity<Void> admit(@PathVariable("id") String id) {
        accounts.admit(id);
        return done(id, "admitted");
    }

    @PostMapping(PATH + "/close")
    Object close(@PathVariable("id") String id, HttpServletResponse response, Model model) {
        try {
            accounts.close(id);
        } catch (LastStewardException e) {
            return refused(people.one(id), e, response, model);
        }
        return done(id, "closed");
    }

    @PostMapping(PATH + "/reopen")
    ResponseEntity<Void> reopen(@PathVariable("id") String id) {
        accounts.reopen(id);
        return done(id, "reopened");
    }

    @PostMapping(PATH + "/second-factor/reset")
    ResponseEntity<Void> resetSecondFactor(@PathVariable("id") String id) {
        secondFactor.reset(id);
        return done(id, "second-factor");
    }

    /** Answers at once, not by leading to another page: the link is stored nowhere on its way to the steward. */
    @PostMapping(PATH + "/reset-link")
    String resetLink(@PathVariable("id") String id, Model model) {
        model.addAttribute("resetLink", reset.issueResetLink(id));
        return page(people.one(id), null, model);
    }

    private static ResponseEntity<Void> done(String id, String what) {
        return SeeOther.at("/steward/people/" + id + "?done=" + what);
    }

    private static String refused(
            PeopleDesk.Seen seen, LastStewardException refusal, HttpServletResponse response, Model model) {
        response.setStatus(FormAction.REFUSED);
        model.addAttribute("refusal", refusal.getMessage());
        return page(seen, null, model);
    }

    private static String page(PeopleDesk.Seen seen, @Nullable Form form, Model model) {
        Form shown = form == null
                ? new Form(UnitSystem.METRIC)
                        .put("role", (Object) seen.person().role().name())
                : form;
        model.addAttribute("seen", seen);
        model.addAttribute("form", shown);
        model.addAttribute("roles", Option.of(Role.values(), Role::label));
        return PAGE;
    }
}
