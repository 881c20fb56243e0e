package org.vanewright.method;

import org.vanewright.engineering.flow.PublishedCheck;

/**
 * A published figure with what is computed here.
 *
 * @param check the published side
 * @param computed the figure by this service
 */
public record ComputedCheck(PublishedCheck check, double computed) {
    /** Computed less published, in the figure's unit. */
    public double difference() {
        return computed - check.published();
    }

    public boolean agrees() {
        return check.agrees(computed);
    }
}
