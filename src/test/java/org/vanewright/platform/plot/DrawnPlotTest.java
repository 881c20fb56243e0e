package org.vanewright.platform.plot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;

class DrawnPlotTest {
    /** As the platform's formatter writes four significant digits, without zeros at the end. */
    @Test
    void figuresHaveFourDigits() {
        Random random = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(16) - 8);
            String expected = String.format(Locale.ROOT, "%.4g", value);
            if (!expected.contains("e") && expected.contains(".")) {
                expected = expected.replaceAll("[.]?0+$", "");
            }
            assertThat(DrawnPlot.digits(value)).as(Double.toString(value)).isEqualTo(expected);
        }
        assertThat(DrawnPlot.digits(0)).isEqualTo("0");
        assertThat(DrawnPlot.digits(1200)).isEqualTo("1200");
        assertThat(DrawnPlot.digits(9999.6)).isEqualTo("1.000e+04");
    }
}
