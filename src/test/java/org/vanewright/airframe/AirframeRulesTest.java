package org.vanewright.airframe;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.engineering.input.FieldProblem;
import tools.jackson.core.json.JsonReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

class AirframeRulesTest {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .build();

    @ParameterizedTest
    @ValueSource(strings = {"quillmere-tapered-low-wing", "quillmere-strut-braced-high-wing"})
    void theDemonstrationAirframesPass(String slug) {
        assertThat(AirframeRules.check(read(tree(slug)))).isEmpty();
    }

    /** One value of a sound two-panel low wing changed; the refusal names that field, and what is allowed. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "/name | \"\" | name | text of 1 to 120 characters",
                "/name | null | name | text of 1 to 120 characters",
                "/operatingBasis | null | operatingBasis | one of the operating bases",
                "/wingAreaM2 | 0 | wingAreaM2 | from 1 m² to 100 m²",
                "/wingAreaM2 | NaN | wingAreaM2 | from 1 m² to 100 m²",
                "/wingAreaM2 | Infinity | wingAreaM2 | from 1 m² to 100 m²",
                "/masses | null | masses.emptyKg | from 30 kg to 5700 kg",
                "/masses/emptyKg | 700 | masses.maximumKg | more than the empty mass",
                "/masses/maximumKg | 1e300 | masses.maximumKg | from 60 kg to 5700 kg",
                "/speeds | null | speeds.vneKt | from 20 kt to 300 kt",
                "/speeds/vneKt | 40 | speeds.vneKt | more than the stall speed Vs1",
                "/speeds/vs0Kt | 60 | speeds.vs0Kt | at most the clean stall speed Vs1",
                "/speeds/vaKt | 30 | speeds.vaKt | more than the stall speed Vs1",
                "/speeds/vaKt | 140 | speeds.vaKt | less than Vne",
                "/speeds/approachKt | 40 | speeds.approachKt | more than the stall speed",
                "/speeds/cruiseKt | 139 | speeds.cruiseKt | at most Vne",
                "/speeds/cruiseKt | 20 | speeds.cruiseKt | more than the stall speed Vs1",
                "/surfaces | [] | surfaces | 1 to 6 surfaces",
                "/surfaces | null | surfaces | 1 to 6 surfaces",
                "/surfaces/0/kind | null | surfaces[0].kind | wing, horizontal stabiliser or fin",
                "/surfaces/0/kind | \"FIN\" | surfaces[0].kind | a wing among the surfaces",
                "/surfaces/0/name | \" \" | surfaces[0].name | text of 1 to 60 characters",
                "/surfaces/1/name | \"wing\" | surfaces[1].name | a name no other surface has",
                "/surfaces/0/panels | [] | surfaces[0].panels | 1 to 12 panels",
                "/surfaces/0/panels/0/innerChordMm | -1500 | surfaces[0].panels[0].innerChordMm | from 50 mm to 5000 mm",
                "/surfaces/0/panels/0/outerChordMm | 2300 | surfaces[0].panels[0].outerChordMm | one and a half times",
                "/surfaces/0/panels/1/outerChordMm | 140 | surfaces[0].panels[1].outerChordMm | at least a tenth",
                "/surfaces/0/panels/0/outerStationMm | 440 | surfaces[0].panels[0].outerStationMm | at least 50 mm more",
                "/surfaces/0/panels/1/outerStationMm | 1e9 | surfaces[0].panels[1].outerStationMm | to 20000 mm",
                "/surfaces/0/panels/1/innerStationMm | 1520 | surfaces[0].panels[1].innerStationMm | a gap of 20.0 mm",
                "/surfaces/0/panels/1/innerStationMm | 1400 | surfaces[0].panels[1].innerStationMm | an overlap of 100.0 mm",
                "/surfaces/0/panels/1/outerLeadingEdgeMm | 6000 | surfaces[0].panels[1].outerLeadingEdgeMm | to 5000 mm",
                "/surfaces/0/panels/1/twistDeg | 11 | surfaces[0].panels[1].twistDeg | from -10 degrees to 10 degrees",
                "/surfaces/0/panels/1/innerSection | null | surfaces[0].panels[1].innerSection | a NACA number or coordinates",
                "/surfaces/0/panels/1/innerSection | {} | surfaces[0].panels[1].innerSection.naca | NACA number",
                "/surfaces/0/panels/1/innerSection | {\"naca\":\"99\"} | surfaces[0].panels[1].innerSection.naca | digits",
                "/surfaces/0/panels/1/outerSection | {\"coordinates\":[[1,0]]} | surfaces[0].panels[1].outerSection.coordinates | points",
                "/surfaces/0/keepOuts/0/fromMm | 449 | surfaces[0].keepOuts[0].fromMm | from 450 mm to 4250 mm",
                "/surfaces/0/keepOuts/4/toMm | 4251 | surfaces[0].keepOuts[4].toMm | from 450 mm to 4250 mm",
                "/surfaces/0/keepOuts/1/toMm | 1390 | surfaces[0].keepOuts[1].toMm | more than where it begins",
                "/surfaces/0/keepOuts/1/side | null | surfaces[0].keepOuts[1].side | upper, lower or both",
                "/surfaces/0/keepOuts/1/reason | \"\" | surfaces[0].keepOuts[1].reason | text of 1 to 120 characters",
            })
    void namesTheFieldAndWhatIsAllowed(String pointer, String value, String field, String allowed) {
        ObjectNode airframe = tree("quillmere-tapered-low-wing");
        set(airframe, pointer, value);
        List<FieldProblem> problems = AirframeRules.check(read(airframe));
        assertThat(problems).anySatisfy(p -> {
            assertThat(p.field()).isEqualTo(field);
            assertThat(p.allowed()).contains(allowed);
        });
    }

    @Test
    void speedsThatAreNotKnownMayBeLeftOut() {
        ObjectNode airframe = tree("quillmere-tapered-low-wing");
        for (String speed : List.of("vs0Kt", "vaKt", "approachKt", "cruiseKt")) {
            set(airframe, "/speeds/" + speed, "null");
        }
        assertThat(AirframeRules.check(read(airframe))).isEmpty();
    }

    @Test
    void everyProblemIsFoundAtOnce() {
        ObjectNode airframe = tree("quillmere-tapered-low-wing");
        set(airframe, "/name", "\"\"");
        set(airframe, "/speeds/vneKt", "40");
        set(airframe, "/surfaces/0/panels/0/innerChordMm", "-1");
        assertThat(AirframeRules.check(read(airframe)))
                .extracting(FieldProblem::field)
                .contains("name", "speeds.vneKt", "surfaces[0].panels[0].innerChordMm");
    }

    @Test
    void moreThanTheStatedNumberOfPartsIsRefusedWithoutLookingAtThem() {
        ObjectNode airframe = tree("quillmere-tapered-low-wing");
        ArrayNode surfaces = (ArrayNode) airframe.get("surfaces");
        JsonNode wing = surfaces.get(0);
        for (int i = 0; i < 5; i++) {
            surfaces.add(wing);
        }
        assertThat(AirframeRules.check(read(airframe)))
                .extracting(FieldProblem::field)
                .containsExactly("surfaces");
    }

    private static ObjectNode tree(String slug) {
        try (InputStream file = Objects.requireNonNull(
                AirframeRulesTest.class.getResourceAsStream("/db/demo/airframes/" + slug + ".json"))) {
            return (ObjectNode) MAPPER.readTree(file);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static AirframeDocument read(ObjectNode tree) {
        return MAPPER.treeToValue(tree, AirframeDocument.class);
    }

    private static void set(ObjectNode tree, String pointer, String value) {
        int cut = pointer.lastIndexOf('/');
        ObjectNode parent = (ObjectNode) (cut == 0 ? tree : tree.at(pointer.substring(0, cut)));
        parent.set(pointer.substring(cut + 1), MAPPER.readTree(value));
    }
}
