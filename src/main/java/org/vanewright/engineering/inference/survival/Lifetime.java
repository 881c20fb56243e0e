package org.vanewright.engineering.inference.survival;

/**
 * One right-censored observation.
 *
 * @param hours until it was lost, or was last seen in place; 0 or more, finite
 * @param lost whether it was lost then
 */
public record Lifetime(double hours, boolean lost) {
    public Lifetime {
        if (!Double.isFinite(hours) || hours < 0) {
            throw new IllegalArgumentException("hours must be finite and not negative: " + hours);
        }
    }
}
