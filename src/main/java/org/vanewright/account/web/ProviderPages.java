package org.vanewright.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.server.ResponseStatusException;
import org.vanewright.account.ProviderErrands;
import org.vanewright.account.ProviderErrands.Errand;
import org.vanewright.account.ProviderErrands.Purpose;
import org.vanewright.account.ProviderIdentity.Linked;
import org.vanewright.account.ProviderSignIn;
import org.vanewright.account.Providers;
import org.vanewright.account.Providers.Provider;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.FormAction;
import org.vanewright.platform.page.LocalPath;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.platform.page.UnitSystem;

/** On the way to a provider: to sign in, to join, to link an account. */
@Controller
class ProviderPages {
    private static final String ID = "{provider:[a-z0-9-]{1,40}}";
    private static final String MINE = "/account/providers";
    private static final String PAGE = "account/providers";

    private final Providers providers;
    private final ProviderErrands errands;
    private final ProviderSignIn signIn;

    ProviderPages(Providers providers, ProviderErrands errands, ProviderSignIn signIn) {
        this.providers = providers;
        this.errands = errands;
        this.signIn = signIn;
    }

    @GetMapping("/sign-in/with/" + ID)
    ResponseEntity<Void> signIn(
            @PathVariable("provider") String id,
            @RequestParam(name = "back", required = false) @Nullable String back,
            HttpServletRequest request) {
        return go(id, new Errand(Purpose.SIGN_IN, LocalPath.orHome(back)), request);
    }

    @GetMapping("/join/with/" + ID)
    ResponseEntity<Void> register(@PathVariable("provider") String id, HttpServletRequest request) {
        return go(id, new Errand(Purpose.REGISTER, ""), request);
    }

    @GetMapping("/join/" + JoinForm.SECRET + "/with/" + ID)
    ResponseEntity<Void> join(
            @PathVariable("secret") String secret, @PathVariable("provider") String id, HttpServletRequest request) {
        return go(id, new Errand(Purpose.JOIN, secret), request);
    }

    @GetMapping(MINE)
    String mine(Model model) {
        return page(empty(), model);
    }

    /**
     * Begins to link. A form may lead to no other host by the Content-Security-Policy, so the page that follows has a
     * link to the provider.
     */
    @PostMapping(MINE + "/" + ID)
    String link(
            @PathVariable("provider") String id,
            @RequestParam(name = "password", defaultValue = "") String password,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Provider provider = provider(id);
        try {
            String me = signIn.beforeLinking(password, request.getRemoteAddr());
            errands.begin(request, new Errand(Purpose.LINK, me));
            model.addAttribute("onward", provider);
            return page(empty(), model);
        } catch (InvalidInputException e) {
            response.setStatus(FormAction.REFUSED);
            model.addAttribute("refusedProvider", id);
            return page(empty().refuse(e.problems()), model);
        }
    }

    @PostMapping(MINE + "/links/{link:[0-9a-f-]{36}}/remove")
    ResponseEntity<Void> unlink(@PathVariable("link") String link) {
        signIn.unlink(link);
        return SeeOther.at(MINE + "?removed");
    }

    private ResponseEntity<Void> go(String id, Errand errand, HttpServletRequest request) {
        Provider provider = provider(id);
        if (!providers.reachable(provider)) {
            return SeeOther.at("/sign-in?provider=unreachable");
        }
        errands.begin(request, errand);
        return SeeOther.at("/oauth2/authorization/" + provider.id());
    }

    private Provider provider(String id) {
        return providers.find(id).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
    }

    private static Form empty() {
        return new Form(UnitSystem.METRIC);
    }

    private String page(Form form, Model model) {
        if (providers.all().isEmpty()) {
            throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        }
        model.addAttribute("form", form);
        List<Linked> links = signIn.mine();
        model.addAttribute("links", links);
        model.addAttribute("passwordSet", signIn.passwordSet());
        List<Provider> linkable = providers.all().stream()
                .filter(p -> links.stream().noneMatch(l -> l.identity().issuer().equals(p.issuer())))
                .toList();
        model.addAttribute("linkable", linkable);
        return PAGE;
    }
}
