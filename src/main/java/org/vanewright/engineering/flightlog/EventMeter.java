package org.vanewright.engineering.flightlog;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.vanewright.engineering.flightlog.Recent.Low;

/**
 * Measures one event between the times that a person gave it, as those that find events measure theirs. A stall is the
 * lowest airspeed between them, smoothed over a second; its entry is counted from where 1.1 of that was passed, or from
 * the beginning where that is later.
 */
public final class EventMeter implements SampleSink {
    /** Longest interval of each kind. */
    public static final double LONGEST_S = 600;
    /** Shortest interval of each kind. */
    public static final double SHORTEST_S = 2;

    private static final double FINE_S = 0.1;
    private static final double AROUND_S = 5;
    private static final double SMOOTH_S = 1;

    private final EventKind kind;
    private final double startS;
    private final double endS;
    private final Recent fine = new Recent((int) ((LONGEST_S + 2 * AROUND_S) / FINE_S) + 2);
    private final List<FlightSample> seconds = new ArrayList<>();
    private final Resampler bySecond = new Resampler(1, this::second);
    private final Resampler byTenth = new Resampler(FINE_S, this::tenth);

    /** @param endS at least {@value #SHORTEST_S} s and at most {@value #LONGEST_S} s after the beginning */
    public EventMeter(EventKind kind, double startS, double endS) {
        if (!(endS - startS >= SHORTEST_S && endS - startS <= LONGEST_S)) {
            throw new IllegalArgumentException("not an interval that can be measured: " + startS + " to " + endS);
        }
        this.kind = kind;
        this.startS = startS;
        this.endS = endS;
    }

    @Override
    public void accept(FlightSample sample) {
        byTenth.accept(sample);
    }

    private void tenth(FlightSample sample) {
        if (sample.timeS() >= startS - AROUND_S && sample.timeS() <= endS + AROUND_S) {
            fine.add(sample);
        }
        if (sample.timeS() >= startS && sample.timeS() <= endS) {
            bySecond.accept(sample);
        }
    }

    private void second(FlightSample sample) {
        seconds.add(sample);
    }

    /** Whether nothing that comes from that time on changes anything. */
    public boolean hasAll(double timeS) {
        return timeS > endS + AROUND_S;
    }

    /**
     * What was measured.
     *
     * @param how by what the event was found, in words
     * @return empty where nothing of what makes such an event was recorded between the times
     */
    public Optional<FoundEvent> measured(String how) {
        byTenth.flush();
        bySecond.flush();
        return switch (kind) {
            case STALL -> stall(how);
            case CRUISE -> steady(how, LogQuantity.AIRSPEED);
            case LEG -> steady(how, LogQuantity.GROUND_SPEED);
            case CLIMB -> climb(how);
        };
    }

    private Optional<FoundEvent> stall(String how) {
        Low low = fine.lowest(LogQuantity.AIRSPEED, startS, endS, SMOOTH_S);
        if (Double.isNaN(low.level())) {
            return Optional.empty();
        }
        StallEntry entry = new StallEntry(fine, low);
        double passed = entry.passedS();
        double from = Double.isNaN(passed) ? startS : Math.max(startS, passed);
        FoundEvent found = entry.event(startS, endS, entry.rateKtPerS(from), how);
        return Optional.of(found.between(startS, endS));
    }

    private Optional<FoundEvent> steady(String how, LogQuantity needed) {
        Means means = new Means(seconds);
        return Double.isNaN(means.of(needed))
                ? Optional.empty()
                : Optional.of(event(means, Double.NaN, kind == EventKind.LEG, how));
    }

    private Optional<FoundEvent> climb(String how) {
        LineFit line = new LineFit();
        for (FlightSample each : seconds) {
            if (!Double.isNaN(each.pressureAltitudeFt())) {
                line.add(each.timeS() - startS, each.pressureAltitudeFt());
            }
        }
        return Double.isNaN(line.slope())
                ? Optional.empty()
                : Optional.of(event(new Means(seconds), line.slope() * 60, false, how));
    }

    private FoundEvent event(Means means, double climbFtPerMin, boolean ground, String how) {
        return new FoundEvent(
                kind,
                startS,
                endS,
                means.of(LogQuantity.AIRSPEED),
                means.of(LogQuantity.ALTITUDE),
                means.of(LogQuantity.TEMPERATURE),
                Double.NaN,
                Double.NaN,
                means.of(LogQuantity.POWER),
                climbFtPerMin,
                ground ? means.of(LogQuantity.GROUND_SPEED) : Double.NaN,
                ground ? means.trackDeg() : Double.NaN,
                how);
    }
}
