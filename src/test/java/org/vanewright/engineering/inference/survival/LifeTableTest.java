package org.vanewright.engineering.inference.survival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class LifeTableTest {
    /** By hand: 21 enter; 5 lost and 3 withdrawn up to 10 weeks leave 19.5 exposed. */
    @Test
    void rowsByHand() {
        LifeTable table = LifeTable.of(Remissions.treated(), List.of(10.0, 20.0, 40.0));
        LifeTable.Row first = table.rows().get(0);
        assertThat(first.entered()).isEqualTo(21);
        assertThat(first.lost()).isEqualTo(5);
        assertThat(first.withdrawn()).isEqualTo(3);
        assertThat(first.exposed()).isEqualTo(19.5);
        assertThat(first.survival()).isCloseTo(1 - 5 / 19.5, within(1e-12));
        LifeTable.Row second = table.rows().get(1);
        assertThat(second.entered()).isEqualTo(13);
        assertThat(second.lost()).isEqualTo(2);
        assertThat(second.withdrawn()).isEqualTo(4);
        LifeTable.Row last = table.rows().get(2);
        assertThat(last.entered() - last.lost() - last.withdrawn()).isZero();
    }

    @Test
    void everybodyIsCountedOnceAndZeroHoursBelongToTheFirstRow() {
        List<Lifetime> lifetimes = List.of(new Lifetime(0, true), new Lifetime(10, true), new Lifetime(10.1, false));
        LifeTable table = LifeTable.of(lifetimes, List.of(10.0, 20.0));
        assertThat(table.rows().get(0).lost()).isEqualTo(2);
        assertThat(table.rows().stream().mapToInt(r -> r.lost() + r.withdrawn()).sum())
                .isEqualTo(3);
    }

    @Test
    void aLookIsDueBeforeMoreThanAcceptedAreLostAndNeverLaterThanWatched() {
        double rate = -Math.log(0.8) / 50;
        assertThat(LookInterval.hours(0.8, 50, 40, 1)).isCloseTo(1 / (40 * rate), within(1e-9));
        assertThat(LookInterval.hours(0.999, 50, 1, 1)).isEqualTo(50);
    }
}
