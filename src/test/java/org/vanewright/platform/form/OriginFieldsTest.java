package org.vanewright.platform.form;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.vanewright.platform.page.UnitSystem;
import org.vanewright.record.RecordContent;
import org.vanewright.record.photograph.PhotographUse;
import org.vanewright.record.provenance.FigureOrigin;
import org.vanewright.record.provenance.Origin;

class OriginFieldsTest {
    private static final FigureOrigin MEASURED = new FigureOrigin(
            "masses", Origin.MEASURED, "The club", "2026-05-17", "Scales", null, "Twice, on level ground");
    private static final FigureOrigin LITERATURE =
            new FigureOrigin("surfaces[1].panels[0]", Origin.LITERATURE, null, null, null, "A book, 1950, p. 3", null);

    record Document(List<FigureOrigin> provenance, List<PhotographUse> photographs) implements RecordContent {
        @Override
        public String name() {
            return "Name";
        }

        @Override
        public boolean invented() {
            return false;
        }
    }

    private static Form form(FigureOrigin... stated) {
        Form form = new Form(UnitSystem.METRIC);
        OriginFields.put(form, new Document(List.of(stated), List.of()));
        return form;
    }

    private static Form posted(Form form, String action) {
        Map<String, String[]> parameters = new LinkedHashMap<>();
        form.values().forEach((path, value) -> parameters.put(path, new String[] {value}));
        parameters.put("action", new String[] {action});
        return Form.posted(parameters);
    }

    @Test
    void whatIsWrittenIsReadAgain() {
        assertThat(OriginFields.read(form(MEASURED, LITERATURE))).containsExactly(MEASURED, LITERATURE);
    }

    @Test
    void anEmptyRowAtTheEndIsNotThereAndOneBetweenIsNotPassedOver() {
        Form form = posted(form(MEASURED), "add provenance");
        assertThat(form.size("provenance")).isEqualTo(2);
        assertThat(OriginFields.read(form)).containsExactly(MEASURED);

        form.put("provenance[2].figures", "speeds");
        assertThat(OriginFields.read(form)).hasSize(3);
    }

    @Test
    void aRowCanBeTakenOut() {
        assertThat(OriginFields.read(posted(form(MEASURED, LITERATURE), "remove provenance[0]")))
                .containsExactly(LITERATURE);
        assertThat(OriginFields.read(posted(form(MEASURED), "remove provenance[7]")))
                .containsExactly(MEASURED);
    }

    @Test
    void rowsGoOnNamingTheSameFiguresWhenAListChanges() {
        Form form = form(LITERATURE, MEASURED);

        form.put("surfaces[0].name", "Wing").put("surfaces[1].name", "Fin").remove("surfaces", 0);
        assertThat(form.value("provenance[0].figures")).isEqualTo("surfaces[0].panels[0]");
        assertThat(form.value("provenance[1].figures")).isEqualTo("masses");

        form.remove("surfaces", 0);
        assertThat(form.value("provenance[0].figures")).isEmpty();
        assertThat(form.value("provenance[0].citation")).isEqualTo("A book, 1950, p. 3");
    }

    @Test
    void anUnknownOriginIsRefusedInItsField() {
        Form form = form(MEASURED).put("provenance[0].origin", "HEARSAY");

        assertThat(OriginFields.read(form).get(0).origin()).isNull();
        assertThat(form.error("provenance[0].origin")).isEqualTo("Must be one of the choices.");
    }

    @Test
    void aChoiceThatIsNoLongerOfferedStaysChosen() {
        Form form = form(LITERATURE);
        List<Option> options = List.of(new Option("masses", "Masses"));

        assertThat(form.withChosen("provenance[0].figures", options))
                .containsExactly(options.get(0), new Option("surfaces[1].panels[0]", "Surface 2, panel 1"));
        assertThat(form(MEASURED).withChosen("provenance[0].figures", options)).isSameAs(options);
    }

    @Test
    void photographsAreWrittenAndReadAndTakenOut() {
        PhotographUse first = new PhotographUse("a".repeat(64), "The wing", "A wing from above");
        PhotographUse second = new PhotographUse("b".repeat(64), null, "A fin");
        Form form = new Form(UnitSystem.METRIC);
        PhotographFields.put(form, new Document(List.of(), List.of(first, second)));

        assertThat(PhotographFields.read(form)).containsExactly(first, second);
        assertThat(PhotographFields.read(posted(form, "remove photographs[0]"))).containsExactly(second);
    }
}
