package org.vanewright.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.account.HalfSignIns;
import org.vanewright.account.Joining;
import org.vanewright.account.OwnAccount;
import org.vanewright.account.Providers;
import org.vanewright.account.SecondFactorCheck;
import org.vanewright.account.Sessions;
import org.vanewright.account.SigningIn;
import org.vanewright.account.SigningIn.Outcome;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.FormAction;
import org.vanewright.platform.form.KeptForm;
import org.vanewright.platform.page.LocalPath;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.record.Actors;

/** Signing in and out. */
@Controller
class SignInPages {
    private static final String PATH = "/sign-in";
    private static final String PAGE = "account/sign-in";

    private final SigningIn signingIn;
    private final SecondFactorCheck secondFactor;
    private final HalfSignIns half;
    private final Sessions sessions;
    private final OwnAccount account;
    private final Joining joining;
    private final Providers providers;
    private final Actors actors;

    SignInPages(
            SigningIn signingIn,
            SecondFactorCheck secondFactor,
            HalfSignIns half,
            Sessions sessions,
            OwnAccount account,
            Joining joining,
            Providers providers,
            Actors actors) {
        this.signingIn = signingIn;
        this.secondFactor = secondFactor;
        this.half = half;
        this.sessions = sessions;
        this.account = account;
        this.joining = joining;
        this.providers = providers;
        this.actors = actors;
    }

    @GetMapping(PATH)
    Object show(
            @RequestParam(name = "back", required = false) @Nullable String back,
            HttpServletRequest request,
            Model model) {
        if (actors.current().signedIn()) {
            return SeeOther.at(LocalPath.orHome(back));
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
        if (outcome instanceof Outcome.Accepted accepted && secondFactor.needed(accepted.person())) {
            half.begin(request, accepted.person(), "password");
            return SeeOther.at(SignInCodePages.leadingTo(back));
        }
        if (outcome instanceof Outcome.Accepted accepted) {
            half.forget(request);
            sessions.begin(request, response, accepted.person(), "password");
            return SeeOther.at(LocalPath.orHome(back));
        }
        response.setStatus(FormAction.REFUSED);
        if (outcome instanceof Outcome.Limited limited) {
            Waits.set(response, limited.delay());
        }
        model.addAttribute("refusal", words(outcome));
        return page(new Form(UnitSystem.METRIC).put("email", (Object) email), back, request, model);
    }

    @PostMapping("/sign-out")
    ResponseEntity<Void> signOut(HttpServletRequest request) {
        account.signOut();
        sessions.end(request);
        return SeeOther.at("/");
    }

    private String page(Form form, @Nullable String back, HttpServletRequest request, Model model) {
        model.addAttribute("registering", joining.registeringIsOpen());
        model.addAttribute("providers", providers.all());
        model.addAttribute("form", form);
        model.addAttribute("back", LocalPath.orHome(back));
        model.addAttribute("kept", KeptForm.waits(request));
        return PAGE;
    }

    private static String words(Outcome outcome) {
        if (outcome instanceof Outcome.Limited limited) {
            return Waits.words(limited.delay());
        }
        return outcome instanceof Outcome.Waiting
                ? "A steward has not admitted this account yet. Try again later."
                : "E-mail address or password is not right.";
    }
}
