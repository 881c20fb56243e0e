package org.vanewright.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.boot.test.context.runner.ApplicationContextRunner;
import org.springframework.mock.env.MockEnvironment;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;

class PasswordsTest {
    private final PersonRules rules = new PersonRules(new PasswordStrength());

    /** OWASP Password Storage Cheat Sheet, section Argon2id: 19 MiB of memory, 2 iterations, 1 degree of parallelism. */
    @Test
    void withoutSettingsTheHashIsAsRecommended() {
        PasswordSettings defaults =
                Binder.get(new MockEnvironment()).bindOrCreate("vanewright.password", PasswordSettings.class);
        String hash = new Passwords(defaults).hash("seven calm herons");
        assertThat(hash).startsWith("$argon2id$v=19$m=19456,t=2,p=1$");
        assertThat(new Passwords(defaults).matches("seven calm herons", hash)).isTrue();
        assertThat(new Passwords(defaults).matches("seven calm heron", hash)).isFalse();
    }

    /** The first hash is made by the first sign-in, too late to find out. */
    @ParameterizedTest
    @ValueSource(strings = {"memory-kib=7", "passes=0", "at-once=0"})
    void settingsThatNoHashCanBeMadeWithFailAtTheStart(String setting) {
        ApplicationContextRunner service = new ApplicationContextRunner().withUserConfiguration(Passwords.class);
        service.run(context -> assertThat(context).hasNotFailed());
        service.withPropertyValues("vanewright.password." + setting)
                .run(context ->
                        assertThat(context).hasFailed().getFailure().hasStackTraceContaining("PasswordSettings"));
    }

    @Test
    void nobodyHasThePasswordOfAnAccountWithoutOne() {
        Passwords passwords = new Passwords(new PasswordSettings(64, 1, 1));
        assertThat(passwords.matches("", null)).isFalse();
        assertThat(passwords.matches("anything", null)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"seven calm herons at dusk", "Ünterwegs mit vier Körben Äpfeln", "qT7vLw0zPk3x", "湖上有七只苍鹭飞过山谷与云海"
            })
    void aLongUncommonPasswordIsTaken(String password) {
        assertThat(problems(password)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "short, at least 12 characters",
        "'', at least 12 characters",
        "password1234, harder to guess",
        "123456789012, harder to guess",
        "qwertyuiop[], harder to guess",
        "aaaaaaaaaaaaaaaa, harder to guess",
        "iloveyou2024, harder to guess",
        "robin of the wide lake, without your name",
        "the wide lake and Kestrel, without your name",
        "all about vanewright here, without your name"
    })
    void aGuessablePasswordIsRefusedAndNotRepeated(String password, String reason) {
        assertThat(problems(password)).singleElement().satisfies(problem -> {
            assertThat(problem.allowed()).contains(reason);
            assertThat(problem.value()).isEqualTo("not shown");
        });
    }

    @Test
    void lengthHasAnEndInBytes() {
        assertThat(problems("ab cd ef gh ".repeat(20)))
                .singleElement()
                .satisfies(problem -> assertThat(problem.allowed()).contains("at most 200 bytes"));
    }

    private List<FieldProblem> problems(String password) {
        Checks checks = new Checks();
        rules.password(checks, "newPassword", password, "kestrel.k@club.example", "Robin Lake-Field");
        return checks.problems();
    }
}
