package org.vanewright.record.demo;

/** A feature's demonstration data. Loading twice changes nothing. */
public interface DemoData {
    /** Lower ones load first: airframes and devices before layouts. */
    int order();

    /** Publishes what is missing, and the next revision of what has changed and nobody else has touched. */
    void load();
}
