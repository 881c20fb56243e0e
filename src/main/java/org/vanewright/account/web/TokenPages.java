package org.vanewright.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.vanewright.account.AccessTokens;
import org.vanewright.account.TokenScope;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.FormAction;
import org.vanewright.platform.form.KeptForm;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.platform.page.UnitSystem;

/** One's own tokens for programs. */
@Controller
class TokenPages {
    private static final String PATH = "/account/tokens";
    private static final String PAGE = "account/tokens";

    private final AccessTokens tokens;
    private final Clock clock;

    TokenPages(AccessTokens tokens, Clock clock) {
        this.tokens = tokens;
        this.clock = clock;
    }

    /** For how long a token works, in the list of the form. */
    private record Lifetime(String value, String label) {}

    @GetMapping(PATH)
    String show(HttpServletRequest request, Model model) {
        return page(KeptForm.take(request, PATH).orElseGet(TokenPages::empty), model);
    }

    /** Answers at once, not by leading to another page: the secret is stored nowhere on its way to the person. */
    @PostMapping(PATH)
    String create(HttpServletRequest request, HttpServletResponse response, Model model) {
        Form form = Form.posted(request.getParameterMap());
        try {
            Integer days = form.integer("days");
            model.addAttribute("created", tokens.create(form.text("name"), scopes(form), days));
            return page(empty(), model);
        } catch (InvalidInputException e) {
            response.setStatus(FormAction.REFUSED);
            return page(form.refuse(e.problems()), model);
        }
    }

    @PostMapping(PATH + "/{id}/revoke")
    ResponseEntity<Void> revoke(@PathVariable("id") String id) {
        tokens.revoke(id);
        return SeeOther.at(PATH + "?revoked");
    }

    private static Set<TokenScope> scopes(Form form) {
        return Arrays.stream(TokenScope.values())
                .filter(scope -> form.checked(field(scope)))
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(TokenScope.class)));
    }

    private static String field(TokenScope scope) {
        return scope.name().toLowerCase(Locale.ROOT);
    }

    private static Form empty() {
        return new Form(UnitSystem.METRIC).put("read", "true").put("days", "90");
    }

    private String page(Form form, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("tokens", tokens.mine());
        model.addAttribute("now", clock.instant());
        model.addAttribute("scopes", tokens.scopes());
        List<Lifetime> lifetimes = AccessTokens.DAYS.stream()
                .map(days -> new Lifetime(days.toString(), days == 365 ? "a year" : days + " days"))
                .toList();
        model.addAttribute("lifetimes", lifetimes);
        return PAGE;
    }
}
