package org.vanewright.account.web.steward;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.vanewright.account.AccountService;
import org.vanewright.account.BaseUrl;
import org.vanewright.account.Role;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.FormAction;
import org.vanewright.platform.form.KeptForm;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.platform.page.UnitSystem;

/** Links by which people join. */
@Controller
class StewardInvitationPages {
    private static final String PATH = "/steward/invitations";
    private static final String PAGE = "steward/invitations";

    private final AccountService accounts;
    private final BaseUrl baseUrl;

    StewardInvitationPages(AccountService accounts, BaseUrl baseUrl) {
        this.accounts = accounts;
        this.baseUrl = baseUrl;
    }

    @GetMapping(PATH)
    String list(HttpServletRequest request, Model model) {
        return page(KeptForm.take(request, PATH).orElseGet(StewardInvitationPages::empty), model);
    }

    /** Answers at once, not by leading to another page: the link is stored nowhere on its way to the steward. */
    @PostMapping(PATH)
    String invite(HttpServletRequest request, HttpServletResponse response, Model model) {
        Form form = Form.posted(request.getParameterMap());
        Role role = form.choice("role", Role.class);
        if (role == null) {
            form.refuse(new FieldProblem("role", form.value("role"), "one of the choices"));
        }
        try {
            if (role != null) {
                AccountService.Invitation made = accounts.invite(role, form.text("note"));
                model.addAttribute("made", made.link());
                model.addAttribute("address", baseUrl.of(made.path()));
                return page(empty(), model);
            }
        } catch (InvalidInputException e) {
            form.refuse(e.problems());
        }
        response.setStatus(FormAction.REFUSED);
        return page(form, model);
    }

    @PostMapping(PATH + "/{id:[0-9a-f-]{36}}/withdraw")
    ResponseEntity<Void> withdraw(@PathVariable("id") String id) {
        accounts.withdrawInvitation(id);
        return SeeOther.at(PATH + "?withdrawn");
    }

    private static Form empty() {
        return new Form(UnitSystem.METRIC).put("role", (Object) Role.MEMBER.name());
    }

    private String page(Form form, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("invitations", accounts.invitations());
        model.addAttribute("roles", Option.of(Role.values(), Role::label));
        return PAGE;
    }
}
