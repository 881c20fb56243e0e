package org.vanewright.bench.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.testing.ServerTest;
import tools.jackson.databind.JsonNode;

/** Reductions and comparisons as programs meet them. */
class FlightCalculationsTest extends ServerTest {
    private JsonNode calculate(String name, String body) {
        JsonNode answer = json(postJson("/api/v1/calculations/" + name, body), 200);
        assertThat(answer.get("method").asString()).isNotBlank();
        assertThat(answer.get("sources")).isNotEmpty();
        assertThat(answer.get("validity").isArray()).isTrue();
        return answer;
    }

    /** D. Gray, Using GPS to Accurately Determine True Airspeed, 1998, worked example (quoted second-hand). */
    @Test
    void tracksAgainstThePublishedExample() {
        JsonNode answer = calculate(
                "gps-airspeed",
                "{\"legs\":[{\"groundSpeedKt\":140,\"trackDeg\":192},{\"groundSpeedKt\":112,\"trackDeg\":283},"
                        + "{\"groundSpeedKt\":120,\"trackDeg\":20}]}");
        assertThat(answer.get("trueAirspeedKt").asDouble()).isCloseTo(130, within(0.05));
        assertThat(answer.get("windSpeedKt").asDouble()).isCloseTo(20.6, within(0.05));
        assertThat(answer.get("windFromDeg").asDouble()).isCloseTo(314.8, within(0.1));
        assertThat(answer.at("/headingsDeg/1").asDouble()).isCloseTo(287.8, within(0.1));
        assertThat(answer.has("tracksDeg")).isFalse();
        assertThat(answer.get("residualKt").isNull()).isTrue();
        assertThat(answer.get("validity")).isEmpty();
    }

    /** E. Williams, Aviation Formulary (quoted second-hand): TAS 80 kt, wind 240/15; the fourth leg by the wind triangle. */
    @Test
    void headingsAgainstTheFormulary() {
        String legs = "{\"groundSpeedKt\":88.459030,\"headingDeg\":0},{\"groundSpeedKt\":88.459030,\"headingDeg\":120},"
                + "{\"groundSpeedKt\":65,\"headingDeg\":240}";
        JsonNode three = calculate("gps-airspeed", "{\"legs\":[" + legs + "]}");
        assertThat(three.get("trueAirspeedKt").asDouble()).isCloseTo(80, within(1e-5));
        assertThat(three.get("tracksDeg")).hasSize(3);
        assertThat(three.has("headingsDeg")).isFalse();
        JsonNode four = calculate("gps-airspeed", "{\"legs\":[" + legs + ",{\"groundSpeedKt\":95,\"headingDeg\":60}]}");
        assertThat(four.get("trueAirspeedKt").asDouble()).isCloseTo(80, within(1e-5));
        assertThat(four.get("residualKt").asDouble()).isCloseTo(0, within(1e-5));
        JsonNode rough =
                calculate("gps-airspeed", "{\"legs\":[" + legs + ",{\"groundSpeedKt\":105,\"headingDeg\":60}]}");
        assertThat(rough.get("residualKt").asDouble()).isGreaterThan(2);
        assertThat(rough.get("validity")).hasSize(1);
    }

    @Test
    void stallsAtTheStandardMass() {
        // 500 kg on 12 m² at 20 m/s = 38.8769 kt: C_L = 4903.325/(245 · 12)
        JsonNode one = calculate(
                "stall-reduction",
                "{\"standardMassKg\":500,\"wingAreaM2\":12,\"points\":[{\"calibratedAirspeedKt\":38.876890,\"massKg\":500}]}");
        assertThat(one.at("/points/0/standardAirspeedKt").asDouble()).isEqualTo(38.876890);
        assertThat(one.at("/points/0/liftCoefficient").asDouble()).isCloseTo(1.66780, within(1e-5));
        assertThat(one.get("standardDeviationKt").isNull()).isTrue();
        assertThat(one.get("entryRateSlope").isNull()).isTrue();
        assertThat(one.get("atOneKnotPerSecondKt").asDouble())
                .isEqualTo(one.get("meanKt").asDouble());
        assertThat(one.get("validity")).hasSize(2);
        JsonNode line = calculate(
                "stall-reduction",
                "{\"standardMassKg\":500,\"points\":["
                        + "{\"calibratedAirspeedKt\":43,\"massKg\":500,\"loadFactor\":1,\"entryRateKtPerS\":0.5},"
                        + "{\"calibratedAirspeedKt\":42,\"massKg\":500,\"entryRateKtPerS\":1.5},"
                        + "{\"calibratedAirspeedKt\":41.5,\"massKg\":500,\"entryRateKtPerS\":2}]}");
        assertThat(line.get("entryRateSlope").asDouble()).isCloseTo(-1, within(1e-9));
        assertThat(line.get("atOneKnotPerSecondKt").asDouble()).isCloseTo(42.5, within(1e-9));
        assertThat(line.at("/points/0/liftCoefficient").isNull()).isTrue();
        assertThat(line.get("standardErrorKt").asDouble())
                .isCloseTo(line.get("standardDeviationKt").asDouble() / Math.sqrt(3), within(1e-12));
        assertThat(line.get("validity")).isEmpty();
    }

