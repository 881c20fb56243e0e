package org.vanewright.engineering.inference.survival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.inference.Simulation;

class LogRankTest {
    /** A statistics package prints 16.8 on 1 degree of freedom, expected 19.3 and 10.7 (from memory); Σ(O−E)²/E is 15.233. */
    @Test
    void remissionsAgainstThePublishedStatistic() {
        LogRank test = Objects.requireNonNull(LogRank.of(List.of(Remissions.treated(), Remissions.placebo())));
        assertThat(test.chiSquared()).isCloseTo(16.79, within(0.005));
        assertThat(test.degreesOfFreedom()).isEqualTo(1);
        assertThat(test.pValue()).isCloseTo(4.17e-5, within(2e-7));
        assertThat(test.observed()).containsExactly(9, 21);
        assertThat(test.expected().get(0)).isCloseTo(19.25, within(0.005));
        assertThat(test.expected().get(1)).isCloseTo(10.75, within(0.005));
        double simple = 0;
        for (int i = 0; i < 2; i++) {
            simple += Math.pow(test.observed().get(i) - test.expected().get(i), 2)
                    / test.expected().get(i);
        }
        assertThat(simple).as("what it is not").isCloseTo(15.233, within(1e-3));
    }

    @Test
    void theOrderOfGroupsAndAGroupThatIsNeverAtRiskChangeNothing() {
        LogRank test = Objects.requireNonNull(LogRank.of(List.of(Remissions.treated(), Remissions.placebo())));
        LogRank turned = Objects.requireNonNull(LogRank.of(List.of(Remissions.placebo(), Remissions.treated())));
        assertThat(turned.chiSquared()).isCloseTo(test.chiSquared(), within(1e-9));
        List<Lifetime> gone = Remissions.lifetimes(false, 0.5, 0.5);
        LogRank three = Objects.requireNonNull(LogRank.of(List.of(Remissions.treated(), gone, Remissions.placebo())));
        assertThat(three.chiSquared()).isCloseTo(test.chiSquared(), within(1e-9));
        assertThat(three.degreesOfFreedom()).isEqualTo(1);
    }

    @Test
    void likeGroupsDoNotDifferAndNothingLostCannotBeCompared() {
        LogRank same = Objects.requireNonNull(
                LogRank.of(List.of(Remissions.treated(), Remissions.treated(), Remissions.treated())));
        assertThat(same.chiSquared()).isCloseTo(0, within(1e-9));
        assertThat(same.degreesOfFreedom()).isEqualTo(2);
        assertThat(same.pValue()).isCloseTo(1, within(1e-9));
        List<Lifetime> kept = Remissions.lifetimes(false, 5, 6);
        assertThat(LogRank.of(List.of(kept, kept))).isNull();
        assertThatIllegalArgumentException().isThrownBy(() -> LogRank.of(List.of(kept)));
    }

    /** Simulated: three groups of 40 that lose alike; ±3 standard errors of 2,000 runs about 5 %. */
    @Test
    void groupsThatLoseAlikeAreCalledDifferentAsOftenAsItSays() {
        double alarms = new Simulation(43, 2_000).fraction(chance -> {
            List<List<Lifetime>> groups = new ArrayList<>();
            for (int g = 0; g < 3; g++) {
                List<Lifetime> group = new ArrayList<>();
                for (int i = 0; i < 40; i++) {
                    double loss = -50 * Math.log(1 - chance.nextDouble());
                    group.add(new Lifetime(Math.min(loss, 60), loss <= 60));
                }
                groups.add(group);
            }
            return Objects.requireNonNull(LogRank.of(groups)).pValue() < 0.05;
        });
        assertThat(alarms).isBetween(0.035, 0.066);
    }
}
