package org.vanewright.bench.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.testing.ServerTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Calculations as programs meet them. */
class CalculationsTest extends ServerTest {
    private static final String PLAIN = "{\"vane\":{\"heightMm\":8,\"lengthMm\":20,\"thicknessMm\":1.2},"
            + "\"base\":{\"lengthMm\":30,\"widthMm\":16,\"thicknessMm\":1},\"indexMark\":false";

    private JsonNode calculate(String name, String body) {
        JsonNode answer = json(postJson("/api/v1/calculations/" + name, body), 200);
        assertThat(answer.get("method").asString()).isNotBlank();
        assertThat(answer.get("sources")).isNotEmpty();
        assertThat(answer.get("validity").isArray()).isTrue();
        return answer;
    }

    @Test
    void sectionAgainstThePublishedOrdinates() {
        JsonNode answer = calculate("section", "{\"section\":{\"naca\":\"0012\"},\"stations\":[0,0.3,1]}");
        // Abbott, von Doenhoff, Stivers, NACA Report 824, 1945: NACA 0012, 6.002 % at 30 % (from memory)
        assertThat(answer.at("/upper/1/y").asDouble()).isCloseTo(0.06002, within(6e-6));
        assertThat(answer.at("/lower/1/y").asDouble()).isCloseTo(-0.06002, within(6e-6));
        assertThat(answer.at("/upper/0/arcLength").asDouble()).isZero();
        assertThat(answer.at("/upper/2/x").asDouble()).isEqualTo(1);
        assertThat(answer.at("/upper/2/arcLength").asDouble()).isBetween(1.0, 1.1);
        // the same report: leading-edge radius 1.58 %
        assertThat(answer.get("leadingEdgeRadius").asDouble()).isCloseTo(0.0158, within(1e-4));
        assertThat(answer.get("maximumThickness").asDouble()).isCloseTo(0.12, within(2e-4));
        assertThat(answer.get("maximumCamber").asDouble()).isZero();
    }

    @Test
    void sectionsInAnotherUnitAreTakenAsGivenWithAWarning() {
        String circle = IntStream.rangeClosed(0, 40)
                .mapToObj(i -> 2 * Math.PI * i / 41)
                .map(a -> "[" + (50 + 50 * Math.cos(a)) + "," + 6 * Math.sin(a) + "]")
                .collect(Collectors.joining(",", "[", "]"));
        JsonNode answer = calculate("section", "{\"section\":{\"coordinates\":" + circle + "},\"stations\":[50]}");
        assertThat(answer.at("/upper/0/y").asDouble()).isCloseTo(6, within(0.01));
        assertThat(answer.get("validity")).hasSize(1);
    }

    @Test
    void atmosphereAgainstThePublishedTables() {
        // U.S. Standard Atmosphere 1976, table I: sea level
        JsonNode sea = calculate("atmosphere", "{\"pressureAltitudeFt\":0}");
        assertThat(sea.get("pressurePa").asDouble()).isEqualTo(101_325);
        assertThat(sea.get("densityKgM3").asDouble()).isCloseTo(1.2250, within(5e-5));
        assertThat(sea.get("speedOfSoundMps").asDouble()).isCloseTo(340.294, within(5e-4));
        assertThat(sea.get("dynamicViscosityPaS").asDouble()).isCloseTo(1.7894e-5, within(5e-10));
        assertThat(sea.get("kinematicViscosityM2S").asDouble()).isCloseTo(1.4607e-5, within(5e-10));
        JsonNode hot = calculate("atmosphere", "{\"pressureAltitudeFt\":5000,\"outsideAirTemperatureC\":35}");
        assertThat(hot.get("densityAltitudeFt").asDouble()).isGreaterThan(8000);
        assertThat(hot.get("validity")).isEmpty();
        assertThat(calculate("atmosphere", "{\"pressureAltitudeFt\":0,\"outsideAirTemperatureC\":-60}")
                        .get("validity"))
                .hasSize(1);
    }

