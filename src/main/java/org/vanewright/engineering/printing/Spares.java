package org.vanewright.engineering.printing;

import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * Pieces beyond those that are fitted: a number, a share, or both added up.
 *
 * @param count of each kind, 0 to 200
 * @param percent of those fitted, rounded up, 0 to 200
 */
public record Spares(int count, double percent) {
    private static final int MOST = 200;

    /** @throws InvalidInputException for values out of range, as {@code spares} and {@code sparesPercent} */
    public Spares {
        Checks checks = new Checks();
        checks.require(count >= 0 && count <= MOST, "spares", count, "a whole number from 0 to " + MOST);
        checks.range("sparesPercent", percent, 0, MOST, "%");
        checks.throwIfAny();
    }

    /** Spares for so many fitted pieces. */
    public int of(int fitted) {
        return count + (int) Math.ceil(fitted * percent / 100 - 1e-9);
    }
}
