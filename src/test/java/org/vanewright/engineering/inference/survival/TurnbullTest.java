package org.vanewright.engineering.inference.survival;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.engineering.inference.Simulation;

class TurnbullTest {
    private static final double NEVER = Double.POSITIVE_INFINITY;

    /**
     * Months to breast retraction after radiotherapy alone, 46 patients. D. M. Finkelstein and R. A. Wolfe, Biometrics 41,
     * 1985, table 1 (from memory); the estimate as statistics packages print it (from memory).
     */
    private static final double[][] RADIOTHERAPY = {
        {45, NEVER},
        {6, 10},
        {0, 7},
        {46, NEVER},
        {46, NEVER},
        {7, 16},
        {17, NEVER},
        {7, 14},
        {37, 44},
        {0, 8},
        {4, 11},
        {15, NEVER},
        {11, 15},
        {22, NEVER},
        {46, NEVER},
        {46, NEVER},
        {25, 37},
        {46, NEVER},
        {26, 40},
        {46, NEVER},
        {27, 34},
        {36, 44},
        {46, NEVER},
        {36, 48},
        {37, NEVER},
        {40, NEVER},
        {17, 25},
        {46, NEVER},
        {11, 18},
        {38, NEVER},
        {5, 12},
        {37, NEVER},
        {0, 5},
        {18, NEVER},
        {24, NEVER},
        {36, NEVER},
        {5, 11},
        {19, 35},
        {17, 25},
        {24, NEVER},
        {32, NEVER},
        {33, NEVER},
        {19, 26},
        {37, NEVER},
        {34, NEVER},
        {36, NEVER}
    };

    private static final double[][] ESTIMATE = {
        {4, 5, .0463},
        {6, 7, .0334},
        {7, 8, .0887},
        {11, 12, .0708},
        {24, 25, .0926},
        {33, 34, .0818},
        {38, 40, .1209},
        {46, 48, .4656}
    };

    private static List<Span> spans(double[][] rows) {
        List<Span> spans = new ArrayList<>();
        for (double[] row : rows) {
            spans.add(new Span(row[0], row[1]));
        }
        return spans;
    }

    @Test
    void breastRetractionAgainstThePublishedEstimate() {
        List<Span> spans = spans(RADIOTHERAPY);
        assertThat(spans).hasSize(46);
        Turnbull curve = Turnbull.of(spans);
        assertThat(curve.gap()).isLessThanOrEqualTo(1e-10);
        assertThat(curve.places()).hasSameSizeAs(ESTIMATE);
        for (int i = 0; i < ESTIMATE.length; i++) {
            Turnbull.Place place = curve.places().get(i);
            assertThat(place.afterHours()).isEqualTo(ESTIMATE[i][0]);
            assertThat(place.byHours()).isEqualTo(ESTIMATE[i][1]);
            assertThat(place.mass()).isCloseTo(ESTIMATE[i][2], within(5.1e-5));
        }
    }

    @Test
    void theEstimateIsSelfConsistent() {
        assertSelfConsistent(spans(RADIOTHERAPY));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void everyEstimateIsSelfConsistentAndAnOptimum(long seed) {
        RandomGenerator chance = new Well19937c(seed);
        for (int run = 0; run < 20; run++) {
            List<Span> spans = random(chance, 2 + chance.nextInt(40));
            assertSelfConsistent(spans);
            Turnbull best = Turnbull.of(spans);
            for (int k = 0; k < 20; k++) {
                assertThat(logLikelihood(spans, shifted(best, chance)))
                        .as("mass moved at random gains nothing")
                        .isLessThanOrEqualTo(best.logLikelihood() + 1e-7);
            }
        }
    }

    private static List<Span> random(RandomGenerator chance, int count) {
        List<Span> spans = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double after = chance.nextInt(20);
            spans.add(chance.nextInt(3) == 0 ? Span.kept(after) : new Span(after, after + 1 + chance.nextInt(10)));
        }
        return spans;
    }

    /** Each mass is the mean over observations of its share among the masses that the observation allows. */
    private static void assertSelfConsistent(List<Span> spans) {
        Turnbull curve = Turnbull.of(spans);
        assertThat(curve.places().stream().mapToDouble(Turnbull.Place::mass).sum())
                .isCloseTo(1, within(1e-6));
        for (Turnbull.Place place : curve.places()) {
            double sum = 0;
            for (Span span : spans) {
                sum += inside(place, span) ? place.mass() / mass(curve.places(), span) : 0;
            }
            assertThat(sum / spans.size()).isCloseTo(place.mass(), within(2e-5));
        }
    }

    private static boolean inside(Turnbull.Place place, Span span) {
        return span.afterHours() <= place.afterHours() && place.byHours() <= span.byHours();
    }

    private static double mass(List<Turnbull.Place> places, Span span) {
        return places.stream()
                .filter(p -> inside(p, span))
                .mapToDouble(Turnbull.Place::mass)
                .sum();
    }

    private static double logLikelihood(List<Span> spans, List<Turnbull.Place> places) {
        return spans.stream().mapToDouble(s -> Math.log(mass(places, s))).sum();
    }

