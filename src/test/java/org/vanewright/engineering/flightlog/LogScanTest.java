package org.vanewright.engineering.flightlog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.flightlog.SyntheticFlight.Recorder;
import org.vanewright.engineering.flightlog.SyntheticFlight.Truth;

/** What is found in made-up flights against what was really flown in them. */
class LogScanTest {
    private static final List<Recorder> RECORDERS = List.of(
            new Recorder(10, true, true),
            new Recorder(20, true, false),
            new Recorder(5, false, true),
            new Recorder(10, false, false),
            new Recorder(50, true, true));

    private record Pair(Truth truth, FoundEvent found) {}

    private record Outcome(List<Pair> pairs, List<Truth> missed, List<FoundEvent> alone) {
        static Outcome none() {
            return new Outcome(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        }

        void add(List<Truth> truth, List<FoundEvent> found) {
            List<FoundEvent> left = new ArrayList<>(found);
            for (Truth each : truth) {
                left.stream()
                        .filter(f -> matches(each, f))
                        .findFirst()
                        .ifPresentOrElse(
                                f -> {
                                    left.remove(f);
                                    pairs.add(new Pair(each, f));
                                },
                                () -> missed.add(each));
            }
            alone.addAll(left);
        }

        private static boolean matches(Truth truth, FoundEvent found) {
            if (truth.kind() == EventKind.STALL) {
                return Math.abs(found.endS() - truth.endS()) <= 3;
            }
            return false;
        }
    }

    private static List<FoundEvent> of(EventKind kind, LogScan.Findings findings) {
        return findings.events().stream().filter(e -> e.kind() == kind).toList();
    }

    @Test
    void findsAllOf200StallsWithNoiseGustsAndDropoutsAndHardlyAnyThatWasNone() {
        Outcome outcome = Outcome.none();
        for (int flight = 0; flight < 25; flight++) {
            LogScan scan = new LogScan();
            SyntheticFlight flown = new SyntheticFlight(1000 + flight, RECORDERS.get(flight % 5), scan);
            for (int i = 0; i < 8; i++) {
                flown.stall();
                switch (i) {
                    case 0 -> flown.approachWithoutStall();
                    case 1 -> flown.steepTurn();
                    case 2 -> flown.slowOscillation();
                    case 3 -> flown.roughAir();
                    case 4 -> flown.touchAndGo();
                    case 5 -> flown.silence();
                    case 6 -> flown.approachWithoutStall();
                    default -> flown.cruise();
                }
            }
            outcome.add(
                    flown.truth.stream()
                            .filter(t -> t.kind() == EventKind.STALL)
                            .toList(),
                    of(EventKind.STALL, scan.finish()));
        }
        assertThat(outcome.pairs.size() + outcome.missed.size()).isEqualTo(200);
        assertThat(outcome.missed).isEmpty();
        assertThat(outcome.alone).as("under 2 % of those found").hasSizeLessThan(4);
        double[] speedOff = outcome.pairs.stream()
                .mapToDouble(p -> p.found.indicatedAirspeedKt() - p.truth.speedKt())
                .toArray();
        double[] rateOff = outcome.pairs.stream()
                .mapToDouble(p -> p.found.entryRateKtPerS() / p.truth.rate() - 1)
                .toArray();
        assertThat(mean(speedOff)).as("gusts are of 0.8 kt").isCloseTo(0, within(0.3));
        assertThat(rms(speedOff)).isLessThan(1.0);
        assertThat(mean(rateOff)).isCloseTo(0, within(0.1));
        assertThat(rms(rateOff)).isLessThan(0.4);
    }

