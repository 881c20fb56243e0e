package org.vanewright.engineering.input;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Which characters names and descriptions may hold; XML 1.0, section 2.2, for the first ones refused. */
class ReadableTextTest {
    @ParameterizedTest
    @ValueSource(
            strings = {"a\u0000b", "a\u0001b", "a\u001Bb", "a\u007Fb", "a\uD800b", "a\uFFFEb", "a\u202Eb", "a\u2066b"})
    void refusesWhatFilesOrReadersTrip(String text) {
        Checks checks = new Checks();
        checks.text("name", text, 120);
        checks.optionalText("description", text, 120);
        assertThat(checks.problems()).extracting(FieldProblem::field).containsExactly("name", "description");
        assertThat(checks.problems()).extracting(FieldProblem::value).containsOnly("a\uFFFDb");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\nb", "a\r\nb", "a\tb"})
    void linesBelongIntoDescriptionsOnly(String text) {
        Checks checks = new Checks();
        checks.text("name", text, 120);
        checks.optionalText("description", text, 120);
        assertThat(checks.problems()).extracting(FieldProblem::field).containsExactly("name");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "  ", "\u00A0", "\u200B\u200B", "\uFEFF"})
    void aNameMustShow(String text) {
        Checks checks = new Checks();
        checks.text("name", text, 120);
        checks.optionalText("description", text, 120);
        assertThat(checks.problems()).extracting(FieldProblem::field).containsExactly("name");
    }

    @Test
    void anyScriptAndSymbolIsFine() {
        Checks checks = new Checks();
        for (String text : new String[] {"Flügel 2", "翼", "جناح", "\uD83D\uDEE9 wing", "<b>&\"'=1+1"}) {
            checks.text("name", text, 120);
        }
        assertThat(checks.isClean()).isTrue();
    }
}
