package org.vanewright.engineering.flightlog;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Looks at a log while it is read. Memory does not grow with its length. */
public final class LogScan implements SampleSink {
    /** So many events of one log are kept; the rest are counted. */
    public static final int MAX_EVENTS = 500;

    private static final double FINE_S = 0.1;

    private final List<FoundEvent> events = new ArrayList<>();
    private final TraceThinner trace = new TraceThinner();
    private final StallFinder stalls = new StallFinder(this::keep);
    private final SteadyFinder cruise = new SteadyFinder(Steadiness.CRUISE, this::keep);
    private final SteadyFinder legs = new SteadyFinder(Steadiness.LEG, this::keep);
    private final ClimbFinder climbs = new ClimbFinder(this::keep);
    private final Resampler seconds = new Resampler(1, sample -> {
        cruise.accept(sample);
        legs.accept(sample);
        climbs.accept(sample);
    });
    private final Resampler fine = new Resampler(FINE_S, sample -> {
        stalls.accept(sample);
        seconds.accept(sample);
        trace.accept(sample);
    });
    private long left;

    @Override
    public void accept(FlightSample sample) {
        fine.accept(sample);
    }

    private void keep(FoundEvent event) {
        if (events.size() < MAX_EVENTS) {
            events.add(event);
        } else {
            left++;
        }
    }

    /** Ends the log. */
    public Findings finish() {
        fine.flush();
        seconds.flush();
        stalls.finish();
        cruise.finish();
        legs.finish();
        climbs.finish();
        events.sort(Comparator.comparingDouble(FoundEvent::startS));
        return new Findings(trace.points(), List.copyOf(events), left);
    }

    /**
     * What a log holds.
     *
     * @param trace thinned, to be drawn
     * @param events in the order of their beginnings
     * @param left how many more there were than are kept
     */
    public record Findings(List<TracePoint> trace, List<FoundEvent> events, long left) {}
}
