package org.vanewright.engineering.inference.meta;

/**
 * What one study found.
 *
 * @param value the change, in a unit that all have in common
 * @param standardError of it, in the same unit, above 0
 */
public record Effect(double value, double standardError) {
    double variance() {
        return standardError * standardError;
    }
}
