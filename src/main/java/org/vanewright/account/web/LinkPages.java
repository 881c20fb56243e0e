package org.vanewright.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.vanewright.account.Joining;
import org.vanewright.account.OneTimeLink;
import org.vanewright.account.Person;
import org.vanewright.account.Sessions;
import org.vanewright.account.web.JoinForm.Way;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.page.SeeOther;

/** Joining by a link that works once: as the first steward, or by invitation. */
@Controller
class LinkPages {
    private static final String INVITATION = "/join/" + JoinForm.SECRET;
    private static final String SET_UP = "/set-up/" + JoinForm.SECRET;

    private final Joining joining;
    private final Sessions sessions;
    private final JoinForm page;

    LinkPages(Joining joining, Sessions sessions, JoinForm page) {
        this.joining = joining;
        this.sessions = sessions;
        this.page = page;
    }

    @GetMapping(SET_UP)
    String showSetUp(
            @PathVariable("secret") String secret,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        return show(setUpBy(secret), joining.setUp(secret), request, response, model);
    }

    @PostMapping(SET_UP)
    Object setUp(
            @PathVariable("secret") String secret,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        return joined(setUpBy(secret), joining.setUp(secret), d -> joining.setUp(secret, d), request, response, model);
    }

    @GetMapping(INVITATION)
    String showInvitation(
            @PathVariable("secret") String secret,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        return show(invitedBy(secret), joining.invitation(secret), request, response, model);
    }

    @PostMapping(INVITATION)
    Object join(
            @PathVariable("secret") String secret,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        return joined(
                invitedBy(secret), joining.invitation(secret), d -> joining.join(secret, d), request, response, model);
    }

    private static Way setUpBy(String secret) {
        return new Way("set-up", "/set-up/" + secret);
    }

    private static Way invitedBy(String secret) {
        return new Way("invitation", "/join/" + secret);
    }

    private String show(
            Way way,
            Optional<OneTimeLink> link,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        if (link.isEmpty()) {
            return JoinForm.gone(response, model);
        }
        model.addAttribute("link", link.get());
        return page.empty(way, request, model);
    }

    private Object joined(
            Way way,
            Optional<OneTimeLink> link,
            Function<Joining.Details, Optional<Person>> join,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        if (link.isEmpty()) {
            return JoinForm.gone(response, model);
        }
        model.addAttribute("link", link.get());
        Form form = Form.posted(request.getParameterMap());
        if (form.is("action", "check")) {
            return page.estimated(way, form, model);
        }
        Optional<Person> person;
        try {
            person = join.apply(JoinForm.details(form));
        } catch (InvalidInputException e) {
            return page.refused(way, form, e, response, model);
        }
        if (person.isEmpty()) {
            return JoinForm.gone(response, model);
        }
        sessions.begin(request, response, person.get(), way.kind());
        return SeeOther.at("/account");
    }
}
