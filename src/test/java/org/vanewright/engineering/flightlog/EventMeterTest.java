package org.vanewright.engineering.flightlog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.flightlog.SyntheticFlight.Recorder;

/** Events measured again between given times. */
class EventMeterTest {
    private static final Recorder RECORDER = new Recorder(10, true, true);

    private static FoundEvent measured(EventKind kind, double startS, double endS, List<FlightSample> samples) {
        EventMeter meter = new EventMeter(kind, startS, endS);
        samples.stream().filter(s -> !meter.hasAll(s.timeS())).forEach(meter::accept);
        return meter.measured("a test").orElseThrow();
    }

    /** Between the times at which it was found, an event is what it was found as. */
    @Test
    void theTimesThatWereFoundGiveTheFiguresThatWereFound() {
        List<FlightSample> samples = new ArrayList<>();
        LogScan scan = new LogScan();
        SyntheticFlight flown = new SyntheticFlight(31, RECORDER, sample -> {
            samples.add(sample);
            scan.accept(sample);
        });
        flown.cruise();
        flown.stall();
        flown.climb();
        flown.stall();
        flown.leg();
        List<FoundEvent> found = scan.finish().events();
        assertThat(found).extracting(FoundEvent::kind).contains(EventKind.STALL, EventKind.CRUISE, EventKind.LEG);
        for (FoundEvent each : found) {
            FoundEvent again = measured(each.kind(), each.startS(), each.endS(), samples);
            String what = each.toString();
            same(again.indicatedAirspeedKt(), each.indicatedAirspeedKt(), 0.3, what);
            same(again.entryRateKtPerS(), each.entryRateKtPerS(), 0.1, what);
            same(again.loadFactor(), each.loadFactor(), 0.05, what);
            same(again.climbRateFtPerMin(), each.climbRateFtPerMin(), 15, what);
            same(again.groundSpeedKt(), each.groundSpeedKt(), 0.3, what);
            same(again.pressureAltitudeFt(), each.pressureAltitudeFt(), 15, what);
            assertThat(again.startS()).isEqualTo(each.startS());
            assertThat(again.how()).isEqualTo("a test");
        }
    }

    private static void same(double again, double first, double within, String what) {
        if (Double.isNaN(first)) {
            assertThat(again).as(what).isNaN();
        } else {
            assertThat(again).as(what).isCloseTo(first, within(within));
        }
    }

    private static List<FlightSample> ramp() {
        List<FlightSample> samples = new ArrayList<>();
        for (int i = 0; i <= 600; i++) {
            double t = i / 10.0;
            // slower by 1 kt/s up to 30 s, by ½ kt/s from there on; up by 10 ft/s
            double speed = t < 30 ? 80 - t : 50 - 0.5 * (t - 30);
            samples.add(new FlightSample(t, speed, 1000 + 10 * t, 100 + t, 350, 1.2, Double.NaN, 8, 60));
        }
        return samples;
    }

    @Test
    void otherTimesGiveOtherFigures() {
        FoundEvent early = measured(EventKind.STALL, 10, 29, ramp());
        assertThat(early.indicatedAirspeedKt()).isCloseTo(51.3, within(0.3));
        assertThat(early.entryRateKtPerS()).isCloseTo(1, within(0.02));
        FoundEvent late = measured(EventKind.STALL, 32, 50, ramp());
        assertThat(late.indicatedAirspeedKt()).isCloseTo(40.2, within(0.3));
        assertThat(late.entryRateKtPerS()).isCloseTo(0.5, within(0.02));
        assertThat(late.loadFactor()).isCloseTo(1.2, within(1e-6));
        FoundEvent climb = measured(EventKind.CLIMB, 5, 45, ramp());
        assertThat(climb.climbRateFtPerMin()).isCloseTo(600, within(1.0));
        FoundEvent leg = measured(EventKind.LEG, 20, 40, ramp());
        assertThat(leg.groundSpeedKt()).isCloseTo(130, within(0.5));
        assertThat(leg.trackDeg()).isCloseTo(350, within(1e-6));
        assertThat(measured(EventKind.CRUISE, 20, 40, ramp()).indicatedAirspeedKt())
                .isCloseTo(51.2, within(0.4));
    }

    @Test
    void whereNothingWasRecordedNothingIsMeasured() {
        EventMeter meter = new EventMeter(EventKind.CRUISE, 100, 130);
        ramp().forEach(meter::accept);
        assertThat(meter.measured("")).isEmpty();
        assertThatThrownBy(() -> new EventMeter(EventKind.LEG, 0, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new EventMeter(EventKind.LEG, 0, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
