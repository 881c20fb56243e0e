package org.vanewright.engineering.drawing;

/** Plain decimal numbers for text file formats: a point, no exponent, no grouping, no negative zero, any locale. */
final class Numbers {
    private static final long[] POWERS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000};

    private Numbers() {}

    /** Rounded to at most {@code decimals} (0 to 6) places, trailing zeros left out. */
    static String of(double value, int decimals) {
        StringBuilder out = new StringBuilder();
        append(out, value, decimals);
        return out.toString();
    }

    static void append(StringBuilder out, double value, int decimals) {
        if (!Double.isFinite(value) || Math.abs(value) > 1e9) {
            throw new IllegalArgumentException("not a drawable number: " + value);
        }
        long power = POWERS[decimals];
        long scaled = Math.round(value * power);
        if (scaled < 0) {
            out.append('-');
            scaled = -scaled;
        }
        out.append(scaled / power);
        long rest = scaled % power;
        if (rest != 0) {
            out.append('.');
            for (long place = power / 10; rest != 0; place /= 10) {
                out.append((char) ('0' + rest / place));
                rest %= place;
            }
        }
    }
}
