package org.vanewright.platform.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.platform.page.Quantity;
import org.vanewright.platform.page.UnitSystem;

class FormTest {
    private static Form posted(String... pairs) {
        Map<String, String[]> parameters = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            parameters.put(pairs[i], new String[] {pairs[i + 1]});
        }
        return Form.posted(parameters);
    }

    @Test
    void readsMeasuresInTheUnitsItCarries() {
        Form us = posted("units", "us", "chordMm", "60");
        assertThat(us.number("chordMm", Quantity.LENGTH)).isEqualTo(1524.0);
        Form metric = posted("chordMm", "60");
        assertThat(metric.number("chordMm", Quantity.LENGTH)).isEqualTo(60.0);
    }

    @Test
    void keepsWhatWasTypedBesideTheProblem() {
        Form form = posted("chordMm", " 1e9 ");
        assertThat(form.number("chordMm")).isNull();
        assertThat(form.value("chordMm")).isEqualTo(" 1e9 ");
        assertThat(form.error("chordMm")).isEqualTo("Must be a number such as 12.5.");
    }

    @Test
    void theFirstProblemOfAFieldStandsAndAPartSaysMoreThanTheWhole() {
        Form form = posted();
        form.refuse(new FieldProblem("a.naca", "x", "digits")).refuse(new FieldProblem("a.naca", "x", "else"));
        form.refuse(new FieldProblem("a", "missing", "a section"));
        assertThat(form.problems()).extracting(FieldProblem::allowed).containsExactly("digits");
    }

    @Test
    void boundsAreSaidInTheFormsUnits() {
        Form form = posted("units", "us");
        form.refuse(new FieldProblem("chordMm", "1", "a number from 50 mm to 5000 mm"));
        assertThat(form.error("chordMm")).isEqualTo("Must be a number from 1.97 in to 196.85 in.");
    }

    @Test
    void aRemovedEntryLetsThoseBehindMoveUp() {
        Form form = posted("s[0].p[0].a", "A", "s[0].p[1].a", "B", "s[0].p[2].a", "C", "s[1].p[1].a", "D");
        form.remove("s[0].p", 1);
        assertThat(form.values())
                .containsOnly(
                        Map.entry("s[0].p[0].a", "A"), Map.entry("s[0].p[1].a", "C"), Map.entry("s[1].p[1].a", "D"));
        assertThat(form.size("s")).isEqualTo(2);
        assertThat(form.size("s[0].p")).isEqualTo(2);
    }

    @Test
    void namesThatAreNoFieldPathsAreLeftOut() {
        Form form = posted("a[999999999].b", "x", "class.classLoader[\"x\"]", "y", "__proto__", "z", "ok", "1");
        assertThat(form.values()).containsOnlyKeys("ok");
    }

    @Test
    void aChoiceThatIsNotOfferedIsRefused() {
        Form form = posted("units", "metric", "system", "IMPERIAL");
        assertThat(form.choice("system", UnitSystem.class)).isNull();
        assertThat(form.hasProblems()).isTrue();
    }

    @Test
    void pathsReadAsWords() {
        assertThat(posted().words("surfaces[0].panels[1].outerChordMm")).isEqualTo("Surface 1, panel 2, outer chord");
        assertThat(posted().id("surfaces[0].panels[1]")).isEqualTo("surfaces-0-panels-1");
    }
}
