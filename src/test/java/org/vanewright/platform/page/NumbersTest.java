package org.vanewright.platform.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumbersTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"12.5 | 12.5", "12,5 | 12.5", "-3 | -3", "−3 | -3", " 1500 | 1500", "+.5 | 0.5", "7. | 7"})
    void readsAPointOrACommaAsDecimalSign(String typed, double number) {
        assertThat(Numbers.parse(typed)).contains(number);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "1,234.5",
                "1.234,5",
                "1,2,3",
                "NaN",
                "Infinity",
                "1e9",
                "0x10",
                "12 mm",
                "١٢",
                "1234567890123"
            })
    void refusesEverythingElse(String typed) {
        assertThat(Numbers.parse(typed)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1500, 0, 1500", "0.125, 2, 0.13", "2.50, 2, 2.5", "-0.001, 2, 0", "1200000, 0, 1200000"})
    void cutsTrailingZeros(double number, int decimals, String text) {
        assertThat(Numbers.trimmed(number, decimals)).isEqualTo(text);
    }
}
