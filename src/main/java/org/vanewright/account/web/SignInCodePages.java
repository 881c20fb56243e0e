package org.vanewright.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.net.URI;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.util.UriComponentsBuilder;
import org.vanewright.account.HalfSignIns;
import org.vanewright.account.Person;
import org.vanewright.account.SecondFactorCheck;
import org.vanewright.account.Sessions;
import org.vanewright.account.SigningIn.Outcome;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.FormAction;
import org.vanewright.platform.page.LocalPath;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.platform.page.UnitSystem;

/** The second page of signing in, for who has a second factor. */
@Controller
class SignInCodePages {
    static final String PATH = "/sign-in/code";
    private static final String PAGE = "account/sign-in-code";

    private final SecondFactorCheck check;
    private final HalfSignIns half;
    private final Sessions sessions;

    SignInCodePages(SecondFactorCheck check, HalfSignIns half, Sessions sessions) {
        this.check = check;
        this.half = half;
        this.sessions = sessions;
    }

    /** The address of this page, from which somebody goes on to {@code back}. */
    static URI leadingTo(@Nullable String back) {
        return address(PATH, back);
    }

    @GetMapping(PATH)
    Object show(
            @RequestParam(name = "back", required = false) @Nullable String back,
            HttpServletRequest request,
            Model model) {
        return half.person(request).<Object>map(p -> page(back, model)).orElseGet(() -> again(back));
    }

    @PostMapping(PATH)
    Object signIn(
            @RequestParam(name = "code", defaultValue = "") String code,
            @RequestParam(name = "back", required = false) @Nullable String back,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Optional<Person> person = half.person(request);
        if (person.isEmpty()) {
            return again(back);
        }
        Outcome outcome = check.attempt(person.get(), code, request.getRemoteAddr());
        if (outcome instanceof Outcome.Accepted) {
            String how = half.how(request) + " and code";
            half.forget(request);
            sessions.begin(request, response, person.get(), how);
            return SeeOther.at(LocalPath.orHome(back));
        }
        response.setStatus(FormAction.REFUSED);
        model.addAttribute("refusal", "This code is not right, or was used already. Wait for the next one.");
        if (outcome instanceof Outcome.Limited limited) {
            Waits.set(response, limited.delay());
            model.addAttribute("refusal", Waits.words(limited.delay()));
        }
        return page(back, model);
    }

    private static String page(@Nullable String back, Model model) {
        model.addAttribute("form", new Form(UnitSystem.METRIC));
        model.addAttribute("back", LocalPath.orHome(back));
        return PAGE;
    }

    private static ResponseEntity<Void> again(@Nullable String back) {
        return SeeOther.at(address("/sign-in", back));
    }

    private static URI address(String path, @Nullable String back) {
        String local = LocalPath.orHome(back);
        UriComponentsBuilder address = UriComponentsBuilder.fromPath(path);
        return local.equals("/")
                ? address.build().toUri()
                : address.queryParam("back", "{back}").build(local);
    }
}
