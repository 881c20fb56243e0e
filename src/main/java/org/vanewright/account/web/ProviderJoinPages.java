package org.vanewright.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import java.util.Optional;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.vanewright.account.Joining;
import org.vanewright.account.OneTimeLink;
import org.vanewright.account.Person;
import org.vanewright.account.ProviderErrands;
import org.vanewright.account.ProviderIdentity.Newcomer;
import org.vanewright.account.Sessions;
import org.vanewright.account.web.JoinForm.Way;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.FormAction;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.platform.page.UnitSystem;

/** The rest of joining for who came back from a provider: name and address, no password. */
@Controller
class ProviderJoinPages {
    private static final String REGISTER = "/join/details";
    private static final String INVITATION = "/join/" + JoinForm.SECRET + "/details";

    private final Joining joining;
    private final ProviderErrands errands;
    private final Sessions sessions;
    private final JoinForm page;

    ProviderJoinPages(Joining joining, ProviderErrands errands, Sessions sessions, JoinForm page) {
        this.joining = joining;
        this.errands = errands;
        this.sessions = sessions;
        this.page = page;
    }

    @GetMapping(REGISTER)
    Object showRegister(HttpServletRequest request, HttpServletResponse response, Model model) {
        Optional<Newcomer> newcomer = errands.newcomer(request);
        if (!joining.registeringIsOpen()) {
            return RegisterPages.closed(response, model);
        }
        return newcomer.<Object>map(n -> show(new Way("register", REGISTER), suggested(n), n, model))
                .orElseGet(() -> SeeOther.at("/join"));
    }

    @PostMapping(REGISTER)
    Object register(HttpServletRequest request, HttpServletResponse response, Model model) {
        Optional<Newcomer> newcomer = errands.newcomer(request);
        if (!joining.registeringIsOpen()) {
            return RegisterPages.closed(response, model);
        }
        if (newcomer.isEmpty()) {
            return SeeOther.at("/join");
        }
        Way way = new Way("register", REGISTER);
        Form form = Form.posted(request.getParameterMap());
        try {
            Duration delay = joining.register(details(form, newcomer.get()), request.getRemoteAddr());
            if (!delay.isZero()) {
                Waits.set(response, delay);
                model.addAttribute("refusal", Waits.words(delay));
                return show(way, form, newcomer.get(), model);
            }
        } catch (InvalidInputException e) {
            return refused(way, form, newcomer.get(), e, response, model);
        }
        errands.forgetNewcomer(request);
        return RegisterPages.thanks(model);
    }

    @GetMapping(INVITATION)
    Object showInvitation(
            @PathVariable("secret") String secret,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Optional<OneTimeLink> link = joining.invitation(secret);
        if (link.isEmpty()) {
            return JoinForm.gone(response, model);
        }
        model.addAttribute("link", link.get());
        return errands.newcomer(request)
                .<Object>map(n -> show(invited(secret), suggested(n), n, model))
                .orElseGet(() -> SeeOther.at("/join/" + secret));
    }

    @PostMapping(INVITATION)
    Object join(
            @PathVariable("secret") String secret,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Optional<OneTimeLink> link = joining.invitation(secret);
        Optional<Newcomer> newcomer = errands.newcomer(request);
        if (link.isEmpty()) {
            return JoinForm.gone(response, model);
        }
        if (newcomer.isEmpty()) {
            return SeeOther.at("/join/" + secret);
        }
        model.addAttribute("link", link.get());
        Form form = Form.posted(request.getParameterMap());
        Optional<Person> person;
        try {
            person = joining.join(secret, details(form, newcomer.get()));
        } catch (InvalidInputException e) {
            return refused(invited(secret), form, newcomer.get(), e, response, model);
        }
        if (person.isEmpty()) {
            return JoinForm.gone(response, model);
        }
        errands.forgetNewcomer(request);
        sessions.begin(
                request,
                response,
                person.get(),
                "invitation, " + newcomer.get().identity().provider());
        return SeeOther.at("/account");
    }

    private static Way invited(String secret) {
        return new Way("invitation", "/join/" + secret + "/details");
    }

    private static Joining.Details details(Form form, Newcomer newcomer) {
        return new Joining.Details(form.text("email"), form.text("name"), "", newcomer.identity());
    }

    private static Form suggested(Newcomer newcomer) {
        return new Form(UnitSystem.METRIC).put("name", (Object) newcomer.name()).put("email", (Object)
                newcomer.email());
    }

    private String refused(
            Way way,
            Form form,
            Newcomer newcomer,
            InvalidInputException refusal,
            HttpServletResponse response,
            Model model) {
        response.setStatus(FormAction.REFUSED);
        return show(way, form.refuse(refusal.problems()), newcomer, model);
    }

    private String show(Way way, Form form, Newcomer newcomer, Model model) {
        model.addAttribute("provider", newcomer.identity().provider());
        return page.show(way, form, model);
    }
}
