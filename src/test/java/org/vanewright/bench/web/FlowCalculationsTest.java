package org.vanewright.bench.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.testing.ServerTest;
import tools.jackson.databind.JsonNode;

/** Flow over sections and plates as programs meet it. */
class FlowCalculationsTest extends ServerTest {
    private JsonNode calculate(String name, String body) {
        JsonNode answer = json(postJson("/api/v1/calculations/" + name, body), 200);
        assertThat(answer.get("method").asString()).isNotBlank();
        assertThat(answer.get("sources")).isNotEmpty();
        assertThat(answer.get("validity").isArray()).isTrue();
        return answer;
    }

    @Test
    void flowOverASectionAgainstTheMeasuredOne() {
        JsonNode flow = calculate(
                "flow",
                "{\"section\":{\"naca\":\"0012\"},\"angleOfAttackDeg\":8.30,\"reynolds\":6e6,"
                        + "\"transition\":{\"upperX\":0.05,\"lowerX\":0.05}}");
        // C. L. Ladson, NASA TM 4074, 1988, grit 80, M 0.15, Re 6e6: lift 0.8873 and drag 0.01050 at 8.30°
        assertThat(flow.get("liftCoefficient").asDouble()).isCloseTo(0.8873, within(0.02 * 0.8873));
        assertThat(flow.get("profileDragCoefficient").asDouble()).isCloseTo(0.01050, within(0.08 * 0.01050));
        assertThat(flow.get("angleOfAttackDeg").asDouble()).isCloseTo(8.30, within(1e-9));
        assertThat(flow.at("/upper/transitionX").asDouble()).isLessThanOrEqualTo(0.0501);
        assertThat(flow.at("/upper/separationX").isNull()).isTrue();
        assertThat(flow.get("upper").propertyNames())
                .containsExactlyInAnyOrder("transitionX", "separationX", "laminarSeparationX", "stations");
        JsonNode station = flow.at("/upper/stations/60");
        assertThat(station.propertyNames())
                .containsExactlyInAnyOrder(
                        "x",
                        "y",
                        "arcLength",
                        "speedRatio",
                        "pressureCoefficient",
                        "thickness",
                        "displacementThickness",
                        "momentumThickness",
                        "shapeFactor",
                        "skinFrictionCoefficient",
                        "regime");
        assertThat(station.get("thickness").asDouble())
                .isGreaterThan(station.get("displacementThickness").asDouble());
        double speed = station.get("speedRatio").asDouble();
        assertThat(station.get("pressureCoefficient").asDouble()).isCloseTo(1 - speed * speed, within(1e-12));
    }

    @Test
    void flowAtALiftCoefficientFindsItsAngle() {
        JsonNode flow = calculate(
                "flow", "{\"section\":{\"naca\":\"0012\"},\"liftCoefficient\":0.0205,\"reynolds\":6e6,\"panels\":160}");
        assertThat(flow.get("liftCoefficient").asDouble()).isCloseTo(0.0205, within(5e-4));
        // I. H. Abbott, A. E. von Doenhoff, Theory of Wing Sections, 1959: smooth, drag 0.00593 at this lift
        assertThat(flow.get("profileDragCoefficient").asDouble()).isCloseTo(0.00593, within(0.08 * 0.00593));
    }

    @Test
    void potentialFlowAloneHasNoLayers() {
        JsonNode flow = calculate("flow", "{\"section\":{\"naca\":\"0012\"},\"angleOfAttackDeg\":0,\"inviscid\":true}");
        // a symmetric section lifts nothing at zero angle
        assertThat(flow.get("liftCoefficient").asDouble()).isCloseTo(0, within(1e-9));
        assertThat(flow.get("profileDragCoefficient").isNull()).isTrue();
        assertThat(flow.at("/lower/transitionX").isNull()).isTrue();
        JsonNode station = flow.at("/lower/stations/10");
        for (String layer : new String[] {
            "thickness",
            "displacementThickness",
            "momentumThickness",
            "shapeFactor",
            "skinFrictionCoefficient",
            "regime"
        }) {
            assertThat(station.has(layer)).as(layer).isTrue();
            assertThat(station.get(layer).isNull()).as(layer).isTrue();
        }
    }

    @Test
    void separatedFlowSaysSoAndClaimsNoDrag() {
        JsonNode flow = calculate("flow", "{\"section\":{\"naca\":\"0012\"},\"angleOfAttackDeg\":18,\"reynolds\":3e6}");
        assertThat(flow.get("profileDragCoefficient").isNull()).isTrue();
        assertThat(flow.at("/upper/separationX").asDouble()).isBetween(0.0, 0.9);
        assertThat(StreamSupport.stream(flow.get("validity").spliterator(), false)
                        .map(JsonNode::asString))
                .anyMatch(warning -> warning.contains("not claimed"));
        int last = flow.at("/upper/stations").size() - 1;
        assertThat(flow.at("/upper/stations/" + last + "/regime").asString()).isEqualTo("SEPARATED");
        assertThat(flow.at("/upper/stations/" + last + "/shapeFactor").isNull()).isTrue();
    }