    /** A database's function reference prints t and p of these six values. */
    @Test
    void comparisonAgainstThePrintedOne() {
        JsonNode answer = calculate(
                "comparison", "{\"baseline\":[18.9,20.3,19],\"modified\":[20.3,22.1,21.9],\"confidence\":0.95}");
        assertThat(answer.get("t").asDouble()).isCloseTo(2.7988719532211235, within(1e-9));
        assertThat(answer.get("pValue").asDouble()).isCloseTo(0.051807360348581945, within(1e-9));
        assertThat(answer.get("degreesOfFreedom").asDouble()).isCloseTo(3.7999, within(1e-4));
        assertThat(answer.get("difference").asDouble()).isCloseTo(6.1 / 3, within(1e-12));
        assertThat(answer.at("/interval/0").asDouble()).isCloseTo(-0.026294, within(1e-6));
        assertThat(answer.at("/interval/1").asDouble()).isCloseTo(4.092961, within(1e-6));
        assertThat(answer.get("equalVarianceAssumed").asBoolean()).isFalse();
        // without confidence it is 95 %
        assertThat(calculate("comparison", "{\"baseline\":[18.9,20.3,19],\"modified\":[20.3,22.1,21.9]}")
                        .get("interval"))
                .isEqualTo(answer.get("interval"));
    }

    @Test
    void valuesThatLieApartAreNamedAndKept() {
        JsonNode answer = calculate(
                "comparison", "{\"baseline\":[43,43.1,42.9,43,43.1,49],\"modified\":[41,41.2,40.9,41.1,41,41.2]}");
        assertThat(answer.at("/validity/0").asString())
                .contains("Value 6 of baseline, 49.0")
                .contains("included");
        // mean of the baseline with it: 44.0167
        assertThat(answer.get("difference").asDouble()).isCloseTo(41.0667 - 44.0167, within(1e-3));
    }