    @Test
    void airspeedAgainstTheWorkedTable() {
        // worked table of a public calculator, arithmetic done again by hand
        JsonNode speeds = calculate(
                "airspeed", "{\"pressureAltitudeFt\":5000,\"outsideAirTemperatureC\":5,\"impactPressurePa\":3200}");
        assertThat(speeds.get("calibratedAirspeedKt").asDouble()).isCloseTo(139.72, within(0.01));
        assertThat(speeds.get("trueAirspeedKt").asDouble()).isCloseTo(150.33, within(0.01));
        assertThat(speeds.get("mach").asDouble()).isCloseTo(0.2313, within(1e-4));
        assertThat(speeds.get("equivalentAirspeedKt").asDouble()).isLessThan(139.72);
        JsonNode back = calculate(
                "airspeed",
                "{\"pressureAltitudeFt\":5000,\"outsideAirTemperatureC\":5,\"trueAirspeedKt\":"
                        + speeds.get("trueAirspeedKt") + "}");
        assertThat(back.get("impactPressurePa").asDouble()).isCloseTo(3200, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"calibratedAirspeedKt\":60} | pressureAltitudeFt",
                "{\"pressureAltitudeFt\":0} | calibratedAirspeedKt",
                "{\"pressureAltitudeFt\":0,\"calibratedAirspeedKt\":60,\"trueAirspeedKt\":60} | calibratedAirspeedKt",
                "{\"pressureAltitudeFt\":0,\"impactPressurePa\":-1} | impactPressurePa",
                "{\"pressureAltitudeFt\":60000,\"calibratedAirspeedKt\":600} | calibratedAirspeedKt",
                "{\"pressureAltitudeFt\":99999,\"calibratedAirspeedKt\":60} | pressureAltitudeFt"
            })
    void badAirspeedsAreNamed(String body, String field) {
        JsonNode problem = json(postJson("/api/v1/calculations/airspeed", body), 400);
        assertThat(problem.at("/errors/0/field").asString()).isEqualTo(field);
    }

    @Test
    void vaneAgainstTheFit() {
        // recomputed from Wendt's fit, NASA/CR-2001-211144, 2001
        JsonNode vane = calculate(
                "vane",
                "{\"heightMm\":5,\"lengthMm\":10,\"angleDeg\":15,\"edgeSpeedMps\":30,\"boundaryLayerThicknessMm\":5}");
        assertThat(vane.get("aspectRatio").asDouble()).isCloseTo(1.27324, within(1e-5));
        assertThat(vane.get("circulationM2S").asDouble()).isCloseTo(0.081499, within(1e-6));
        assertThat(vane.get("heightToThickness").asDouble()).isEqualTo(1);
        assertThat(vane.get("validity")).isNotEmpty();
        JsonNode bad = json(postJson("/api/v1/calculations/vane", "{\"heightMm\":0,\"angleDeg\":90}"), 400);
        assertThat(bad.get("errors")).hasSize(5);
    }

