package org.vanewright.engineering.inference;

/**
 * A confidence interval.
 *
 * @param low its lower end
 * @param high its upper end, not below the lower
 */
public record Interval(double low, double high) {
    public boolean contains(double value) {
        return low <= value && value <= high;
    }

    public double halfWidth() {
        return high / 2 - low / 2;
    }
}
