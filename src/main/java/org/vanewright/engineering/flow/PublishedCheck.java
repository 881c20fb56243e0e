package org.vanewright.engineering.flow;

import java.util.function.DoubleSupplier;
import org.jspecify.annotations.Nullable;

/**
 * A computed figure beside a published one. The tests and the page that shows the method's errors use the same list.
 *
 * @param group what belongs together on a page
 * @param quantity what is compared
 * @param conditions of the published figure
 * @param computed works the figure out; may take some milliseconds
 * @param published the published figure
 * @param tolerance largest difference that counts as agreement, in the figure's unit
 * @param unit empty for pure numbers
 * @param source author, title, year
 * @param howKnown how the published figure came here
 * @param reasonOutside why the figures are known to differ by more than the tolerance; absent where they agree
 */
public record PublishedCheck(
        String group,
        String quantity,
        String conditions,
        DoubleSupplier computed,
        double published,
        double tolerance,
        String unit,
        String source,
        HowKnown howKnown,
        @Nullable String reasonOutside) {

    /** How a published figure came here. */
    public enum HowKnown {
        /** Read in a copy of the source. */
        READ,
        /** Another work quotes the source. */
        SECOND_HAND,
        /** Recalled, and worked out again where a formula allows; not read in the source. */
        FROM_MEMORY,
        /** A consequence of the source's formula. */
        DERIVED
    }

    /** True where a computed figure agrees with the published one. */
    public boolean agrees(double computedFigure) {
        return Math.abs(computedFigure - published) <= tolerance;
    }

    /** The same, known to lie outside its tolerance. */
    public PublishedCheck outsideBecause(String reason) {
        return new PublishedCheck(
                group, quantity, conditions, computed, published, tolerance, unit, source, howKnown, reason);
    }
}
