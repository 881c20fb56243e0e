package org.vanewright.engineering.tuft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.tuft.TuftDifference.Change;
import org.vanewright.engineering.wing.WingPanel;

class TuftSurveyTest {
    private static final int RUNS = 300;
    private static final List<WingPanel> TAPERED = List.of(Grids.panel(0, 1000, 1000, 500));

    private static TuftSurvey survey(String letters) {
        return TuftSurvey.of(TuftGrid.of(TAPERED, List.of(250.0, 750.0), List.of(0.25, 0.75), Wings.RIGHT), letters);
    }

    private static double areaMm2(List<WingPanel> panels) {
        return panels.stream()
                .mapToDouble(p -> p.spanMm() * (p.innerChordMm() + p.outerChordMm()) / 2)
                .sum();
    }

    private static List<Double> centred(double low, double high, int count) {
        return IntStream.range(0, count)
                .mapToObj(i -> low + (high - low) * (i + 0.5) / count)
                .toList();
    }

    @Test
    void aTuftStandsForItsCellOnTheTaperedWing() {
        // Mean chords of the halves 875 and 625 mm, each 500 mm of span and half the chord.
        assertThat(survey("SSSS").grid().tufts())
                .extracting(Tuft::areaMm2)
                .containsExactly(218_750.0, 218_750.0, 156_250.0, 156_250.0);
        AreaShares shares = survey("SUR-").shares();
        assertThat(shares.steady()).isEqualTo(218_750.0 / 593_750);
        assertThat(shares.reversed()).isEqualTo(156_250.0 / 593_750);
        assertThat(shares.notSeen()).isCloseTo(156_250.0 / 750_000, within(1e-12));
        assertThat(shares.seen()).isEqualTo(3);
    }

    @Test
    void cellsOfAnEvenGridFillThePanelsExactly() {
        Random chance = new Random(41);
        for (int run = 0; run < RUNS; run++) {
            List<WingPanel> panels = Grids.wing(chance);
            double root = panels.get(0).innerStationMm();
            double tip = panels.get(panels.size() - 1).outerStationMm();
            TuftGrid grid = TuftGrid.of(
                    panels,
                    centred(root, tip, 1 + chance.nextInt(9)),
                    centred(0, 1, 1 + chance.nextInt(7)),
                    Wings.BOTH);
            assertThat(grid.areaMm2() / (2 * areaMm2(panels))).isCloseTo(1, within(1e-12));
        }
    }

    @Test
    void cellsOfAnyGridTileWhatItSurveysAndHoldTheirTuft() {
        Random chance = new Random(42);
        for (int run = 0; run < RUNS; run++) {
            List<WingPanel> panels = Grids.wing(chance);
            TuftGrid grid = Grids.grid(chance, panels, Wings.RIGHT);
            Tuft.Cell first = grid.tufts().get(0).cell();
            Tuft.Cell last = grid.tufts().get(grid.size() - 1).cell();
            double span = integrated(panels, first.fromMm(), last.toMm());
            double chord = last.toChord() - first.fromChord();
            assertThat(grid.areaMm2() / (span * chord)).isCloseTo(1, within(1e-4));
            assertThat(grid.areaMm2()).isLessThanOrEqualTo(areaMm2(panels) * (1 + 1e-12));
            assertThat(grid.tufts())
                    .allMatch(t -> t.areaMm2() > 0
                            && t.cell().fromMm() <= t.stationMm()
                            && t.stationMm() <= t.cell().toMm()
                            && t.cell().fromChord() <= t.chordFraction()
                            && t.chordFraction() <= t.cell().toChord());
        }
    }

    /** By many thin strips, as a person would measure it. */
    private static double integrated(List<WingPanel> panels, double from, double to) {
        int strips = 20_000;
        double step = (to - from) / strips;
        return DoubleStream.iterate(from + step / 2, y -> y + step)
                        .limit(strips)
                        .map(y -> panels.stream()
                                .filter(p -> y >= p.innerStationMm() && y <= p.outerStationMm())
                                .mapToDouble(p -> p.chordMm(y))
                                .findFirst()
                                .orElse(0))
                        .sum()
                * step;
    }

    @Test
    void sharesAddUpToOneAndDoNotDependOnTheOrderOfEqualTufts() {
        Random chance = new Random(43);
        List<WingPanel> straight = List.of(Grids.panel(0, 4000, 1200, 1200));
        TuftGrid grid = TuftGrid.of(straight, centred(0, 4000, 8), centred(0, 1, 5), Wings.BOTH);
        for (int run = 0; run < RUNS; run++) {
            List<TuftState> states = new ArrayList<>(Grids.states(chance, grid.size()));
            AreaShares shares = new TuftSurvey(grid, states).shares();
            Collections.shuffle(states, chance);
            AreaShares shuffled = new TuftSurvey(grid, states).shares();
            assertThat(shares.steady() + shares.unsteady() + shares.reversed()).isCloseTo(1, within(1e-12));
            for (TuftState state : TuftState.values()) {
                assertThat(shuffled.of(state)).isCloseTo(shares.of(state), within(1e-12));
            }
        }
    }

