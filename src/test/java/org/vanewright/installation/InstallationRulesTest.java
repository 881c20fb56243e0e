package org.vanewright.installation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.placement.Hand;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.layout.StationRow;
import org.vanewright.record.CanonicalJson;

class InstallationRulesTest {
    private static final CanonicalJson JSON = new CanonicalJson();

    private static List<String> fields(InstallationDocument document) {
        return InstallationRules.check(document).stream()
                .map(FieldProblem::field)
                .toList();
    }

    @Test
    void oneThatIsCompletePasses() {
        assertThat(fields(Installations.installation("Kite"))).isEmpty();
    }

    /** What is replaced in the document's JSON, with what, and which field is named. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"installedOn\":\"2026-04-18\" | \"installedOn\":\"2026-02-30\" | installedOn",
                "\"installedOn\":\"2026-04-18\" | \"installedOn\":null | installedOn",
                "\"doneBy\":\"Owner\" | \"doneBy\":\" \" | doneBy",
                "\"skinTemperatureC\":21.5 | \"skinTemperatureC\":300 | conditions.skinTemperatureC",
                "\"relativeHumidityPercent\":48 | \"relativeHumidityPercent\":101 | conditions.relativeHumidityPercent",
                "\"surfaceFinish\":\"GLOSS_PAINT\" | \"surfaceFinish\":null | conditions.surfaceFinish",
                "\"material\":\"ABS\" | \"material\":null | material",
                "\"adhesiveClass\":\"Foam tape, 1.1 mm\" | \"adhesiveClass\":null | adhesiveClass",
                "\"slug\":\"low-wing-pairs-over-the-taper\" | \"slug\":\"../x\" | layout",
                "\"angleDeg\":-15.5 | \"angleDeg\":1e300 | samples[0].angleDeg",
                "\"chordPositionMm\":190 | \"chordPositionMm\":-1 | samples[0].chordPositionMm",
                "\"heightMm\":9 | \"heightMm\":null | samples[1].chordPositionMm",
                "\"wing\":\"RIGHT\" | \"wing\":null | samples[1].at",
                "\"wing\":\"RIGHT\" | \"wing\":\"LEFT\" | samples[1].at"
            })
    void whatIsWrongIsNamed(String given, String instead, String field) {
        String text = JSON.write(Installations.installation("Kite"));
        assertThat(text).contains(given);
        InstallationDocument changed = JSON.read(text.replace(given, instead), InstallationDocument.class);
        assertThat(fields(changed)).contains(field);
    }

    @Test
    void aDocumentWithNothingInItNamesWhatIsMissing() {
        assertThat(fields(JSON.read("{}", InstallationDocument.class)))
                .contains(
                        "name",
                        "layout",
                        "adhesiveClass",
                        "material",
                        "installedOn",
                        "conditions.skinTemperatureC",
                        "conditions.surfaceFinish",
                        "doneBy");
    }

    private static FittedDevice fitted(Wing wing, int number, double arcMm, double angleDeg) {
        StationRow station = new StationRow(
                "Wing",
                wing,
                number,
                1,
                "Row",
                SurfaceSide.UPPER,
                1,
                900,
                1200,
                0.09,
                arcMm,
                angleDeg,
                Hand.TOE_IN,
                null,
                false);
        return new FittedDevice(DeviceAt.of(station), station, 10.0);
    }

    /** Deviations by hand: +2.6, −0.4 mm; −0.5, +2.1°; height 0.1. */
    @Test
    void samplesAreComparedWithTheirStations() {
        List<FittedDevice> devices = Arrays.asList(fitted(Wing.LEFT, 1, 188, -16), fitted(Wing.LEFT, 2, 187, 16));
        String samples = "[{\"at\":{\"surface\":\"Wing\",\"wing\":\"LEFT\",\"device\":1},\"chordPositionMm\":190.6,"
                + "\"angleDeg\":-16.5,\"heightMm\":10.1},"
                + "{\"at\":{\"surface\":\"Wing\",\"wing\":\"LEFT\",\"device\":2},\"chordPositionMm\":186.6,\"angleDeg\":18.1},"
                + "{\"at\":{\"surface\":\"Fin\",\"wing\":\"LEFT\",\"device\":2},\"angleDeg\":18.1}]";
        InstallationDocument document = JSON.read("{\"samples\":" + samples + "}", InstallationDocument.class);
        SampleReview review = SampleReview.of(document, new Fitting(devices, devices));
        assertThat(review.rows()).as("one is not of this layout").hasSize(2);
        assertThat(review.flagged()).isEqualTo(2);
        SampleReview.Row first = review.rows().get(0);
        assertThat(Objects.requireNonNull(first.position()).off()).isCloseTo(2.6, within(1e-9));
        assertThat(Objects.requireNonNull(first.position()).flagged()).isTrue();
        assertThat(Objects.requireNonNull(first.angle()).flagged()).isFalse();
        assertThat(review.position().mean()).isCloseTo(1.1, within(1e-9));
        assertThat(review.position().standardDeviation()).isCloseTo(3 / Math.sqrt(2), within(1e-9));
        assertThat(review.angle().mean()).isCloseTo(0.8, within(1e-9));
        assertThat(review.height().count()).isEqualTo(1);
        assertThat(review.height().standardDeviation()).isNull();
    }
}
