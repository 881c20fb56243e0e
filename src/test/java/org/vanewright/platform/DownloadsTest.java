package org.vanewright.platform;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DownloadsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "kite-r2.stl | kite-r2.stl",
                "../../etc/passwd | etc-passwd",
                ".hidden | hidden",
                "Käte; filename=x.exe | Kate-filename-x.exe",
                "☃ | file",
                "☃.pdf | pdf",
            })
    void fileNamesAreSafe(String name, String safe) {
        assertThat(Downloads.safeName(name)).isEqualTo(safe);
    }
}
