package org.vanewright.engineering.bond;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BondMarginsTest {
    private static final BondStress ASKED = new BondStress(0.01, 2_000, 10_000, 50);

    @Test
    void strengthLeftOverDemand() {
        BondMargins margins = new BondStrength(10.0, 400.0, 500.0).over(ASKED, new KnockDown(0.5, 0.5, 0.8));
        assertThat(margins.shear()).isCloseTo(400e3 * 0.2 / 2_000, within(1e-9));
        assertThat(margins.tension()).isCloseTo(500e3 * 0.2 / 10_000, within(1e-9));
        assertThat(margins.cleavage()).isCloseTo(1_000 * 0.2 / 50, within(1e-9));
        assertThat(margins.weakest()).contains(BondMode.CLEAVAGE);
        assertThat(margins.least()).hasValueSatisfying(m -> assertThat(m).isCloseTo(4, within(1e-9)));
    }

    @Test
    void whatIsNotStatedIsNotJudged() {
        BondMargins margins = new BondStrength(null, 4.0, null).over(ASKED, KnockDown.NONE);
        assertThat(margins.tension()).isNull();
        assertThat(margins.cleavage()).isNull();
        assertThat(margins.weakest()).contains(BondMode.SHEAR);
        assertThat(new BondStrength(null, null, null)
                        .over(ASKED, KnockDown.NONE)
                        .weakest())
                .isEmpty();
    }
}
