package org.vanewright.engineering.section;

/**
 * NACA four- and five-digit thickness form over t = √x, which removes the root's infinite slope at the nose.
 *
 * <p>y_t = 5 τ (0.2969 √x − 0.1260 x − 0.3516 x² + 0.2843 x³ − 0.1015 x⁴), half the thickness in chords. Source: E. N.
 * Jacobs, K. E. Ward, R. M. Pinkerton, NACA TR-460 (1933). A closed trailing edge takes 0.1036 for the last
 * coefficient.
 *
 * @param ratio τ, greatest thickness in chords
 * @param last coefficient of x⁴
 */
record ThicknessForm(double ratio, double last) {
    private static final double ROOT = 0.2969;

    static ThicknessForm of(double ratio, SectionSpec.TrailingEdge edge) {
        return new ThicknessForm(ratio, edge == SectionSpec.TrailingEdge.CLOSED ? 0.1036 : 0.1015);
    }

    double half(double t) {
        double x = t * t;
        return 5 * ratio * (ROOT * t + x * (-0.1260 + x * (-0.3516 + x * (0.2843 - x * last))));
    }

    /** Derivative of {@link #half} by t. */
    double slope(double t) {
        double x = t * t;
        return 5 * ratio * (ROOT + t * (-0.2520 + x * (-1.4064 + x * (1.7058 - x * 8 * last))));
    }

    /** Second derivative of {@link #half} by t. */
    double bend(double t) {
        double x = t * t;
        return 5 * ratio * (-0.2520 + x * (-4.2192 + x * (8.529 - x * 56 * last)));
    }

    /**
     * Radius of curvature of the nose in chords: (5 · 0.2969 τ)²/2 = 1.1019 τ². Of a cambered section's skin it is this
     * times the cosine of the mean line's slope there.
     */
    double noseRadius() {
        double a = 5 * ratio * ROOT;
        return 0.5 * a * a;
    }

    /** Largest thickness square to the mean line, in chords. */
    double maximum() {
        return 2 * SectionExtremes.largest(0, 1, this::half, this::slope);
    }
}