    @Test
    void flatPlatesAgainstTheirLaws() {
        // H. Blasius, 1908: at Re 1e6, δ = 4.910, δ* = 1.7208, θ = 0.6641 thousandths of the distance
        JsonNode laminar = calculate(
                "flat-plate",
                "{\"speedMps\":20,\"distanceM\":0.5,\"kinematicViscosityM2S\":1e-5,\"regime\":\"LAMINAR\"}");
        assertThat(laminar.get("reynolds").asDouble()).isCloseTo(1e6, within(1e-3));
        assertThat(laminar.get("thicknessMm").asDouble()).isCloseTo(2.455, within(0.001));
        assertThat(laminar.get("displacementThicknessMm").asDouble()).isCloseTo(0.8604, within(1e-4));
        assertThat(laminar.get("momentumThicknessMm").asDouble()).isCloseTo(0.33206, within(1e-5));
        assertThat(laminar.get("skinFrictionCoefficient").asDouble()).isCloseTo(6.641e-4, within(1e-7));
        assertThat(laminar.get("validity")).isEmpty();
        // H. Schlichting, Boundary-Layer Theory, 1979, chapter XXI: δ = 0.37 x Re^(-1/5), c_f = 0.0592 Re^(-1/5)
        JsonNode turbulent = calculate("flat-plate", "{\"speedMps\":30,\"distanceM\":1,\"regime\":\"TURBULENT\"}");
        // ν of the standard atmosphere at sea level: 1.4607e-5 m²/s
        double reynolds = 30 / 1.4607e-5;
        assertThat(turbulent.get("reynolds").asDouble()).isCloseTo(reynolds, within(1e-4 * reynolds));
        assertThat(turbulent.get("thicknessMm").asDouble()).isCloseTo(370 * Math.pow(reynolds, -0.2), within(0.01));
        assertThat(turbulent.get("skinFrictionCoefficient").asDouble())
                .isCloseTo(0.0592 * Math.pow(reynolds, -0.2), within(1e-6));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "flow | {} | section",
                "flow | {\"section\":{\"naca\":\"0012\"},\"reynolds\":1e6} | angleOfAttackDeg",
                "flow | {\"section\":{\"naca\":\"0012\"},\"angleOfAttackDeg\":4} | reynolds",
                "flow | {\"section\":{\"naca\":\"0012\"},\"angleOfAttackDeg\":NaN,\"reynolds\":1e6} | angleOfAttackDeg",
                "flow | {\"section\":{\"naca\":\"0012\"},\"angleOfAttackDeg\":4,\"reynolds\":1e999} | reynolds",
                "flow | {\"section\":{\"naca\":\"0012\"},\"angleOfAttackDeg\":90,\"reynolds\":1e6} | angleOfAttackDeg",
                "flow | {\"section\":{\"naca\":\"0012\"},\"angleOfAttackDeg\":4,\"liftCoefficient\":0.4,\"reynolds\":1e6}"
                        + " | liftCoefficient",
                "flow | {\"section\":{\"naca\":\"0012\"},\"angleOfAttackDeg\":4,\"reynolds\":1e6,\"panels\":100000} | panels",
                "flow | {\"section\":{\"naca\":\"0012\"},\"angleOfAttackDeg\":4,\"reynolds\":1e6,\"panels\":80.5} | panels",
                "flow | {\"section\":{\"naca\":\"0012\"},\"angleOfAttackDeg\":4,\"reynolds\":1e6,\"transition\":{\"upperX\":2}}"
                        + " | transition.upperX",
                "flow | {\"section\":{\"naca\":\"0012\"},\"angleOfAttackDeg\":4,\"reynolds\":1e6,\"transition\":{\"top\":0}}"
                        + " | transition.top",
                "flow | {\"section\":{\"naca\":\"9\"},\"angleOfAttackDeg\":4,\"reynolds\":1e6} | section.naca",
                "flow | {\"section\":{\"coordinates\":[[1,0],[0,0],[1,0]]},\"angleOfAttackDeg\":4,\"reynolds\":1e6}"
                        + " | section.coordinates",
                "flow | {\"section\":{\"naca\":\"0012\"},\"angleOfAttackDeg\":4,\"inviscid\":\"yes\"} | inviscid",
                "flat-plate | {} | speedMps",
                "flat-plate | {\"speedMps\":30,\"distanceM\":1} | regime",
                "flat-plate | {\"speedMps\":30,\"distanceM\":1,\"regime\":\"CALM\"} | regime",
                "flat-plate | {\"speedMps\":30,\"distanceM\":0,\"regime\":\"LAMINAR\"} | distanceM",
                "flat-plate | {\"speedMps\":-Infinity,\"distanceM\":1,\"regime\":\"LAMINAR\"} | speedMps",
                "flat-plate | {\"speedMps\":30,\"distanceM\":1,\"kinematicViscosityM2S\":0,\"regime\":\"LAMINAR\"}"
                        + " | kinematicViscosityM2S"
            })
    void badFieldsAreNamed(String name, String body, String field) {
        JsonNode problem = json(postJson("/api/v1/calculations/" + name, body), 400);
        assertThat(StreamSupport.stream(problem.get("errors").spliterator(), false)
                        .map(e -> e.get("field").asString()))
                .anyMatch(f -> f.startsWith(field));
        assertThat(problem.get("errors")).allSatisfy(e -> {
            assertThat(e.get("value").asString()).isNotBlank();
            assertThat(e.get("allowed").asString()).isNotBlank();
        });
    }
}
