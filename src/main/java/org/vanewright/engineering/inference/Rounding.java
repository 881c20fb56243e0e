package org.vanewright.engineering.inference;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * No more digits than the uncertainty carries: its first digit decides the last place shown, and its second where the first
 * is 1 or 2. After JCGM 100:2008, 7.2.6, which allows at most two digits.
 */
public final class Rounding {
    private static final int MOST_DECIMALS = 12;

    private Rounding() {}

    /** Places behind the point that an uncertainty deserves; none for one above 3. */
    public static int decimals(double uncertainty) {
        if (!(uncertainty > 0) || !Double.isFinite(uncertainty)) {
            return 0;
        }
        int power = (int) Math.floor(Math.log10(uncertainty));
        double first = uncertainty / Math.pow(10, power);
        int decimals = first < 3 ? 1 - power : -power;
        return Math.min(MOST_DECIMALS, Math.max(0, decimals));
    }

    /** With a minus sign that is one. */
    public static String text(double value, int decimals) {
        BigDecimal rounded = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
        // no negative zero, and a minus sign that is one
        return rounded.signum() == 0
                ? rounded.abs().toPlainString()
                : rounded.toPlainString().replace('-', '−');
    }
}
