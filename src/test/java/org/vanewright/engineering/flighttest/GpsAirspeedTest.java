package org.vanewright.engineering.flighttest;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.flighttest.GpsAirspeed.Directions;
import org.vanewright.engineering.inference.Simulation;
import org.vanewright.engineering.inference.StudentT;

class GpsAirspeedTest {
    private static final Offset<Double> EXACT = within(1e-5);

    /** Legs by the wind triangle: what a known airspeed and wind show over the ground. */
    private static List<GpsLeg> legs(Directions known, double airspeed, double wind, double from, double... headings) {
        List<GpsLeg> legs = new ArrayList<>();
        for (double heading : headings) {
            GpsLeg air = new GpsLeg(airspeed, heading);
            GpsLeg wind1 = new GpsLeg(wind, from + 180);
            double east = airspeed * air.east() + wind * wind1.east();
            double north = airspeed * air.north() + wind * wind1.north();
            double track = (Math.toDegrees(Math.atan2(east, north)) + 360) % 360;
            legs.add(new GpsLeg(Math.hypot(east, north), known == Directions.TRACKS ? track : heading));
        }
        return legs;
    }

    private static GpsAirspeed solve(Directions known, List<GpsLeg> legs) {
        return known == Directions.TRACKS ? GpsAirspeed.ofTracks(legs) : GpsAirspeed.ofHeadings(legs);
    }

    /** D. Gray, Using GPS to Accurately Determine True Airspeed, 1998, worked example (quoted second-hand). */
    @Test
    void threeTracksAgainstThePublishedExample() {
        GpsAirspeed found =
                GpsAirspeed.ofTracks(List.of(new GpsLeg(140, 192), new GpsLeg(112, 283), new GpsLeg(120, 20)));
        assertThat(found.trueAirspeedKt()).isCloseTo(130, within(0.05));
        assertThat(found.windSpeedKt()).isCloseTo(20.6, within(0.05));
        assertThat(found.windFromDeg()).isCloseTo(314.8, within(0.1));
        assertThat(found.otherDirectionsDeg().get(0)).isCloseTo(199.7, within(0.1));
        assertThat(found.otherDirectionsDeg().get(1)).isCloseTo(287.8, within(0.1));
        assertThat(found.otherDirectionsDeg().get(2)).isCloseTo(11.7, within(0.1));
        assertThat(found.residualKt()).isNull();
        assertThat(found.standardUncertaintyKt()).isNull();
    }

    /** Society of Flight Test Engineers, Reference Handbook, part 4: V = ½ √(V₁² + V₂² + V₃² + V₁² V₃²/V₂²). */
    @Test
    void perpendicularTracksAgainstTheHandbook() {
        double first = 88.488578;
        double second = 116.819252;
        double third = 108.488578;
        GpsAirspeed found =
                GpsAirspeed.ofTracks(List.of(new GpsLeg(first, 0), new GpsLeg(second, 90), new GpsLeg(third, 180)));
        double handbook = Math.sqrt(first * first
                        + second * second
                        + third * third
                        + first * first * third * third / (second * second))
                / 2;
        assertThat(found.trueAirspeedKt()).isCloseTo(handbook, EXACT).isCloseTo(100, EXACT);
        assertThat(found.windSpeedKt()).isCloseTo(20, EXACT);
        assertThat(found.windFromDeg()).isCloseTo(300, EXACT);
    }

    /** E. Williams, Aviation Formulary: headings 120° apart (quoted second-hand), from TAS 80, wind 240/15. */
    @Test
    void thirdsOfACircleAgainstTheFormulary() {
        GpsAirspeed found = GpsAirspeed.ofHeadings(
                List.of(new GpsLeg(88.459030, 0), new GpsLeg(88.459030, 120), new GpsLeg(65, 240)));
        assertThat(found.trueAirspeedKt()).isCloseTo(80, EXACT);
        assertThat(found.windSpeedKt()).isCloseTo(15, EXACT);
        assertThat(found.windFromDeg()).isCloseTo(240, EXACT);
        assertThat(found.spreadDeg()).isEqualTo(240);
    }

    /** K. Horton, Flight Testing: Finding TAS from GPS Data, 2009: the mean of four ground speeds is 101, not 100. */
    @Test
    void fourHeadingsAreNotAveraged() {
        List<GpsLeg> legs = legs(Directions.HEADINGS, 100, 20, 270, 0, 90, 180, 270);
        assertThat(legs.stream().mapToDouble(GpsLeg::groundSpeedKt).average().orElseThrow())
                .isCloseTo(100.990, within(1e-3));
        GpsAirspeed found = GpsAirspeed.ofHeadings(legs);
        assertThat(found.trueAirspeedKt()).isCloseTo(100, EXACT);
        assertThat(found.residualKt()).isCloseTo(0, EXACT);
    }