    // Rigid rectangular footing on an elastic layer, worked out by hand: 60 m/s EAS, tape without thickness.
    @Test
    void bondAgainstTheWorkedCase() {
        String base = "{\"baseLengthMm\":25,\"baseWidthMm\":12,\"tapeThicknessMm\":0,"
                + "\"adhesive\":{\"peelNPerCm\":10,\"shearKPa\":400,\"tensileKPa\":500},";
        JsonNode bond = calculate(
                "bond",
                base + "\"vaneHeightMm\":10,\"vaneLengthMm\":20,\"normalForceCoefficient\":1.2,"
                        + "\"equivalentAirspeedKt\":116.63067}");
        assertThat(bond.get("sideForceN").asDouble()).isCloseTo(0.52920, within(1e-4));
        assertThat(bond.get("shearStressPa").asDouble()).isCloseTo(1764.0, within(0.2));
        assertThat(bond.get("peakTensionPa").asDouble()).isCloseTo(4410.0, within(0.5));
        assertThat(bond.get("cleavageLineLoadNPerCm").asDouble()).isCloseTo(0.1323, within(1e-4));
        assertThat(bond.at("/margins/shear").asDouble()).isCloseTo(400e3 / 1764.0, within(0.05));
        assertThat(bond.at("/margins/tension").asDouble()).isCloseTo(500e3 / 4410.0, within(0.05));
        assertThat(bond.at("/margins/cleavage").asDouble()).isCloseTo(10 / 0.1323, within(0.05));
        assertThat(bond.get("validity")).isEmpty();
        JsonNode knock = calculate("bond", base + "\"sideForceN\":0.5292,\"forceHeightMm\":5}");
        assertThat(knock.get("peakTensionPa").asDouble()).isCloseTo(4410.0, within(0.1));
        JsonNode hard = calculate("bond", base + "\"sideForceN\":500,\"forceHeightMm\":10}");
        assertThat(hard.get("validity").toString()).contains("gives way");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "baseLengthMm | 0 | baseLengthMm",
                "baseWidthMm | -3 | baseWidthMm",
                "baseWidthMm | null | baseWidthMm",
                "tapeThicknessMm | null | tapeThicknessMm",
                "vaneHeightMm | null | vaneHeightMm",
                "vaneLengthMm | 1e300 | vaneLengthMm",
                "normalForceCoefficient | null | normalForceCoefficient",
                "equivalentAirspeedKt | null | equivalentAirspeedKt",
                "equivalentAirspeedKt | 1e308 | equivalentAirspeedKt",
                "sideForceN | 2 | forceHeightMm",
                "adhesive | null | adhesive",
                "adhesive | {} | adhesive.peelNPerCm",
                "adhesive | {\"peelNPerCm\":-1,\"shearKPa\":1,\"tensileKPa\":1} | adhesive.peelNPerCm",
                "adhesive | {\"peelNPerCm\":1,\"shearKPa\":1} | adhesive.tensileKPa"
            })
    void badBondsAreNamed(String property, String value, String field) {
        String good = "{\"baseLengthMm\":25,\"baseWidthMm\":12,\"vaneHeightMm\":10,\"vaneLengthMm\":20,"
                + "\"tapeThicknessMm\":1,\"normalForceCoefficient\":1.2,\"equivalentAirspeedKt\":100,"
                + "\"adhesive\":{\"peelNPerCm\":1,\"shearKPa\":1,\"tensileKPa\":1}}";
        ObjectNode body = (ObjectNode) mapper().readTree(good);
        body.set(property, mapper().readTree(value));
        JsonNode problem = json(postJson("/api/v1/calculations/bond", body.toString()), 400);
        assertThat(problem.at("/errors/0/field").asString()).isEqualTo(field);
    }

    @Test
    void unrollOfAConstantChordPanelIsItsArcLength() {
        JsonNode section = calculate("section", "{\"section\":{\"naca\":\"4412\"},\"stations\":[0.25]}");
        JsonNode flat = calculate(
                "unroll",
                "{\"panel\":{\"spanMm\":2000,\"rootChordMm\":1350,\"tipChordMm\":1350,\"tipLeadingEdgeOffsetMm\":0,"
                        + "\"rootSection\":{\"naca\":\"4412\"},\"tipSection\":{\"naca\":\"4412\"},\"twistDeg\":0},"
                        + "\"side\":\"UPPER\",\"points\":[{\"spanFraction\":0.5,\"chordFraction\":0.25}]}");
        double arc = section.at("/upper/0/arcLength").asDouble();
        assertThat(flat.at("/points/0/x").asDouble()).isCloseTo(1350 * arc, within(1350e-6));
        assertThat(flat.at("/points/0/y").asDouble()).isCloseTo(1000, within(1e-6));
        assertThat(flat.get("maximumStrain").asDouble()).isZero();
    }

    @Test
    void solidOfAPlainVaneAgainstItsBoxes() {
        JsonNode answer = calculate("solid", PLAIN + ",\"densityKgM3\":1250}");
        // two boxes: base 30 × 16 × 1, vane 20 × 1.2 × 8
        assertThat(answer.get("volumeMm3").asDouble()).isCloseTo(672, within(672e-9));
        double base = 2 * 30 * 16 + 2 * (30 + 16) * 1;
        assertThat(answer.get("areaMm2").asDouble()).isCloseTo(base + 2 * (20 + 1.2) * 8, within(1e-6));
        assertThat(answer.get("massG").asDouble()).isCloseTo(0.84, within(1e-9));
        assertThat(answer.get("boundingBoxMm").get(5).asDouble()).isEqualTo(9);
        assertThat(answer.get("vertices").asInt() - answer.get("triangles").asInt() / 2)
                .as("Euler's formula: V − F/2 = 2")
                .isEqualTo(2);
        assertThat(calculate("solid", PLAIN + "}").get("massG").isNull()).isTrue();
    }

    @Test
    void solidComesInTheFormatAskedFor() {
        for (String type : new String[] {"model/stl", "model/3mf"}) {
            var file = postJson("/api/v1/calculations/solid", PLAIN + "}", "Accept", type);
            assertThat(file.statusCode()).isEqualTo(200);
            assertThat(file.headers().firstValue("Content-Type")).contains(type);
            var refused = postJson("/api/v1/calculations/solid", "{\"name\":\"x\"}", "Accept", type);
            assertThat(refused.headers().firstValue("Content-Type")).contains("application/problem+json");
            assertThat(json(refused, 400).get("errors")).isNotEmpty();
        }
        assertThat(json(postJson("/api/v1/calculations/solid", PLAIN + "}", "Accept", "image/png"), 406)
                        .get("status")
                        .asInt())
                .isEqualTo(406);
        assertThat(postJson("/api/v1/calculations/solid", PLAIN + "}").headers().firstValue("Content-Type"))
                .contains("application/json");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "section | {} | section",
                "section | {\"section\":{\"naca\":\"2412\"}} | stations",
                "section | {\"section\":{\"naca\":\"2412\"},\"stations\":[]} | stations",
                "section | {\"section\":{\"naca\":\"2412\"},\"stations\":[0.1,NaN]} | stations[1]",
                "section | {\"section\":{\"naca\":\"2412\"},\"stations\":[1e999]} | stations[0]",
                "section | {\"section\":{\"naca\":\"2412\"},\"stations\":[null]} | stations[0]",
                "section | {\"section\":{\"naca\":\"2412\"},\"stations\":[-0.1]} | stations[0]",
                "section | {\"section\":{\"naca\":\"2412\"},\"stations\":[\"0.1\"]} | stations[0]",
                "section | {\"section\":{\"naca\":\"24\"},\"stations\":[0.1]} | section.naca",
                "section | {\"section\":{\"coordinates\":[[0,0]]},\"stations\":[0.1]} | section.coordinates",
                "section | {\"section\":{\"coordinates\":[[null]]},\"stations\":[0.1]} | section.coordinates",
                "section | {\"section\":{\"foil\":\"x\"},\"stations\":[0.1]} | section.foil",
                "atmosphere | {} | pressureAltitudeFt",
                "atmosphere | {\"pressureAltitudeFt\":NaN} | pressureAltitudeFt",
                "atmosphere | {\"pressureAltitudeFt\":1e6} | pressureAltitudeFt",
                "atmosphere | {\"pressureAltitudeFt\":0,\"outsideAirTemperatureC\":-300} | outsideAirTemperatureC",
                "atmosphere | {\"altitudeFt\":0} | altitudeFt",
                "unroll | {} | panel",
                "unroll | {\"panel\":{\"spanMm\":-1},\"side\":\"UPPER\",\"points\":[null]} | panel.spanMm",
                "unroll | {\"side\":\"INNER\"} | side",
                "solid | {} | vane",
                "solid | {\"vane\":{\"heightMm\":-Infinity}} | vane.heightMm",
                "solid | {\"vane\":{\"heightMm\":8,\"lengthMm\":1e300}} | vane.lengthMm",
                "solid | {\"wane\":{}} | wane",
                "solid | [] | body"
            })
    void badFieldsAreNamed(String name, String body, String field) {
        JsonNode problem = json(postJson("/api/v1/calculations/" + name, body), 400);
        assertThat(StreamSupport.stream(problem.get("errors").spliterator(), false)
                        .map(e -> e.get("field").asString()))
                .anyMatch(f -> f.startsWith(field));
        assertThat(problem.get("errors"))
                .allSatisfy(e -> assertThat(e.get("allowed").asString()).isNotBlank());
    }

    @Test
    void tooManyStationsAndTooLargeABodyAreRefused() {
        String many = IntStream.range(0, 2001).mapToObj(i -> "0.5").collect(Collectors.joining(",", "[", "]"));
        String body = "{\"section\":{\"naca\":\"2412\"},\"stations\":" + many + "}";
        assertThat(json(postJson("/api/v1/calculations/section", body), 400)
                        .at("/errors/0/field")
                        .asString())
                .isEqualTo("stations");
        String huge = "{\"section\":{\"naca\":\"" + "1".repeat(300 * 1024) + "\"}}";
        assertThat(postJson("/api/v1/calculations/section", huge).statusCode()).isEqualTo(413);
    }

    @Test
    void theApiDescribesEachCalculation() {
        JsonNode paths = json(get("/v3/api-docs"), 200).get("paths");
        for (String name : new String[] {
            "section",
            "atmosphere",
            "airspeed",
            "flow",
            "flat-plate",
            "vane",
            "unroll",
            "solid",
            "gps-airspeed",
            "stall-reduction",
            "comparison",
            "sample-size"
        }) {
            JsonNode post = paths.get("/api/v1/calculations/" + name).get("post");
            assertThat(post.get("summary").asString()).isNotBlank();
            assertThat(post.get("tags").get(0).asString()).isEqualTo("Calculations");
        }
        JsonNode formats = paths.at("/~1api~1v1~1calculations~1solid/post/responses/200/content");
        assertThat(formats.propertyNames()).contains("application/json", "model/stl", "model/3mf");
    }
}
