package org.vanewright.engineering.section;

/**
 * NACA skins worked out a second way: positions straight from the published equations, slopes of the mean line by
 * central differences, arc length as the sum of very many chords.
 */
final class NacaReference {
    private static final int PIECES = 200_000;

    private NacaReference() {}

    /** Length of one side in chords; Richardson-extrapolated sum of chords, spaced evenly in √x. */
    static double arcLength(String digits, SurfaceSide side) {
        return arcLength(digits, side, 1);
    }

    /** As {@link #arcLength(String, SurfaceSide)}, from the leading edge to the skin's place over x of the mean line. */
    static double arcLength(String digits, SurfaceSide side, double toX) {
        double fine = chords(digits, side, toX, PIECES);
        double coarse = chords(digits, side, toX, PIECES / 2);
        return fine + (fine - coarse) / 3;
    }

    private static double chords(String digits, SurfaceSide side, double toX, int pieces) {
        double sum = 0;
        double[] before = point(digits, side, 0);
        for (int i = 1; i <= pieces; i++) {
            double root = Math.sqrt(toX) * i / pieces;
            double[] here = point(digits, side, root * root);
            sum += Math.hypot(here[0] - before[0], here[1] - before[1]);
            before = here;
        }
        return sum;
    }

    static double[] point(String digits, SurfaceSide side, double x) {
        double t = Integer.parseInt(digits.substring(digits.length() - 2)) / 100.0;
        double half = 5
                * t
                * (0.2969 * Math.sqrt(x)
                        - 0.1260 * x
                        - 0.3516 * x * x
                        + 0.2843 * Math.pow(x, 3)
                        - 0.1015 * Math.pow(x, 4));
        double h = 1e-6;
        double angle = Math.atan((mean(digits, x + h) - mean(digits, x - h)) / (2 * h));
        double sign = side == SurfaceSide.UPPER ? 1 : -1;
        return new double[] {x - sign * half * Math.sin(angle), mean(digits, x) + sign * half * Math.cos(angle)};
    }

    static double mean(String digits, double x) {
        if (digits.length() == 4) {
            double m = (digits.charAt(0) - '0') / 100.0;
            double p = (digits.charAt(1) - '0') / 10.0;
            if (m == 0) {
                return 0;
            }
            return x <= p
                    ? m / (p * p) * (2 * p * x - x * x)
                    : m / Math.pow(1 - p, 2) * (1 - 2 * p + 2 * p * x - x * x);
        }
        return digits.charAt(2) == '0' ? simple230(x) : reflexed231(x);
    }

    private static double simple230(double x) {
        double r = 0.2025;
        double k1 = 15.957;
        return x <= r
                ? k1 / 6 * (Math.pow(x, 3) - 3 * r * x * x + r * r * (3 - r) * x)
                : k1 * Math.pow(r, 3) / 6 * (1 - x);
    }

    private static double reflexed231(double x) {
        double r = 0.2170;
        double k = 0.00677;
        double front = Math.pow(x - r, 3) * (x <= r ? 1 : k);
        return 15.793 / 6 * (front - k * Math.pow(1 - r, 3) * x - Math.pow(r, 3) * x + Math.pow(r, 3));
    }
}
