package org.vanewright.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SlugsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Kite | 1 | kite",
                "Kite | 2 | kite-2",
                "  Käte's  Großer Kite!  | 1 | kate-s-grosser-kite",
                "İstanbul | 1 | istanbul",
                "№ 7½ | 3 | no-71-2-3",
                "Чайка | 1 | airframe",
                "--- | 2 | airframe-2",
                "New | 1 | new-2",
                "new | 2 | new-3",
            })
    void namesBecomeAddresses(String name, int attempt, String slug) {
        assertThat(Slugs.candidate(name, "airframe", attempt)).isEqualTo(slug);
    }

    @Test
    void anyNameGivesAnAddressThatFits() {
        Random random = new Random(60);
        for (int i = 0; i < 2000; i++) {
            String name = random.ints(random.nextInt(200), 1, 0x3000)
                    .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                    .toString();
            assertThat(Slugs.candidate(name, "device", 1 + random.nextInt(1000)))
                    .matches("[a-z0-9]+(-[a-z0-9]+)*")
                    .hasSizeLessThanOrEqualTo(80);
        }
    }
}
