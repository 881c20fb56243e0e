package org.vanewright.platform.page;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Pattern;

/** Numbers as people write and read them. */
public final class Numbers {
    private static final Pattern WRITTEN = Pattern.compile("[+-]?(\\d{1,12}([.,]\\d{0,12})?|[.,]\\d{1,12})");

    private Numbers() {}

    /**
     * A number as typed: digits with at most one decimal point or decimal comma. {@code 1,234.5}, exponents, {@code NaN}
     * and everything else is empty.
     */
    public static Optional<Double> parse(String typed) {
        String text = typed.strip().replace('\u2212', '-');
        return WRITTEN.matcher(text).matches() ? Optional.of(Double.valueOf(text.replace(',', '.'))) : Optional.empty();
    }

    /** Rounded half up to that many decimals, trailing zeros cut. */
    public static String trimmed(double number, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }

    /** Rounded half up to exactly that many decimals. */
    public static String fixed(double number, int decimals) {
        return BigDecimal.valueOf(number)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
    }

    /** The shortest decimal that reads back as this number. */
    public static String plain(double number) {
        return number == 0
                ? "0"
                : BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }
}
