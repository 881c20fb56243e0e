package org.vanewright.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Function;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.account.Joining;
import org.vanewright.account.OneTimeLink;
import org.vanewright.account.PasswordStrength;
import org.vanewright.account.Person;
import org.vanewright.account.Sessions;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.FormAction;
import org.vanewright.platform.form.KeptForm;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.platform.page.UnitSystem;

/** Becoming the first steward, joining by invitation, asking to be admitted. */
@Controller
class JoinPages {
    private static final String REGISTER = "/join";
    private static final String SECRET = "{secret:[A-Za-z0-9_-]{43}}";
    private static final String INVITATION = REGISTER + "/" + SECRET;
    private static final String SET_UP = "/set-up/" + SECRET;
    private static final String PAGE = "account/join";
    private static final String NO_ENTRY = "account/no-entry";

    private final Joining joining;
    private final Sessions sessions;
    private final PasswordStrength strength;

    JoinPages(Joining joining, Sessions sessions, PasswordStrength strength) {
        this.joining = joining;
        this.sessions = sessions;
        this.strength = strength;
    }

    /** How somebody joins: the words of the page, and where its form goes. */
    private record Way(String kind, String action) {}

    @GetMapping(SET_UP)
    String showSetUp(
            @PathVariable("secret") String secret,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        return show(new Way("set-up", "/set-up/" + secret), joining.setUp(secret), request, response, model);
    }

    @PostMapping(SET_UP)
    Object setUp(
            @PathVariable("secret") String secret,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Way way = new Way("set-up", "/set-up/" + secret);
        return joined(way, joining.setUp(secret), d -> joining.setUp(secret, d), request, response, model);
    }

    @GetMapping(INVITATION)
    String showInvitation(
            @PathVariable("secret") String secret,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        return show(new Way("invitation", "/join/" + secret), joining.invitation(secret), request, response, model);
    }

    @PostMapping(INVITATION)
    Object join(
            @PathVariable("secret") String secret,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Way way = new Way("invitation", "/join/" + secret);
        return joined(way, joining.invitation(secret), d -> joining.join(secret, d), request, response, model);
    }

    @GetMapping(REGISTER)
    String showRegister(HttpServletRequest request, HttpServletResponse response, Model model) {
        if (!joining.registeringIsOpen()) {
            return closed(response, model);
        }
        return page(new Way("register", REGISTER), kept(request, REGISTER), model);
    }

    @PostMapping(REGISTER)
    String register(
            @RequestParam(name = "action", defaultValue = FormAction.SAVE) String action,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        if (!joining.registeringIsOpen()) {
            return closed(response, model);
        }
        Way way = new Way("register", REGISTER);
        Form form = Form.posted(request.getParameterMap());
        if (!FormAction.saves(action)) {
            return estimated(way, form, model);
        }
        try {
            Duration delay = joining.register(details(form), request.getRemoteAddr());
            if (!delay.isZero()) {
                response.setStatus(HttpStatus.TOO_MANY_REQUESTS.value());
                response.setHeader(HttpHeaders.RETRY_AFTER, Long.toString(delay.toSeconds() + 1));
                model.addAttribute("refusal", "Too many attempts from your network. Try again later.");
                return page(way, form, model);
            }
        } catch (InvalidInputException e) {
            return refused(way, form, e, response, model);
        }
        model.addAttribute("title", "Thank you");
        model.addAttribute(
                "detail", "A steward will look at it. Once you are admitted, you can sign in with your new password.");
        return NO_ENTRY;
    }

    private String show(
            Way way,
            Optional<OneTimeLink> link,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        if (link.isEmpty()) {
            return gone(response, model);
        }
        model.addAttribute("link", link.get());
        return page(way, kept(request, way.action()), model);
    }

    private Object joined(
            Way way,
            Optional<OneTimeLink> link,
            Function<Joining.Details, Optional<Person>> join,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        if (link.isEmpty()) {
            return gone(response, model);
        }
        model.addAttribute("link", link.get());
        Form form = Form.posted(request.getParameterMap());
        if (form.is("action", "check")) {
            return estimated(way, form, model);
        }
        Optional<Person> person;
        try {
            person = join.apply(details(form));
        } catch (InvalidInputException e) {
            return refused(way, form, e, response, model);
        }
        if (person.isEmpty()) {
            return gone(response, model);
        }
        sessions.begin(request, response, person.get(), way.kind());
        return SeeOther.at("/account");
    }

    private static Joining.Details details(Form form) {
        return new Joining.Details(form.text("email"), form.text("name"), form.value("newPassword"));
    }

    private static Form kept(HttpServletRequest request, String path) {
        return KeptForm.take(request, path).orElseGet(() -> new Form(UnitSystem.METRIC));
    }

    private String estimated(Way way, Form form, Model model) {
        model.addAttribute("estimate", strength.of(form.value("newPassword"), form.value("email"), form.value("name")));
        return page(way, form, model);
    }

    private String refused(
            Way way, Form form, InvalidInputException refusal, HttpServletResponse response, Model model) {
        response.setStatus(FormAction.REFUSED);
        return estimated(way, form.refuse(refusal.problems()), model);
    }

    private static String page(Way way, Form form, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("kind", way.kind());
        model.addAttribute("action", way.action());
        return PAGE;
    }

    private static String gone(HttpServletResponse response, Model model) {
        response.setStatus(HttpStatus.GONE.value());
        model.addAttribute("title", "This link does not work");
        model.addAttribute(
                "detail", "It was used already, or has expired, or was withdrawn. Ask for a new one where you got it.");
        return NO_ENTRY;
    }

    private static String closed(HttpServletResponse response, Model model) {
        response.setStatus(HttpStatus.NOT_FOUND.value());
        model.addAttribute("title", "Joining is by invitation");
        model.addAttribute("detail", "Ask a steward of this service for a link.");
        return NO_ENTRY;
    }
}