    @RepeatedTest(200)
    void findsWhatTheLegsWereMadeOf(RepetitionInfo info) {
        Random chance = new Random(info.getCurrentRepetition());
        double airspeed = 30 + 170 * chance.nextDouble();
        double wind = 0.8 * airspeed * chance.nextDouble();
        double from = 360 * chance.nextDouble();
        int count = 3 + chance.nextInt(5);
        double turn = 360 * chance.nextDouble();
        double[] headings = new double[count];
        for (int i = 0; i < count; i++) {
            headings[i] = (turn + 360.0 * i / count + 20 * chance.nextDouble()) % 360;
        }
        for (Directions known : Directions.values()) {
            List<GpsLeg> legs = legs(known, airspeed, wind, from, headings);
            GpsAirspeed found = solve(known, legs);
            assertThat(found.trueAirspeedKt()).isCloseTo(airspeed, within(1e-5));
            assertThat(found.windSpeedKt()).isCloseTo(wind, within(1e-5));
            assertThat(found.residualsKt()).allSatisfy(r -> assertThat(r).isCloseTo(0, within(1e-5)));
            if (known == Directions.TRACKS) {
                for (int i = 0; i < count; i++) {
                    double off = Math.abs(found.otherDirectionsDeg().get(i) - headings[i]);
                    assertThat(Math.min(off, 360 - off)).isCloseTo(0, within(1e-4));
                }
            }
            List<GpsLeg> mixed = new ArrayList<>(legs);
            Collections.shuffle(mixed, chance);
            assertThat(solve(known, mixed).trueAirspeedKt()).isCloseTo(airspeed, within(1e-5));
        }
    }

    /** Any legs in range: a finite answer or a problem, never anything else. */
    @RepeatedTest(300)
    void neverNaN(RepetitionInfo info) {
        Random chance = new Random(info.getCurrentRepetition());
        List<GpsLeg> legs = new ArrayList<>();
        for (int i = 0; i < 3 + chance.nextInt(3); i++) {
            double speed = chance.nextInt(4) == 0 ? 0 : 1000 * Math.pow(chance.nextDouble(), 3);
            legs.add(new GpsLeg(speed, chance.nextInt(3) == 0 ? 90 * chance.nextInt(5) : 360 * chance.nextDouble()));
        }
        for (Directions known : Directions.values()) {
            try {
                GpsAirspeed found = solve(known, legs);
                assertThat(found.trueAirspeedKt()).isBetween(0.0, 1000.0);
                assertThat(found.windSpeedKt()).isBetween(0.0, 1000.0);
                assertThat(found.windFromDeg()).isBetween(0.0, 360.0);
                assertThat(found.otherDirectionsDeg()).allMatch(d -> d >= 0 && d <= 360);
                assertThat(found.residualsKt()).allMatch(Double::isFinite);
            } catch (org.vanewright.engineering.input.InvalidInputException e) {
                assertThat(e.problems()).isNotEmpty().allMatch(p -> p.field().startsWith("legs"));
            }
        }
    }

    /** Ground speeds read with 1 kt of scatter on eight legs: the stated interval holds the truth as often as it says. */
    @Test
    void theStatedUncertaintyIsTheRealOne() {
        double[] headings = {0, 45, 90, 135, 180, 225, 270, 315};
        for (Directions known : Directions.values()) {
            List<GpsLeg> exact = legs(known, 60, 12, 250, headings);
            double covered = new Simulation(7, 2_000).fraction(chance -> {
                GpsAirspeed found = solve(
                        known,
                        exact.stream()
                                .map(l -> new GpsLeg(l.groundSpeedKt() + chance.nextGaussian(), l.directionDeg()))
                                .toList());
                Double uncertainty = found.standardUncertaintyKt();
                return uncertainty != null
                        && Math.abs(found.trueAirspeedKt() - 60) <= StudentT.twoSided(0.95, 5) * uncertainty;
            });
            assertThat(covered).as(known.name()).isBetween(0.93, 0.97);
        }
    }

    @Test
    void namesWhatIsWrong() {
        GpsLeg north = new GpsLeg(60, 0);
        assertThatThrownBy(() -> GpsAirspeed.ofTracks(List.of(north, north))).hasMessageContaining("3 to 500 legs");
        assertThatThrownBy(() -> GpsAirspeed.ofTracks(List.of(north, north, north)))
                .hasMessageContaining("different ways");
        assertThatThrownBy(() -> GpsAirspeed.ofHeadings(List.of(north, north, new GpsLeg(61, 90))))
                .hasMessageContaining("different ways");
        assertThatThrownBy(() -> GpsAirspeed.ofTracks(List.of(north, new GpsLeg(0, 90), new GpsLeg(60, 180))))
                .as("three tips on one line")
                .hasMessageContaining("different ways");
        assertThatThrownBy(() ->
                        GpsAirspeed.ofHeadings(List.of(new GpsLeg(0, 0), new GpsLeg(100, 120), new GpsLeg(0, 240))))
                .as("no wind triangle")
                .hasMessageContaining("explain");
        assertThatThrownBy(() -> GpsAirspeed.ofTracks(List.of(north, new GpsLeg(Double.NaN, 90), new GpsLeg(60, 400))))
                .hasMessageContaining("legs[1].groundSpeedKt")
                .hasMessageContaining("legs[2].trackDeg");
        assertThatThrownBy(() -> GpsAirspeed.ofHeadings(List.of(north, north, new GpsLeg(60, -1))))
                .hasMessageContaining("legs[2].headingDeg");
    }
}
