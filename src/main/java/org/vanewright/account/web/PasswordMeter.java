package org.vanewright.account.web;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.account.PasswordStrength;

/** Says how strong a password is while it is being typed. */
@Controller
class PasswordMeter {
    private final PasswordStrength strength;

    PasswordMeter(PasswordStrength strength) {
        this.strength = strength;
    }

    @PostMapping("/password-strength")
    String estimate(
            @RequestParam(name = "newPassword", defaultValue = "") String password,
            @RequestParam(name = "email", defaultValue = "") String email,
            @RequestParam(name = "name", defaultValue = "") String name,
            Model model) {
        model.addAttribute("estimate", strength.of(password, email, name));
        return "account/strength :: meter";
    }
}
