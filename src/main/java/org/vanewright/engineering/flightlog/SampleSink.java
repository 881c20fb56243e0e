package org.vanewright.engineering.flightlog;

/** Takes samples as they are read, in the order of their times. */
@FunctionalInterface
public interface SampleSink {
    void accept(FlightSample sample);
}
