package org.vanewright.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CanonicalJsonTest {
    private final CanonicalJson json = new CanonicalJson();

    record Before(String name, @Nullable Double heightMm) {}

    record After(
            String name,
            @Nullable Double heightMm,
            @Nullable String colour) {}

    // A. Rundgren, B. Jordan, S. Erdtman, 2020, RFC 8785, section 3.2.2 and its result in 3.2.3; from memory.
    @Test
    void theSampleOfTheStandardComesOutAsPrinted() {
        String sample = """
                {
                  "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
                  "string": "\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\"\\/",
                  "literals": [null, true, false]
                }""";
        assertThat(json.canonicalize(sample))
                .isEqualTo("{\"literals\":[null,true,false],"
                        + "\"numbers\":[333333333.3333333,1e+30,4.5,0.002,1e-27],"
                        + "\"string\":\"€$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}");
    }

    // RFC 8785, section 3.2.3: names sorted by UTF-16 code units; from memory.
    @Test
    void namesAreSortedByTheirCodeUnits() {
        String shuffled =
                "{\"\\u20ac\":1,\"\\r\":2,\"\\ufb33\":3,\"1\":4,\"\\ud83d\\ude00\":5,\"\\u0080\":6,\"\\u00f6\":7}";
        assertThat(json.canonicalize(shuffled))
                .isEqualTo("{\"\\r\":2,\"1\":4,\"\u0080\":6,\"ö\":7,\"€\":1,\"\ud83d\ude00\":5,\"\ufb33\":3}");
    }

    // RFC 8785, appendix B: IEEE 754 bits and their form; from memory.
    @ParameterizedTest
    @CsvSource({
        "0000000000000000, 0",
        "8000000000000000, 0",
        "0000000000000001, 5e-324",
        "8000000000000001, -5e-324",
        "7fefffffffffffff, 1.7976931348623157e+308",
        "4340000000000000, 9007199254740992",
        "4430000000000000, 295147905179352830000",
        "44b52d02c7e14af5, 9.999999999999997e+22",
        "44b52d02c7e14af6, 1e+23",
        "444b1ae4d6e2ef50, 1e+21",
        "3eb0c6f7a0b5ed8d, 0.000001",
        "41b3de4355555554, 333333333.33333325",
        "41b3de4355555555, 333333333.3333333",
    })
    void numbersHaveTheStandardsForm(String bits, String form) {
        double number = Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16));
        assertThat(json.write(List.of(number))).isEqualTo("[" + form + "]");
    }

    // NIST, 2015, FIPS 180-4 (example "abc").
    @Test
    void theHashIsSha256() {
        assertThat(json.sha256("abc")).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }

    @Test
    void onlyComponentsThatAreThereAreWritten() {
        assertThat(json.write(Note.of("Kite", 30)))
                .isEqualTo("{\"heightMm\":10,\"invented\":true,\"name\":\"Kite\",\"numbers\":[30]}");
    }

    @Test
    void aPropertyAddedLaterChangesNoHash() {
        assertThat(json.write(new After("Kite", 2.5, null))).isEqualTo(json.write(new Before("Kite", 2.5)));
        assertThat(json.read(json.write(new After("Kite", 2.5, "red")), Before.class))
                .isEqualTo(new Before("Kite", 2.5));
    }

    @Test
    void whatJsonCannotSayIsRefused() {
        for (double number : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertThatIllegalArgumentException().isThrownBy(() -> json.write(Map.of("height", number)));
        }
    }

    @Test
    void everyDoubleComesBackAsItWas() {
        Random random = new Random(8785);
        for (int i = 0; i < 5000; i++) {
            double number = Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(number)) {
                Before document = new Before("Kite", number + 0.0);
                assertThat(json.read(json.write(document), Before.class)).isEqualTo(document);
            }
        }
    }
}
