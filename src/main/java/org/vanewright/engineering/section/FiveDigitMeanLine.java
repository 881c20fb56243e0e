package org.vanewright.engineering.section;

/**
 * NACA five-digit mean line: a cubic up to r, then a straight line (simple) or a second cubic (reflexed, without
 * pitching moment about the quarter chord in thin-aerofoil theory).
 *
 * <pre>
 * y_c = k1/6 [(x−r)³ − k (1−r)³ x − r³ x + r³]        x ≤ r
 * y_c = k1/6 [k (x−r)³ − k (1−r)³ x − r³ x + r³]      x &gt; r,   k = k2/k1, 0 for the simple lines
 * </pre>
 *
 * With k = 0 this is the familiar k1/6 [x³ − 3 r x² + r² (3−r) x] and k1 r³/6 (1−x). Constants are for a design lift
 * coefficient of 0.3; k1 is proportional to it. Sources: E. N. Jacobs, R. M. Pinkerton, NACA TR-537 (1935); C. L.
 * Ladson, C. W. Brooks, A. S. Hill, D. W. Sproles, NASA TM 4741 (1996).
 *
 * @param k1 of the front branch
 * @param r where the branches meet, in chords
 * @param ratio k2/k1; 0 for a simple line
 */
record FiveDigitMeanLine(double k1, double r, double ratio) implements MeanLine {
    @Override
    public double height(double x) {
        double d = x - r;
        return k1 / 6 * (branch(x) * d * d * d - descent() * x + r * r * r);
    }

    @Override
    public double slope(double x) {
        double d = x - r;
        return k1 / 6 * (3 * branch(x) * d * d - descent());
    }

    @Override
    public double bend(double x) {
        return k1 * branch(x) * (x - r);
    }

    @Override
    public double bendRate(double x) {
        return k1 * branch(x);
    }

    @Override
    public double joint() {
        return r;
    }

    @Override
    public double maximumHeight() {
        return height(r - Math.sqrt(descent() / 3));
    }

    private double branch(double x) {
        return x <= r ? 1 : ratio;
    }

    private double descent() {
        double aft = 1 - r;
        return ratio * aft * aft * aft + r * r * r;
    }
}
