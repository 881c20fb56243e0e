package org.vanewright.bond;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.vanewright.engineering.bond.BondMode;

/**
 * Where a bond gives way first.
 *
 * @param kind of load
 * @param direction in which the base is tipped
 * @param mode how it gives way
 * @param margin strength left over demand
 */
public record Weakest(BondCase.Kind kind, BondWay.Direction direction, BondMode mode, double margin) {
    /** In a sentence, without the device. */
    public String words() {
        String figure = new BigDecimal(margin)
                .round(new MathContext(2, RoundingMode.HALF_UP))
                .toPlainString();
        return mode.words() + ", by " + kind.words() + " " + direction.words() + ": the strength left is " + figure
                + " times what is asked" + (margin < 1 ? ", so it is expected to give way" : "");
    }
}
