package org.vanewright.platform;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvCellsTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1+1",
                "-1+1",
                "@SUM(A1)",
                "\t=1",
                "\r=1",
                "\n=1",
                "  =HYPERLINK(\"https://example.org\")",
                "=cmd|' /C calc'!A0",
                "-12.5-3",
                "+49 30",
                "\uFF1D1",
                "-",
                "-12,5",
                "-12.5\n=1"
            })
    void whatASpreadsheetWouldRunIsDefused(String text) {
        assertThat(CsvCells.defuse(text)).isEqualTo("'" + text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Row 1", "a=b", "12.5", "-12.5", "+3", "-.5", "-1e-6", "1-2", "'=1", "ü", " padded"})
    void numbersAndPlainTextStayAsTheyAre(String text) {
        assertThat(CsvCells.defuse(text)).isEqualTo(text);
    }

    @Test
    void defusingTwiceAddsNothing() {
        assertThat(CsvCells.defuse(CsvCells.defuse("=1"))).isEqualTo("'=1");
    }
}
