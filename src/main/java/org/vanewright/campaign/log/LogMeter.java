package org.vanewright.campaign.log;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.flightlog.CsvLog;
import org.vanewright.engineering.flightlog.EventMeter;
import org.vanewright.engineering.flightlog.FoundEvent;
import org.vanewright.engineering.flightlog.GpxLog;
import org.vanewright.engineering.flightlog.RowTally;
import org.vanewright.engineering.flightlog.SampleSink;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/** Reads a log again as far as one event, to measure that between other times. */
@Component
class LogMeter {
    private static final String MOVED = ", between times that a person gave";

    private final LogRepository logs;

    LogMeter(LogRepository logs) {
        this.logs = logs;
    }

    /**
     * The event as it is between those times.
     *
     * @throws InvalidInputException fields {@code startS}, {@code endS}: no interval that can be measured, or nothing was
     *     recorded in it
     */
    FoundEvent measure(FlightLog log, FoundEvent event, double startS, double endS) {
        double lasts = endS - startS;
        if (!(lasts >= EventMeter.SHORTEST_S && lasts <= EventMeter.LONGEST_S)) {
            throw refused(
                    "endS",
                    String.valueOf(endS),
                    (int) EventMeter.SHORTEST_S + " to " + (int) EventMeter.LONGEST_S + " s after the beginning");
        }
        EventMeter meter = new EventMeter(event.kind(), startS, endS);
        read(log, meter);
        String how = event.how().endsWith(MOVED) ? event.how() : event.how() + MOVED;
        return meter.measured(how)
                .orElseThrow(() -> refused(
                        "startS", String.valueOf(startS), "a time after which the log holds what makes such an event"));
    }

    private void read(FlightLog log, EventMeter meter) {
        SampleSink untilEnough = sample -> {
            if (meter.hasAll(sample.timeS())) {
                throw new Enough();
            }
            meter.accept(sample);
        };
        try (InputStream file = LogPieces.read(log.id(), logs)) {
            if (log.format() == LogFormat.GPX) {
                new GpxLog(file).read(untilEnough, new RowTally());
            } else {
                new CsvLog(file).read(Objects.requireNonNull(log.mapping()), untilEnough, new RowTally());
            }
        } catch (Enough e) {
            // What follows changes nothing.
            return;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InvalidInputException refused(String field, String value, String allowed) {
        return new InvalidInputException(new FieldProblem(field, value, allowed));
    }

    private static final class Enough extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Enough() {
            super("enough was read", null, false, false);
        }
    }
}
