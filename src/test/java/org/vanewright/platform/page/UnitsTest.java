package org.vanewright.platform.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class UnitsTest {
    private static final Units METRIC = new Units(UnitSystem.METRIC);
    private static final Units US = new Units(UnitSystem.US);

    @Test
    void writesNoMoreDigitsThanTheFigureDeserves() {
        assertThat(METRIC.length(1524.04)).isEqualTo("1524\u00a0mm");
        assertThat(US.length(1524.0)).isEqualTo("60\u00a0in");
        assertThat(METRIC.span(9200.0)).isEqualTo("9.2\u00a0m");
        assertThat(US.span(9144.0)).isEqualTo("30\u00a0ft");
        assertThat(METRIC.mass(450.4)).isEqualTo("450\u00a0kg");
        assertThat(US.mass(600.0)).isEqualTo("1323\u00a0lb");
        assertThat(US.area(11.2)).isEqualTo("120.6\u00a0ft²");
        assertThat(US.temperature(15.0)).isEqualTo("59\u00a0°F");
        assertThat(US.deviceLength(3.0)).isEqualTo("3\u00a0mm");
        assertThat(METRIC.speed(null)).isEqualTo("–");
    }

    /** 1 in = 25.4 mm and 1 lb = 0.45359237 kg exactly (international yard and pound agreement, 1959). */
    @Test
    void convertsByTheInternationalYardAndPound() {
        assertThat(Quantity.LENGTH.stored(1, UnitSystem.US)).isEqualTo(25.4);
        assertThat(Quantity.SPAN.stored(1, UnitSystem.US)).isEqualTo(304.8);
        assertThat(Quantity.MASS.stored(1000, UnitSystem.US)).isEqualTo(453.592);
        assertThat(Quantity.AREA.stored(100, UnitSystem.US)).isEqualTo(9.2903);
    }

    @Test
    void whatAFormShowsInEitherSystemComesBackAsItWas() {
        Random random = new Random(20260725);
        for (int i = 0; i < 2000; i++) {
            double mm = random.nextInt(20_000_000) / 1000.0;
            for (UnitSystem system : UnitSystem.values()) {
                String typed = Quantity.LENGTH.typed(mm, system);
                double back = Quantity.LENGTH.stored(Numbers.parse(typed).orElseThrow(), system);
                assertThat(back).as("%s mm typed as %s", mm, typed).isEqualTo(mm);
            }
            double kg = random.nextInt(5_700_000) / 1000.0;
            String pounds = Quantity.MASS.typed(kg, UnitSystem.US);
            assertThat(Quantity.MASS.stored(Numbers.parse(pounds).orElseThrow(), UnitSystem.US))
                    .isEqualTo(kg);
        }
    }
}
