package org.vanewright.account.web.steward;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.vanewright.account.PeopleDesk;
import org.vanewright.account.Person;
import org.vanewright.account.PersonState;
import org.vanewright.platform.form.Form;
import org.vanewright.platform.form.Option;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.record.RecordPage;

/** Everybody with an account, for stewards. */
@Controller
class StewardPeoplePages {
    private static final List<Option> STATES = Option.of(PersonState.values(), PersonState::label);

    private final PeopleDesk people;

    StewardPeoplePages(PeopleDesk people) {
        this.people = people;
    }

    @GetMapping("/steward/people")
    String list(
            @RequestParam(name = "state", defaultValue = "") String state,
            @RequestParam(name = "words", defaultValue = "") String words,
            @RequestParam(name = "cursor", required = false) @Nullable String cursor,
            Model model) {
        Optional<PersonState> chosen = Arrays.stream(PersonState.values())
                .filter(s -> s.name().equals(state))
                .findFirst();
        RecordPage<Person> page = people.page(chosen.orElse(null), words, cursor);
        model.addAttribute("people", page.items());
        model.addAttribute("nextCursor", page.nextCursor());
        model.addAttribute("first", cursor == null);
        model.addAttribute("states", STATES);
        model.addAttribute(
                "form",
                new Form(UnitSystem.METRIC)
                        .put("state", (Object) chosen.map(Enum::name).orElse(""))
                        .put("words", (Object) words));
        return "steward/people";
    }
}
