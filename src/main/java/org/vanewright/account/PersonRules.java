package org.vanewright.account;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.input.Checks;

/** What a person may be called, and which passwords are good enough. */
@Component
class PersonRules {
    static final int SHORTEST_PASSWORD = 12;
    private static final int LONGEST_PASSWORD_BYTES = 200;
    private static final int LONGEST_NAME = 60;
    private static final int LONGEST_ABOUT = 500;

    /** Passwords are not repeated, not even to the person. */
    private static final String HIDDEN = "not shown";

    private final PasswordStrength strength;

    PersonRules(PasswordStrength strength) {
        this.strength = strength;
    }

    void email(Checks checks, @Nullable String typed) {
        checks.require(
                EmailAddress.of(typed).isPresent(), "email", typed, "an e-mail address such as kim@club.example");
    }

    void name(Checks checks, @Nullable String name) {
        checks.text("name", name, LONGEST_NAME);
    }

    void about(Checks checks, @Nullable String about) {
        checks.optionalText("about", about, LONGEST_ABOUT);
    }

    /** One problem at a time: the first that makes a password unfit. */
    void password(Checks checks, String field, String password, String email, String name) {
        problem(password, email, name).ifPresent(allowed -> checks.require(false, field, HIDDEN, allowed));
    }

    private Optional<String> problem(String password, String email, String name) {
        if (password.codePointCount(0, password.length()) < SHORTEST_PASSWORD) {
            return Optional.of("at least " + SHORTEST_PASSWORD + " characters long; a few words make a good one");
        }
        if (password.getBytes(StandardCharsets.UTF_8).length > LONGEST_PASSWORD_BYTES) {
            return Optional.of("at most " + LONGEST_PASSWORD_BYTES + " bytes long");
        }
        String lower = password.toLowerCase(Locale.ROOT);
        String account = email.split("@", 2)[0];
        boolean personal = PasswordStrength.words(account, name).stream().anyMatch(lower::contains);
        if (personal || lower.contains(email.toLowerCase(Locale.ROOT)) && !email.isEmpty()) {
            return Optional.of("without your name, your e-mail address and the words of this service");
        }
        return strength.of(password, Stream.of(email, name).toArray(String[]::new))
                        .suffices()
                ? Optional.empty()
                : Optional.of("harder to guess: it is common, or made of common words, dates or runs of keys."
                        + " Add a word or two that have nothing to do with the others");
    }
}
