package org.vanewright.account.web;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.account.SecondFactor;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.FormAction;
import org.vanewright.platform.page.SeeOther;
import org.vanewright.platform.page.UnitSystem;

/** One's own second factor. */
@Controller
class SecondFactorPages {
    private static final String PATH = "/account/second-factor";
    private static final String PAGE = "account/second-factor";

    private final SecondFactor factor;

    SecondFactorPages(SecondFactor factor) {
        this.factor = factor;
    }

    @GetMapping(PATH)
    String show(Model model) {
        return page(new Form(UnitSystem.METRIC), model);
    }

    @PostMapping(PATH)
    ResponseEntity<Void> prepare() {
        factor.prepare();
        return SeeOther.at(PATH);
    }

    /** Answers at once: the recovery codes are stored nowhere on their way to the person. */
    @PostMapping(PATH + "/on")
    String switchOn(
            @RequestParam(name = "password", defaultValue = "") String password,
            @RequestParam(name = "code", defaultValue = "") String code,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        Form form = new Form(UnitSystem.METRIC);
        try {
            model.addAttribute("codes", factor.switchOn(password, code, request.getRemoteAddr()));
        } catch (InvalidInputException e) {
            response.setStatus(FormAction.REFUSED);
            form.refuse(e.problems());
        }
        return page(form, model);
    }

    @PostMapping(PATH + "/off")
    Object switchOff(
            @RequestParam(name = "password", defaultValue = "") String password,
            @RequestParam(name = "code", defaultValue = "") String code,
            HttpServletRequest request,
            HttpServletResponse response,
            Model model) {
        try {
            factor.switchOff(password, code, request.getRemoteAddr());
            return SeeOther.at(PATH + "?off");
        } catch (InvalidInputException e) {
            response.setStatus(FormAction.REFUSED);
            return page(new Form(UnitSystem.METRIC).refuse(e.problems()), model);
        }
    }

    private String page(Form form, Model model) {
        model.addAttribute("form", form);
        model.addAttribute("on", factor.on());
        model.addAttribute("left", factor.recoveryCodesLeft());
        factor.prepared().ifPresent(prepared -> {
            model.addAttribute("prepared", prepared);
            model.addAttribute("picture", QrCode.of(prepared.address()));
        });
        return PAGE;
    }
}
