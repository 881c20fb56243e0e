package org.vanewright.bench.web.page;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.vanewright.platform.page.Numbers;

/** Results as people read them. */
final class Shown {
    static final double MPS_PER_KNOT = 1852.0 / 3600;
    static final double MM_PER_M = 1000;
    /** Square millimetres in a square metre. */
    static final double MM2_PER_M2 = 1e6;

    private static final char SPACE = '\u00a0';

    private Shown() {}

    /** So many significant digits; thousands parted, and no exponent. */
    static String digits(double value, int significant) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(significant, RoundingMode.HALF_UP));
        if (rounded.signum() == 0) {
            return "0";
        }
        return rounded.abs().compareTo(BigDecimal.valueOf(10_000)) < 0
                ? rounded.toPlainString()
                : String.format(Locale.ROOT, "%,d", rounded.longValue());
    }

    static String digits(double value, int significant, String unit) {
        return digits(value, significant) + SPACE + unit;
    }

    static String fixed(double value, int decimals) {
        String text = Numbers.fixed(value, decimals);
        return new BigDecimal(text).signum() == 0 ? text.replace("-", "") : text;
    }

    static String fixed(double value, int decimals, String unit) {
        return fixed(value, decimals) + SPACE + unit;
    }

    /** A fraction of the chord. */
    static String chord(@Nullable Double fraction, String otherwise) {
        return fraction == null ? otherwise : Numbers.fixed(fraction * 100, 1) + SPACE + "% of the chord";
    }
}
