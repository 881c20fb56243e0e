package org.vanewright.inspection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.installation.Installations;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.RevisionRef;

class InspectionRulesTest {
    private static final CanonicalJson JSON = new CanonicalJson();
    private static final InspectionDocument SOUND = Inspections.inspection(
            "Kite",
            new RevisionRef("pairs", 1),
            "2026-05-09",
            9.5,
            Inspections.lost(Installations.at(Wing.LEFT, 1), LossCause.HEAT),
            Inspections.lost(Installations.at(Wing.RIGHT, 1), LossCause.UNKNOWN));

    private static List<String> fields(InspectionDocument document) {
        return InspectionRules.check(document).stream().map(FieldProblem::field).toList();
    }

    @Test
    void oneThatIsCompletePasses() {
        assertThat(fields(SOUND)).isEmpty();
        assertThat(SOUND.count(LossState.MISSING)).isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"hoursFlown\":9.5 | \"hoursFlown\":0 | hoursFlown",
                "\"hoursFlown\":9.5 | \"hoursFlown\":-3 | hoursFlown",
                "\"hoursFlown\":9.5 | \"hoursFlown\":null | hoursFlown",
                "\"hoursFlown\":9.5 | \"hoursFlown\":1e300 | hoursFlown",
                "\"inspectedOn\":\"2026-05-09\" | \"inspectedOn\":\"yesterday\" | inspectedOn",
                "\"revision\":1 | \"revision\":0 | installation",
                "\"cause\":\"HEAT\" | \"cause\":null | losses[0].cause",
                "\"wing\":\"RIGHT\" | \"wing\":\"LEFT\" | losses[1].at",
                "\"wing\":\"RIGHT\" | \"wing\":null | losses[1].at"
            })
    void whatIsWrongIsNamed(String given, String instead, String field) {
        String text = JSON.write(SOUND);
        assertThat(text).contains(given);
        assertThat(fields(JSON.read(text.replace(given, instead), InspectionDocument.class)))
                .contains(field);
    }
}
