package org.vanewright.campaign.log;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.flightlog.FoundEvent;

/**
 * Something found in a log, and what a person made of it.
 *
 * @param number from 1, in the order of time
 * @param found what was measured; its times are the person's where they moved it
 * @param pointId of the test point that it became; null unless accepted
 */
public record LogEvent(
        int number,
        FoundEvent found,
        Decision decision,
        @Nullable String pointId) {
    /** What a person made of it. */
    public enum Decision {
        OPEN("not looked at"),
        ACCEPTED("accepted"),
        DROPPED("dropped");

        private final String label;

        Decision(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    public boolean isOpen() {
        return decision == Decision.OPEN;
    }
}
