package org.vanewright.engineering.section;

/**
 * NACA four-digit mean line: two parabolas that meet level at the place of greatest camber.
 *
 * <pre>
 * y_c = m/p² (2 p x − x²)                   x ≤ p
 * y_c = m/(1−p)² [(1−2p) + 2 p x − x²]      x &gt; p
 * </pre>
 *
 * Source: E. N. Jacobs, K. E. Ward, R. M. Pinkerton, NACA TR-460 (1933).
 *
 * @param camber m, greatest camber in chords
 * @param position p, its place in chords; not 0 unless {@code camber} is
 */
record FourDigitMeanLine(double camber, double position) implements MeanLine {
    static final MeanLine STRAIGHT = new FourDigitMeanLine(0, 0);

    @Override
    public double height(double x) {
        return camber == 0 ? 0 : x <= position ? factor(x) * (2 * position - x) * x : aft(x);
    }

    private double aft(double x) {
        return factor(x) * (1 - 2 * position + (2 * position - x) * x);
    }

    @Override
    public double slope(double x) {
        return 2 * factor(x) * (position - x);
    }

    @Override
    public double bend(double x) {
        return -2 * factor(x);
    }

    @Override
    public double bendRate(double x) {
        return 0;
    }

    @Override
    public double joint() {
        return position;
    }

    @Override
    public double maximumHeight() {
        return camber;
    }

    private double factor(double x) {
        if (camber == 0) {
            return 0;
        }
        double reach = x <= position ? position : 1 - position;
        return camber / (reach * reach);
    }
}