    /** J. Cohen, Statistical Power Analysis for the Behavioral Sciences, 1988 (from memory). */
    @Test
    void sampleSizeAgainstCohensTables() {
        JsonNode answer = calculate("sample-size", "{\"standardDeviation\":2,\"difference\":-1}");
        assertThat(answer.get("perGroup").asInt()).isEqualTo(64);
        assertThat(answer.get("normalApproximation").asDouble()).isCloseTo(62.79, within(0.005));
        JsonNode large = calculate(
                "sample-size", "{\"standardDeviation\":1,\"difference\":1,\"significance\":0.05,\"power\":0.8}");
        assertThat(large.get("perGroup").asInt()).isEqualTo(17);
        assertThat(large.get("validity")).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "gps-airspeed | {} | legs",
                "gps-airspeed | {\"legs\":[]} | legs",
                "gps-airspeed | {\"legs\":[null,null,null]} | legs[0]",
                "gps-airspeed | {\"legs\":[{},{},{}]} | legs[2].trackDeg",
                "gps-airspeed | {\"legs\":[{\"groundSpeedKt\":NaN,\"trackDeg\":0},{},{}]} | legs[0].groundSpeedKt",
                "gps-airspeed | {\"legs\":[{\"groundSpeedKt\":1e999,\"headingDeg\":0},{},{}]} | legs[0].groundSpeedKt",
                "gps-airspeed | {\"legs\":[{\"groundSpeedKt\":60,\"headingDeg\":0},{\"groundSpeedKt\":60,\"trackDeg\":120},"
                        + "{\"groundSpeedKt\":60,\"headingDeg\":240}]} | legs[1].trackDeg",
                "gps-airspeed | {\"legs\":[{\"groundSpeedKt\":60,\"headingDeg\":0,\"trackDeg\":1},{},{}]} | legs[0].headingDeg",
                "gps-airspeed | {\"legs\":[{\"groundSpeedKt\":60,\"trackDeg\":9},{\"groundSpeedKt\":60,\"trackDeg\":9},"
                        + "{\"groundSpeedKt\":60,\"trackDeg\":9}]} | legs",
                "gps-airspeed | {\"legs\":[{\"groundSpeedKt\":0,\"headingDeg\":0},{\"groundSpeedKt\":0,\"headingDeg\":120},"
                        + "{\"groundSpeedKt\":0,\"headingDeg\":240}]} | legs",
                "gps-airspeed | {\"legs\":[{\"speedKt\":60}]} | legs[0].speedKt",
                "stall-reduction | {} | standardMassKg",
                "stall-reduction | {\"standardMassKg\":500} | points",
                "stall-reduction | {\"standardMassKg\":500,\"points\":[]} | points",
                "stall-reduction | {\"standardMassKg\":500,\"points\":[null]} | points[0]",
                "stall-reduction | {\"standardMassKg\":500,\"points\":[{}]} | points[0].massKg",
                "stall-reduction | {\"standardMassKg\":-Infinity,\"points\":[{\"calibratedAirspeedKt\":40,\"massKg\":500}]}"
                        + " | standardMassKg",
                "stall-reduction | {\"standardMassKg\":500,\"wingAreaM2\":0,\"points\":[{\"calibratedAirspeedKt\":40,"
                        + "\"massKg\":500}]} | wingAreaM2",
                "stall-reduction | {\"standardMassKg\":500,\"points\":[{\"calibratedAirspeedKt\":40,\"massKg\":500,"
                        + "\"loadFactor\":0}]} | points[0].loadFactor",
                "stall-reduction | {\"standardMassKg\":500,\"points\":[{\"calibratedAirspeedKt\":40,\"massKg\":500,"
                        + "\"entryRateKtPerS\":NaN}]} | points[0].entryRateKtPerS",
                "comparison | {} | baseline",
                "comparison | {\"baseline\":[1,2]} | modified",
                "comparison | {\"baseline\":[1],\"modified\":[1,2]} | baseline",
                "comparison | {\"baseline\":[1,null],\"modified\":[1,2]} | baseline[1]",
                "comparison | {\"baseline\":[1,2],\"modified\":[1,NaN]} | modified[1]",
                "comparison | {\"baseline\":[1,2],\"modified\":[1,1e300]} | modified[1]",
                "comparison | {\"baseline\":[1,1],\"modified\":[2,2]} | baseline",
                "comparison | {\"baseline\":[1,2],\"modified\":[2,3],\"confidence\":1} | confidence",
                "comparison | {\"baseline\":[1,2],\"modified\":[2,3],\"confidence\":95} | confidence",
                "comparison | {\"baseline\":\"1,2\",\"modified\":[2,3]} | baseline",
                "sample-size | {} | standardDeviation",
                "sample-size | {\"standardDeviation\":1} | difference",
                "sample-size | {\"standardDeviation\":0,\"difference\":1} | standardDeviation",
                "sample-size | {\"standardDeviation\":1,\"difference\":0} | difference",
                "sample-size | {\"standardDeviation\":1e9,\"difference\":1e-9} | difference",
                "sample-size | {\"standardDeviation\":1,\"difference\":NaN} | difference",
                "sample-size | {\"standardDeviation\":1,\"difference\":1,\"significance\":0} | significance",
                "sample-size | {\"standardDeviation\":1,\"difference\":1,\"power\":1} | power",
                "sample-size | {\"standardDeviation\":1,\"difference\":1,\"significance\":0.3,\"power\":0.2} | power"
            })
    void badFieldsAreNamed(String name, String body, String field) {
        JsonNode problem = json(postJson("/api/v1/calculations/" + name, body), 400);
        assertThat(StreamSupport.stream(problem.get("errors").spliterator(), false)
                        .map(e -> e.get("field").asString()))
                .contains(field);
        assertThat(problem.get("errors")).allSatisfy(e -> {
            assertThat(e.get("value").asString()).isNotBlank();
            assertThat(e.get("allowed").asString()).isNotBlank();
        });
    }

    @Test
    void hugeArraysAreRefusedByTheirCount() {
        String numbers = IntStream.range(0, 10_001).mapToObj(i -> "1").collect(Collectors.joining(",", "[", "]"));
        JsonNode comparison = json(
                postJson("/api/v1/calculations/comparison", "{\"baseline\":" + numbers + ",\"modified\":[1,2]}"), 400);
        assertThat(comparison.at("/errors/0/field").asString()).isEqualTo("baseline");
        String nulls = IntStream.range(0, 1_001).mapToObj(i -> "null").collect(Collectors.joining(",", "[", "]"));
        JsonNode legs = json(postJson("/api/v1/calculations/gps-airspeed", "{\"legs\":" + nulls + "}"), 400);
        assertThat(legs.get("errors")).hasSize(1);
        JsonNode points = json(
                postJson("/api/v1/calculations/stall-reduction", "{\"standardMassKg\":500,\"points\":" + nulls + "}"),
                400);
        assertThat(points.get("errors")).hasSize(1);
    }

    private static String observations(boolean lost, double... hours) {
        return Arrays.stream(hours)
                .mapToObj(h -> "{\"hours\":" + h + ",\"lost\":" + lost + "}")
                .collect(Collectors.joining(","));
    }

    /** E. J. Freireich et al., Blood 21, 1963; figures of Kalbfleisch and Prentice (from memory). */
    @Test
    void retentionAgainstPublishedRemissions() {
        String treated = observations(true, 6, 6, 6, 7, 10, 13, 16, 22, 23) + ","
                + observations(false, 6, 9, 10, 11, 17, 19, 20, 25, 32, 32, 34, 35);
        String placebo = observations(true, 1, 1, 2, 2, 3, 4, 4, 5, 5, 8, 8, 8, 8, 11, 11, 12, 12, 15, 17, 22, 23);
        JsonNode answer = calculate(
                "retention",
                "{\"groups\":[{\"name\":\"Treated\",\"observations\":[" + treated
                        + "]},{\"name\":\"Placebo\",\"observations\":[" + placebo + "]}]}");
        JsonNode step = answer.at("/groups/0/curve/2");
        assertThat(step.get("hours").asDouble()).isEqualTo(10);
        assertThat(step.get("atRisk").asInt()).isEqualTo(15);
        assertThat(step.get("lost").asInt()).isEqualTo(1);
        assertThat(step.get("survival").asDouble()).isCloseTo(0.752941, within(1e-6));
        assertThat(step.get("standardError").asDouble()).isCloseTo(0.096350, within(1e-6));
        assertThat(step.get("low").asDouble()).isCloseTo(0.5032, within(1e-4));
        assertThat(step.get("high").asDouble()).isCloseTo(0.8894, within(1e-4));
        assertThat(answer.at("/groups/0/medianHours").asDouble()).isEqualTo(23);
        assertThat(answer.at("/groups/1/medianHours").asDouble()).isEqualTo(8);
        assertThat(answer.at("/logRank/chiSquared").asDouble()).isCloseTo(16.79, within(0.005));
        assertThat(answer.at("/logRank/degreesOfFreedom").asInt()).isEqualTo(1);
        assertThat(answer.at("/logRank/pValue").asDouble()).isLessThan(1e-4);
    }

    @Test
    void retentionOfOneGroupIsNotCompared() {
        JsonNode answer = calculate(
                "retention",
                "{\"confidence\":0.9,\"groups\":[{\"name\":\"Tape\",\"observations\":[" + observations(false, 25, 25)
                        + "]}]}");
        assertThat(answer.get("logRank").isNull()).isTrue();
        assertThat(answer.at("/groups/0/curve")).isEmpty();
        assertThat(answer.at("/groups/0/medianHours").isNull()).isTrue();
        assertThat(answer.get("validity").toString()).contains("nothing was lost of 2");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{} | groups",
                "{\"groups\":[]} | groups",
                "{\"groups\":[null]} | groups[0]",
                "{\"groups\":[{\"name\":\"A\"}]} | groups[0].observations",
                "{\"groups\":[{\"observations\":[{\"hours\":1,\"lost\":true}]}]} | groups[0].name",
                "{\"groups\":[{\"name\":\"A\",\"observations\":[null]}]} | groups[0].observations[0]",
                "{\"groups\":[{\"name\":\"A\",\"observations\":[{\"hours\":-1,\"lost\":true}]}]} | groups[0].observations[0].hours",
                "{\"groups\":[{\"name\":\"A\",\"observations\":[{\"hours\":1e300,\"lost\":true}]}]} | groups[0].observations[0].hours",
                "{\"groups\":[{\"name\":\"A\",\"observations\":[{\"hours\":1}]}]} | groups[0].observations[0].lost",
                "{\"groups\":[{\"name\":\"A\",\"observations\":[{\"hours\":1,\"lost\":true}]}],\"confidence\":1} | confidence"
            })
    void retentionNamesWhatItCannotUse(String body, String field) {
        JsonNode problem = json(postJson("/api/v1/calculations/retention", body), 400);
        assertThat(problem.at("/errors/0/field").asString()).isEqualTo(field);
    }
}
