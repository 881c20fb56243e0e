package org.vanewright.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.net.URI;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.account.Joining;
import org.vanewright.account.OwnAccount;
import org.vanewright.account.Sessions;
import org.vanewright.account.SigningIn;
import org.vanewright.account.SigningIn.Outcome;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.FormAction;
import org.vanewright.platform.form.KeptForm;
import org.vanewright.platform.page.LocalPath;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.record.Actors;

/** Signing in and out. */
@Controller
class SignInPages {
    private static final String PATH = "/sign-in";
    private static final String PAGE = "account/sign-in";

    private final SigningIn signingIn;
    private final Sessions sessions;
    private final OwnAccount account;
    private final Joining joining;
    private final Actors actors;

    SignInPages(SigningIn signingIn, Sessions sessions, OwnAccount account, Joining joining, Actors actors) {
        this.signingIn = signingIn;
        this.sessions = sessions;
        this.account = account;
        this.joining = joining;
        this.actors = actors;
    }

    @GetMapping(PATH)
    Object show(
            @RequestParam(name = "back", required = false) @Nullable String back,
            HttpServletRequest request,
            Model model) {
        if (actors.current().signedIn()) {
            return seeOther(LocalPath.orHome(back));
        }
        Form form = KeptForm.take(request, PATH).orElseGet(() -> new Form(UnitSystem.METRIC));
        return page(form, back == null ? form.value("back") : back, request, model);
    }

    @PostMapping(PATH)
    Object signIn(
            @RequestParam(name = "email", defaultValue = "") String email,
            @RequestParam(name = "password", defaultValue = "") String password,
            @RequestParam(name = "back", required = false) @Nullable String back,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Outcome outcome = signingIn.attempt(email, password, request.getRemoteAddr());
        if (outcome instanceof Outcome.Accepted accepted) {
            sessions.begin(request, response, accepted.person(), "password");
            return seeOther(LocalPath.orHome(back));
        }
        response.setStatus(FormAction.REFUSED);
        if (outcome instanceof Outcome.Limited limited) {
            response.setStatus(HttpStatus.TOO_MANY_REQUESTS.value());
            response.setHeader(HttpHeaders.RETRY_AFTER, Long.toString(seconds(limited.delay())));
        }
        model.addAttribute("refusal", words(outcome));
        return page(new Form(UnitSystem.METRIC).put("email", (Object) email), back, request, model);
    }

    @PostMapping("/sign-out")
    ResponseEntity<Void> signOut(HttpServletRequest request) {
        account.signOut();
        sessions.end(request);
        return seeOther("/");
    }

    private String page(Form form, @Nullable String back, HttpServletRequest request, Model model) {
        model.addAttribute("registering", joining.registeringIsOpen());
        model.addAttribute("form", form);
        model.addAttribute("back", LocalPath.orHome(back));
        model.addAttribute("kept", KeptForm.waits(request));
        return PAGE;
    }

    private static String words(Outcome outcome) {
        if (outcome instanceof Outcome.Limited limited) {
            long seconds = seconds(limited.delay());
            String time = seconds < 90 ? seconds + " seconds" : (seconds + 59) / 60 + " minutes";
            return "Too many attempts. Wait " + time + ", then try again.";
        }
        return outcome instanceof Outcome.Waiting
                ? "A steward has not admitted this account yet. Try again later."
                : "E-mail address or password is not right.";
    }

    private static long seconds(Duration delay) {
        return delay.plusMillis(999).toSeconds();
    }

    private static ResponseEntity<Void> seeOther(String path) {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create(path))
                .build();
    }
}
