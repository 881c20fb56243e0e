package org.vanewright.account.web.steward;

import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.vanewright.account.AccountService;
import org.vanewright.account.InstanceSettings;
import org.vanewright.account.LogDesk;
import org.vanewright.account.PeopleDesk;
import org.vanewright.account.PersonState;
import org.vanewright.audit.AuditFilter;

/** Where stewards start: what waits for them, and what happened last. */
@Controller
class StewardPages {
    private static final int LATEST = 5;

    private final PeopleDesk people;
    private final AccountService accounts;
    private final InstanceSettings instance;
    private final LogDesk log;

    StewardPages(PeopleDesk people, AccountService accounts, InstanceSettings instance, LogDesk log) {
        this.people = people;
        this.accounts = accounts;
        this.instance = instance;
        this.log = log;
    }

    @GetMapping("/steward")
    String show(Model model) {
        model.addAttribute("waiting", people.page(PersonState.PENDING, null, null));
        model.addAttribute("invitations", accounts.invitations());
        model.addAttribute("registering", instance.registeringIsOpen());
        model.addAttribute(
                "latest",
                log.page(AuditFilter.ALL, null).items().stream().limit(LATEST).toList());
        return "steward/start";
    }
}
