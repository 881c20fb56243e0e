package org.vanewright.engineering.flow;

/** A curve through values at increasing places: between two of them a cubic with the slopes of the parabolas through three. */
final class SmoothCurve {
    private final double[] places;
    private final double[] values;
    final double[] slopes;
    /** Where the last question was asked, since the next is mostly near it. */
    private int piece;

    SmoothCurve(double[] places, double[] values) {
        this.places = places;
        this.values = values;
        slopes = slopes(places, values);
    }

    /** Of the parabolas through three neighbours. */
    static double[] slopes(double[] places, double[] values) {
        int last = places.length - 1;
        double[] slopes = new double[places.length];
        for (int i = 1; i < last; i++) {
            slopes[i] = parabolaSlope(places, values, i, places[i]);
        }
        slopes[0] = parabolaSlope(places, values, 1, places[0]);
        slopes[last] = parabolaSlope(places, values, last - 1, places[last]);
        return slopes;
    }

    private static double parabolaSlope(double[] s, double[] u, int i, double at) {
        double before = (u[i] - u[i - 1]) / (s[i] - s[i - 1]);
        double after = (u[i + 1] - u[i]) / (s[i + 1] - s[i]);
        double bend = (after - before) / (s[i + 1] - s[i - 1]);
        return before + bend * (2 * at - s[i] - s[i - 1]);
    }

    /** Makes the piece around a place the one that is asked next. */
    private double locate(double at) {
        while (piece > 0 && at < places[piece]) {
            piece--;
        }
        while (piece < places.length - 2 && at > places[piece + 1]) {
            piece++;
        }
        return (at - places[piece]) / (places[piece + 1] - places[piece]);
    }

    double at(double place) {
        double t = locate(place);
        double h = places[piece + 1] - places[piece];
        double r = 1 - t;
        return r * r * (1 + 2 * t) * values[piece]
                + t * t * (3 - 2 * t) * values[piece + 1]
                + h * t * r * (r * slopes[piece] - t * slopes[piece + 1]);
    }

    double slopeAt(double place) {
        double t = locate(place);
        double h = places[piece + 1] - places[piece];
        double r = 1 - t;
        return 6 * t * r * (values[piece + 1] - values[piece]) / h
                + r * (1 - 3 * t) * slopes[piece]
                + t * (3 * t - 2) * slopes[piece + 1];
    }

    /** Other values at the same places, linear between them. */
    double along(double[] others, double place) {
        double t = locate(place);
        return others[piece] + t * (others[piece + 1] - others[piece]);
    }
}