    private static List<Turnbull.Place> shifted(Turnbull best, RandomGenerator chance) {
        double[] masses = best.places().stream()
                .mapToDouble(p -> p.mass() * (1 + 0.2 * chance.nextDouble()))
                .toArray();
        double sum = Arrays.stream(masses).sum();
        return IntStream.range(0, masses.length)
                .mapToObj(i -> new Turnbull.Place(
                        best.places().get(i).afterHours(), best.places().get(i).byHours(), masses[i] / sum))
                .toList();
    }

    /** Losses known to the hour are right-censored data, and the curve is the product-limit one. */
    @Test
    void narrowSpansGiveTheProductLimitCurve() {
        List<Span> spans = Remissions.treated().stream()
                .map(l -> l.lost() ? new Span(l.hours() - 1e-3, l.hours()) : Span.kept(l.hours()))
                .toList();
        KaplanMeier curve = KaplanMeier.of(Remissions.treated(), 0.95);
        Turnbull turnbull = Turnbull.of(spans);
        for (KaplanMeier.Step step : curve.steps()) {
            assertThat(turnbull.survivalAt(step.hours())).isCloseTo(step.survival(), within(1e-6));
        }
    }

    /** All looked at on the same days: shares of what was counted. */
    @Test
    void commonInspectionsGiveTheSharesCounted() {
        List<Span> spans = new ArrayList<>();
        IntStream.range(0, 4).forEach(i -> spans.add(new Span(0, 10)));
        IntStream.range(0, 6).forEach(i -> spans.add(new Span(10, 25)));
        IntStream.range(0, 30).forEach(i -> spans.add(Span.kept(25)));
        Turnbull curve = Turnbull.of(spans);
        assertThat(curve.survivalAt(10)).isCloseTo(0.9, within(1e-9));
        assertThat(curve.survivalAt(25)).isCloseTo(0.75, within(1e-9));
        assertThat(curve.survivalAt(5)).as("evenly within").isCloseTo(0.95, within(1e-9));
        assertThat(curve.survivalBounds(5).low()).isCloseTo(0.9, within(1e-9));
        assertThat(curve.survivalBounds(5).high()).isCloseTo(1, within(1e-9));
        assertThat(curve.survivalAt(1_000)).isCloseTo(0.75, within(1e-9));
    }

    @Test
    void nothingLostStaysAndSenselessSpansAreRefused() {
        Turnbull curve = Turnbull.of(List.of(Span.kept(10), Span.kept(25)));
        assertThat(curve.survivalAt(25)).isEqualTo(1);
        assertThatIllegalArgumentException().isThrownBy(() -> new Span(5, 5));
        assertThatIllegalArgumentException().isThrownBy(() -> new Span(-1, 5));
        assertThatIllegalArgumentException().isThrownBy(() -> new Span(NEVER, NEVER));
        assertThatIllegalArgumentException().isThrownBy(() -> Turnbull.of(List.of()));
    }

    /** Simulated: 200 exponential lifetimes with mean 100 that are looked at at random; the mean estimate is off by little. */
    @Test
    void theCurveIsNearTheTruthItWasDrawnFrom() {
        double near = new Simulation(47, 100).fraction(chance -> {
            List<Span> spans = new ArrayList<>();
            for (int i = 0; i < 200; i++) {
                spans.add(lookedAt(chance, -100 * Math.log(1 - chance.nextDouble())));
            }
            return Math.abs(Turnbull.of(spans, 1e-6).survivalAt(60) - Math.exp(-0.6)) < 0.12;
        });
        assertThat(near).isGreaterThan(0.95);
    }

    private static Span lookedAt(RandomGenerator chance, double loss) {
        double last = 0;
        for (int k = 0; k < 6; k++) {
            double look = last + 5 + 30 * chance.nextDouble();
            if (loss <= look) {
                return new Span(last, look);
            }
            last = look;
        }
        return Span.kept(last);
    }

    /** Each row holds exactly the places within its span, and none of no weight. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void observationsHoldThePlacesWithinThem(int seed) {
        RandomGenerator chance = new Well19937c(seed);
        List<Span> different = IntStream.range(0, 60)
                .mapToObj(i -> {
                    double after = chance.nextInt(20);
                    return chance.nextInt(3) == 0
                            ? Span.kept(after + 1)
                            : new Span(after, after + 1 + chance.nextInt(10));
                })
                .distinct()
                .toList();
        int[] counts = different.stream().mapToInt(s -> chance.nextInt(4)).toArray();
        List<Span> gathered = IntStream.range(0, counts.length)
                .boxed()
                .flatMap(i -> Collections.nCopies(counts[i], different.get(i)).stream())
                .toList();
        TurnbullIntervals data = TurnbullIntervals.of(different, counts);
        assertThat(data).isEqualTo(TurnbullIntervals.of(gathered));
        int next = 0;
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] == 0) {
                continue;
            }
            Span span = different.get(i);
            TurnbullIntervals.Row row = data.rows().get(next++);
            List<Span> within = data.places().stream()
                    .filter(place -> place.afterHours() >= span.afterHours() && place.byHours() <= span.byHours())
                    .toList();
            assertThat(row.weight()).isEqualTo(counts[i]);
            assertThat(data.places().subList(row.first(), row.last() + 1)).isEqualTo(within);
        }
        assertThat(data.rows()).hasSize(next);
    }
}
