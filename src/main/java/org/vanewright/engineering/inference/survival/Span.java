package org.vanewright.engineering.inference.survival;

/**
 * What inspections say of one thing: it was in place after some hours, and not any more after some others.
 *
 * @param afterHours last seen in place; 0 where it was never seen since it began
 * @param byHours first seen lost, above {@code afterHours}; infinite where it never was
 */
public record Span(double afterHours, double byHours) {
    public Span {
        if (!(afterHours >= 0) || Double.isInfinite(afterHours) || !(byHours > afterHours)) {
            throw new IllegalArgumentException("not a span of hours: " + afterHours + " to " + byHours);
        }
    }

    /** Still in place when last seen. */
    public static Span kept(double hours) {
        return new Span(hours, Double.POSITIVE_INFINITY);
    }

    public boolean lost() {
        return byHours < Double.POSITIVE_INFINITY;
    }

    /** The same as if the loss had happened when it was found. */
    public Lifetime asFound() {
        return new Lifetime(lost() ? byHours : afterHours, lost());
    }
}
