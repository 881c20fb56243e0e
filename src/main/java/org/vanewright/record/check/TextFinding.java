package org.vanewright.record.check;

/**
 * Something in a text that may stand there by accident.
 *
 * @param field path of the text
 * @param kind what it looks like
 * @param excerpt the place, with a few characters around it
 */
public record TextFinding(String field, Kind kind, String excerpt) {
    /** What it looks like. */
    public enum Kind {
        EMAIL_ADDRESS("an e-mail address"),
        PHONE_NUMBER("a phone number");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }
}
