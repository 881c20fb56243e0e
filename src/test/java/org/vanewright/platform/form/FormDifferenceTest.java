package org.vanewright.platform.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class FormDifferenceTest {
    private static Form form(Map<String, String[]> posted) {
        return Form.posted(posted);
    }

    private static String[] one(String value) {
        return new String[] {value};
    }

    @Test
    void comparesTheRecordAndNotTheButtonThatWasPressed() {
        Form before = form(Map.of("name", one("Row"), "pitchMm", one("60")));
        Form theirs = form(Map.of("name", one("Row"), "pitchMm", one("70")));
        Form yours = form(Map.of("name", one("Row"), "pitchMm", one("80"), "action", one("save"), "base", one("1")));
        assertThat(FormDifference.between(before, theirs, yours))
                .singleElement()
                .satisfies(d -> assertThat(d.before() + d.theirs() + d.yours()).isEqualTo("607080"));
    }
}
