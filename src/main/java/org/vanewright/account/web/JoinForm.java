package org.vanewright.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.vanewright.account.Joining;
import org.vanewright.account.PasswordStrength;
import org.vanewright.account.Providers;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.FormAction;
import org.vanewright.platform.form.KeptForm;
import org.vanewright.platform.page.UnitSystem;

/** The form by which somebody gets an account, whatever the way. */
@Component
class JoinForm {
    /** In paths: what a link's secret looks like. */
    static final String SECRET = "{secret:[A-Za-z0-9_-]{43}}";

    private static final String PAGE = "account/join";
    private static final String NO_ENTRY = "account/no-entry";

    private final PasswordStrength strength;
    private final Providers providers;

    JoinForm(PasswordStrength strength, Providers providers) {
        this.strength = strength;
        this.providers = providers;
    }

    /**
     * How somebody joins.
     *
     * @param kind decides the words of the page
     * @param action where its form goes
     */
    record Way(String kind, String action) {}

    static Joining.Details details(Form form) {
        return new Joining.Details(form.text("email"), form.text("name"), form.value("newPassword"));
    }

    String empty(Way way, HttpServletRequest request, Model model) {
        return show(way, KeptForm.take(request, way.action()).orElseGet(() -> new Form(UnitSystem.METRIC)), model);
    }

    String show(Way way, Form form, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("kind", way.kind());
        model.addAttribute("action", way.action());
        model.addAttribute("providers", providers.all());
        return PAGE;
    }

    /** With how strong the password is. */
    String estimated(Way way, Form form, Model model) {
        model.addAttribute("estimate", strength.of(form.value("newPassword"), form.value("email"), form.value("name")));
        return show(way, form, model);
    }

    String refused(Way way, Form form, InvalidInputException refusal, HttpServletResponse response, Model model) {
        response.setStatus(FormAction.REFUSED);
        return estimated(way, form.refuse(refusal.problems()), model);
    }

    /** Instead of the form, a page that says how it stands. */
    static String instead(String title, String detail, Model model) {
        model.addAttribute("title", title);
        model.addAttribute("detail", detail);
        return NO_ENTRY;
    }

    static String gone(HttpServletResponse response, Model model) {
        response.setStatus(HttpStatus.GONE.value());
        return instead(
                "This link does not work",
                "It was used already, or has expired, or was withdrawn. Ask for a new one where you got it.",
                model);
    }
}
