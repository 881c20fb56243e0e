package org.vanewright.engineering.placement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class BlockedSpansTest {
    private record Interval(double from, double to) {}

    @Test
    void theNearestFreeStationIsTheNearestEndThatNoIntervalHolds() {
        Random random = new Random(77);
        for (int i = 0; i < 500; i++) {
            BlockedSpans blocked = new BlockedSpans();
            List<Interval> intervals = new ArrayList<>();
            int count = 1 + random.nextInt(12);
            for (int k = 0; k < count; k++) {
                double from = 1000 * random.nextDouble();
                Interval interval = new Interval(from, from + 200 * random.nextDouble());
                intervals.add(interval);
                blocked.block(interval.from(), interval.to(), "interval " + k);
            }
            double station = 1000 * random.nextDouble();
            Double expected = nearest(intervals, station);
            Double found = blocked.nearestFree(station, 0, 1000);
            if (expected == null) {
                assertThat(found).isNull();
            } else {
                assertThat(found).isCloseTo(expected, within(1e-9));
            }
            assertThat(blocked.isFree(station)).isEqualTo(free(intervals, station));
            assertThat(blocked.reasonAt(station) == null).isEqualTo(free(intervals, station));
        }
    }

    private static @Nullable Double nearest(List<Interval> intervals, double station) {
        return DoubleStream.concat(
                        DoubleStream.of(station),
                        intervals.stream().flatMapToDouble(v -> DoubleStream.of(v.from(), v.to())))
                .filter(c -> c >= 0 && c <= 1000 && free(intervals, c))
                .boxed()
                .min((a, b) -> Double.compare(Math.abs(a - station), Math.abs(b - station)))
                .orElse(null);
    }

    private static boolean free(List<Interval> intervals, double station) {
        return intervals.stream().noneMatch(v -> station > v.from() && station < v.to());
    }

    @Test
    void intervalsThatOnlyTouchLeaveTheirCommonEndFree() {
        BlockedSpans blocked = new BlockedSpans();
        blocked.block(0, 10, "first");
        blocked.block(10, 20, "second");
        assertThat(blocked.isFree(10)).isTrue();
        assertThat(blocked.nearestFree(9, 0, 20)).isEqualTo(10);
    }
}
