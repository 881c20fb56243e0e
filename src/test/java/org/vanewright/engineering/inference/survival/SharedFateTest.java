package org.vanewright.engineering.inference.survival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.inference.Simulation;

class SharedFateTest {
    /** Known of the infinitesimal jackknife: with each observation a unit of its own, it is Greenwood's error exactly. */
    @Test
    void everyDeviceAnInstallationOfItsOwnIsGreenwood() {
        List<List<Lifetime>> single =
                Remissions.treated().stream().map(l -> List.of(l)).toList();
        for (KaplanMeier.Step step : KaplanMeier.of(Remissions.treated(), 0.95).steps()) {
            double variance = SharedFate.variance(single, step.hours());
            assertThat(step.survival() * Math.sqrt(variance)).isCloseTo(step.standardError(), within(1e-12));
        }
    }

    @Test
    void eachDeviceTwiceGivesTheErrorOfOnce() {
        List<List<Lifetime>> single =
                Remissions.treated().stream().map(l -> List.of(l)).toList();
        List<List<Lifetime>> twice =
                Remissions.treated().stream().map(l -> List.of(l, l)).toList();
        List<Lifetime> all = twice.stream().flatMap(List::stream).toList();
        for (KaplanMeier.Step step : KaplanMeier.of(all, 0.95).steps()) {
            double shared = Objects.requireNonNull(SharedFate.standardError(twice, step.hours()));
            assertThat(shared)
                    .isCloseTo(Objects.requireNonNull(SharedFate.standardError(single, step.hours())), within(1e-12))
                    .isGreaterThan(step.standardError() * 1.4);
        }
    }

    @Test
    void oneInstallationCannotSayHowMuchTheyDiffer() {
        List<List<Lifetime>> one = List.of(Remissions.treated());
        assertThat(SharedFate.standardError(one, 10)).isNull();
        assertThat(SharedFate.interval(one, 10, 0.95)).isNull();
        List<List<Lifetime>> two = List.of(Remissions.treated(), Remissions.placebo());
        assertThat(SharedFate.interval(two, 0.5, 0.95)).as("nothing lost yet").isNull();
    }

    /**
     * Simulated: 25 installations of 24 devices whose rates differ by a gamma factor of variance 1, looked at after 25 h; the
     * share that is left on the whole is known. As if each device had a fate of its own, limits cover far too rarely.
     */
    @Test
    void limitsWithTheInstallationAsTheUnitCoverAndNaiveOnesDoNot() {
        double truth = 1 / (1 + 0.3);
        double shared = new Simulation(53, 1_000).fraction(chance -> {
            List<List<Lifetime>> club = club(chance, 25, 24);
            Interval interval = SharedFate.interval(club, 25, 0.95);
            return interval != null && interval.contains(truth);
        });
        double naive = new Simulation(53, 1_000).fraction(chance -> {
            List<Lifetime> all =
                    club(chance, 25, 24).stream().flatMap(List::stream).toList();
            KaplanMeier.Step step = KaplanMeier.of(all, 0.95).stepAt(25);
            return step != null && step.low() <= truth && truth <= step.high();
        });
        assertThat(shared).isBetween(0.92, 0.985);
        assertThat(naive).isLessThan(0.75);
    }

    /** Each device lost by 25 h with chance 1 − exp(−0.3 f), f the installation's factor; found at 25 h. */
    private static List<List<Lifetime>> club(RandomGenerator chance, int installations, int devices) {
        GammaDistribution factor = new GammaDistribution(1, 1);
        List<List<Lifetime>> club = new ArrayList<>();
        for (int i = 0; i < installations; i++) {
            double rate = 0.3 * factor.inverseCumulativeProbability(chance.nextDouble());
            club.add(IntStream.range(0, devices)
                    .mapToObj(d -> new Lifetime(25, chance.nextDouble() < -Math.expm1(-rate)))
                    .toList());
        }
        return club;
    }

    @Test
    void drawnIntervalsAreTheSameForASeedAndWiderWithInstallations() {
        List<Installed> club = club(new Well19937c(7), 12, 20).stream()
                .map(i -> new Installed(i.stream()
                        .map(l -> l.lost() ? new Span(0, l.hours()) : Span.kept(l.hours()))
                        .toList()))
                .toList();
        Bootstrap bootstrap = new Bootstrap(5, 300);
        Interval devices = bootstrap.ofDevices(club, List.of(25.0), 0.95).get(0);
        Interval whole = Objects.requireNonNull(bootstrap.ofInstallations(club, List.of(25.0), 0.95))
                .get(0);
        assertThat(whole.halfWidth()).isGreaterThan(devices.halfWidth());
        assertThat(bootstrap.ofDevices(club, List.of(25.0), 0.95)).containsExactly(devices);
        assertThat(bootstrap.ofInstallations(club.subList(0, 1), List.of(25.0), 0.95))
                .isNull();
        double estimate = Turnbull.of(
                        club.stream().flatMap(i -> i.spans().stream()).toList())
                .survivalAt(25);
        assertThat(devices.contains(estimate)).isTrue();
    }
}