    @Test
    void entryRatesInCalmAirAreWithinAFifth() {
        for (int flight = 0; flight < 10; flight++) {
            LogScan scan = new LogScan();
            SyntheticFlight flown = new SyntheticFlight(3000 + flight, RECORDERS.get(flight % 5), scan).inCalmAir();
            for (int i = 0; i < 5; i++) {
                flown.stall();
            }
            List<FoundEvent> found = of(EventKind.STALL, scan.finish());
            assertThat(found).hasSize(5);
            for (int i = 0; i < 5; i++) {
                Truth truth = flown.truth.get(i);
                assertThat(found.get(i).entryRateKtPerS() / truth.rate()).isCloseTo(1, within(0.2));
                assertThat(found.get(i).indicatedAirspeedKt()).isCloseTo(truth.speedKt(), within(0.9));
            }
        }
    }

    private static double mean(double[] values) {
        return java.util.Arrays.stream(values).average().orElse(Double.NaN);
    }

    private static double rms(double[] values) {
        return Math.sqrt(
                java.util.Arrays.stream(values).map(v -> v * v).average().orElse(Double.NaN));
    }

    /** What is found of a kind lies where that was flown; a long one may be found in parts. */
    private static List<Pair> inside(List<Truth> flown, List<FoundEvent> found, List<FoundEvent> alone) {
        List<Pair> pairs = new ArrayList<>();
        for (FoundEvent each : found) {
            flown.stream()
                    .filter(t -> Math.min(each.endS(), t.endS()) - Math.max(each.startS(), t.startS())
                            > 0.5 * (each.endS() - each.startS()))
                    .findFirst()
                    .ifPresentOrElse(t -> pairs.add(new Pair(t, each)), () -> alone.add(each));
        }
        return pairs;
    }

    @Test
    void findsCruisesClimbsAndLegsAndMeasuresThem() {
        for (EventKind kind : List.of(EventKind.CRUISE, EventKind.CLIMB, EventKind.LEG)) {
            int flownCount = 0;
            List<FoundEvent> alone = new ArrayList<>();
            for (int flight = 0; flight < 20; flight++) {
                LogScan scan = new LogScan();
                SyntheticFlight flown = fly(flight, scan);
                List<FoundEvent> found = of(kind, scan.finish());
                // A leg is a cruise, too, and a straight climb or cruise a leg.
                List<Truth> fits = flown.truth.stream()
                        .filter(t -> t.kind() == kind
                                || t.kind() != EventKind.STALL
                                        && kind != EventKind.CLIMB
                                        && t.kind() != EventKind.CLIMB)
                        .toList();
                List<Pair> pairs = inside(fits, found, alone);
                for (Truth each : flown.truth) {
                    if (each.kind() == kind) {
                        flownCount++;
                        assertThat(pairs).as(kind + " " + each).anyMatch(p -> p.truth.equals(each));
                    }
                }
                pairs.stream().filter(p -> p.truth.kind() == kind).forEach(LogScanTest::measured);
            }
            assertThat(flownCount).isEqualTo(80);
            assertThat(alone).as(kind + ", under 2 %").hasSizeLessThan(2);
        }
    }

    private static SyntheticFlight fly(int number, SampleSink sink) {
        SyntheticFlight flight = new SyntheticFlight(2000 + number, RECORDERS.get(number % 5), sink);
        for (int i = 0; i < 4; i++) {
            flight.climb();
            flight.cruise();
            flight.stall();
            flight.leg();
        }
        return flight;
    }

    private static void measured(Pair pair) {
        FoundEvent found = pair.found;
        Truth truth = pair.truth;
        switch (truth.kind()) {
            case CLIMB -> assertThat(found.climbRateFtPerMin() / truth.rate()).isCloseTo(1, within(0.03));
            case CRUISE -> assertThat(found.indicatedAirspeedKt()).isCloseTo(truth.speedKt(), within(0.6));
            default -> {
                assertThat(found.groundSpeedKt()).isCloseTo(truth.speedKt(), within(0.5));
                assertThat(Angles.turn(truth.trackDeg(), found.trackDeg())).isCloseTo(0, within(1.0));
            }
        }
    }
}