    @Test
    void mirroredWingsAreAlike() {
        Random chance = new Random(44);
        for (int run = 0; run < RUNS; run++) {
            List<WingPanel> panels = Grids.wing(chance);
            List<Double> stations = Grids.between(
                    chance,
                    panels.get(0).innerStationMm(),
                    panels.get(panels.size() - 1).outerStationMm(),
                    5);
            List<Double> fractions = Grids.between(chance, 0, 1, 4);
            List<TuftState> one = Grids.states(chance, 20);
            List<TuftState> two = new ArrayList<>(one);
            two.addAll(one);
            TuftSurvey right = new TuftSurvey(TuftGrid.of(panels, stations, fractions, Wings.RIGHT), one);
            TuftSurvey left = new TuftSurvey(TuftGrid.of(panels, stations, fractions, Wings.LEFT), one);
            TuftSurvey both = new TuftSurvey(TuftGrid.of(panels, stations, fractions, Wings.BOTH), two);
            assertThat(left.shares()).isEqualTo(right.shares());
            assertThat(both.shares().steady()).isCloseTo(right.shares().steady(), within(1e-12));
            assertThat(fractions(SeparationLine.of(left))).isEqualTo(fractions(SeparationLine.of(right)));
            assertThat(SeparationLine.of(both).points())
                    .hasSize(2 * SeparationLine.of(right).points().size());
        }
    }

    private static List<Double> fractions(SeparationLine line) {
        return line.points().stream().map(SeparationLine.Point::chordFraction).toList();
    }

    @Test
    void steadyOrUnseenTuftsGiveNoLine() {
        Random chance = new Random(45);
        for (int run = 0; run < RUNS; run++) {
            TuftGrid grid = Grids.grid(chance, Grids.wing(chance), Wings.BOTH);
            List<TuftState> quiet = Grids.states(chance, grid.size()).stream()
                    .map(s -> s.seen() ? TuftState.STEADY : s)
                    .toList();
            assertThat(SeparationLine.of(new TuftSurvey(grid, quiet)).points()).isEmpty();
        }
        assertThat(survey("----").shares().steady()).isZero();
        assertThat(survey("----").shares().notSeen()).isEqualTo(1);
    }

    @Test
    void theLineIsTheForemostTuftBehindWhichNothingIsSteady() {
        TuftGrid grid = TuftGrid.of(
                TAPERED, List.of(100.0, 300.0, 500.0, 700.0, 900.0), List.of(0.2, 0.4, 0.6, 0.8), Wings.RIGHT);
        SeparationLine line = SeparationLine.of(TuftSurvey.of(grid, "SUSR" + "S-UR" + "UUUU" + "RUUS" + "SS-U"));
        assertThat(line.points())
                .containsExactly(
                        new SeparationLine.Point(false, 0, 3, 100, 0.8, 0.6),
                        new SeparationLine.Point(false, 1, 2, 300, 0.6, 0.2),
                        new SeparationLine.Point(false, 2, 0, 500, 0.2, null),
                        new SeparationLine.Point(false, 4, 3, 900, 0.8, 0.4));
        assertThat(line.runs()).extracting(List::size).containsExactly(3, 1);
    }

    @Test
    void aDifferenceTakesOnlyTheTuftsSeenBothTimes() {
        TuftDifference difference = TuftDifference.of(survey("SUR-"), survey("USU-"));
        assertThat(difference.changes())
                .containsExactly(Change.NO_LONGER_STEADY, Change.BECAME_STEADY, Change.OTHERWISE, Change.UNKNOWN);
        TuftDifference half = TuftDifference.of(survey("U-UU"), survey("SSUU"));
        assertThat(half.change(TuftState.STEADY)).isCloseTo(218_750.0 / 531_250, within(1e-12));
        assertThat(half.change(TuftState.NOT_SEEN)).isZero();
    }

    @Test
    void aDifferenceTurnedAboutHasTheOtherSign() {
        Random chance = new Random(46);
        for (int run = 0; run < RUNS; run++) {
            TuftGrid grid = Grids.grid(chance, Grids.wing(chance), Wings.BOTH);
            TuftSurvey one = new TuftSurvey(grid, Grids.states(chance, grid.size()));
            TuftSurvey two = new TuftSurvey(grid, Grids.states(chance, grid.size()));
            for (TuftState state : TuftState.values()) {
                double there = TuftDifference.of(one, two).change(state);
                assertThat(there).isCloseTo(-TuftDifference.of(two, one).change(state), within(1e-12));
                assertThat(TuftDifference.of(one, one).change(state)).isZero();
            }
            assertThat(TuftSurvey.read(TuftSurvey.letters(one.states()))).isEqualTo(one.states());
        }
    }

    @Test
    void wrongGridsAndLinesNameWhatIsWrong() {
        assertThatThrownBy(() -> survey("SSX-"))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("states");
        assertThatThrownBy(() -> survey("SSS")).isInstanceOf(InvalidInputException.class);
        assertThatThrownBy(() -> TuftGrid.of(TAPERED, List.of(500.0, 400.0), List.of(0.5), Wings.LEFT))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageContaining("stationsMm");
        assertThatThrownBy(() -> TuftGrid.of(TAPERED, List.of(500.0), List.of(0.5, 0.5), Wings.LEFT))
                .isInstanceOf(InvalidInputException.class);
        assertThatThrownBy(() -> TuftGrid.of(TAPERED, List.of(), List.of(0.5), Wings.LEFT))
                .isInstanceOf(InvalidInputException.class);
        assertThatThrownBy(() -> TuftGrid.of(TAPERED, List.of(Double.NaN), List.of(0.5), Wings.LEFT))
                .isInstanceOf(InvalidInputException.class);
        TuftSurvey elsewhere =
                TuftSurvey.of(TuftGrid.of(TAPERED, List.of(200.0, 750.0), List.of(0.25, 0.75), Wings.RIGHT), "SSSS");
        assertThatThrownBy(() -> TuftDifference.of(survey("SSSS"), elsewhere))
                .isInstanceOf(InvalidInputException.class);
    }
}
