package org.vanewright.engineering.flow;

/**
 * The laminar part of a layer by B. Thwaites, "Approximate calculation of the laminar boundary layer", Aeronautical
 * Quarterly 1 (1949) 245-280: θ² = 0.45 ν/U⁶ ∫U⁵ ds, with U linear between stations in the integral.
 */
final class LaminarLayer {
    private static final double RATE = 0.45;

    private final Layer layer;
    private final EdgeFlow edge;
    private final double viscosity;

    private LaminarLayer(Layer layer, double viscosity) {
        this.layer = layer;
        this.edge = layer.edge;
        this.viscosity = viscosity;
    }

    /**
     * Follows the layer until it turns turbulent or ends.
     *
     * @param fixedX where it is made turbulent; NaN for free transition
     * @return first station that is not laminar
     */
    static int follow(Layer layer, double viscosity, double fixedX) {
        return new LaminarLayer(layer, viscosity).follow(fixedX);
    }

    private int follow(double fixedX) {
        boolean free = Double.isNaN(fixedX);
        double trip = free ? Layer.NOWHERE : edge.arcAtX(fixedX);
        double slope = edge.speed[1] / edge.s[1];
        set(0, RATE / 6 * viscosity / slope, RATE / 6);
        double integral = 0;
        double lambdaBefore = RATE / 6;
        double marginBefore = -1;
        for (int i = 1; i < edge.usable; i++) {
            integral += (edge.s[i] - edge.s[i - 1]) * meanFifthPower(edge.speed[i - 1], edge.speed[i]);
            double u = edge.speed[i];
            double square = RATE * viscosity * integral / (u * u * u * u * u * u);
            double lambda = square * edge.slope[i] / viscosity;
            double margin = free ? michelMargin(i, square) : -1;
            double stall = crossing(i, lambdaBefore - ThwaitesClosure.SEPARATION, lambda - ThwaitesClosure.SEPARATION);
            double natural = crossing(i, -marginBefore, -margin);
            double first = Math.min(Math.min(stall, natural), Math.max(trip, 0));
            if (first <= edge.s[i]) {
                endAt(i, first, stall, trip, square);
                return i;
            }
            set(i, square, lambda);
            lambdaBefore = lambda;
            marginBefore = margin;
        }
        return edge.usable;
    }

    private void endAt(int i, double where, double stall, double trip, double squareBehind) {
        double part = (where - edge.s[i - 1]) / (edge.s[i] - edge.s[i - 1]);
        double before = layer.momentum[i - 1] * layer.momentum[i - 1];
        layer.transition = where;
        layer.trippedTooLate = stall <= where && trip > where && trip != Layer.NOWHERE;
        layer.laminarSeparation = stall <= where ? stall : Layer.NOWHERE;
        layer.momentumAtTransition = Math.sqrt(before + part * (squareBehind - before));
    }

    /** Arc length at which a value falls through zero between two stations. */
    private double crossing(int i, double before, double here) {
        if (here > 0) {
            return Layer.NOWHERE;
        }
        double part = before > 0 ? before / (before - here) : 0;
        return edge.s[i - 1] + part * (edge.s[i] - edge.s[i - 1]);
    }

    /** How far Re_θ is above Michel's, over Michel's. */
    private double michelMargin(int i, double square) {
        double u = edge.speed[i];
        double critical = TransitionCriterion.momentumReynolds(u * edge.s[i] / viscosity);
        return u * Math.sqrt(square) / viscosity / critical - 1;
    }

    /** Mean of u⁵ between two stations, exact for linear u. */
    private static double meanFifthPower(double a, double b) {
        return (a + b) * (a * a + a * b + b * b) * (a * a - a * b + b * b) / 6;
    }

    private void set(int i, double square, double lambda) {
        double theta = Math.sqrt(square);
        layer.momentum[i] = theta;
        layer.shape[i] = ThwaitesClosure.shapeFactor(lambda);
        layer.excess[i] = ThwaitesClosure.excess(lambda);
        layer.friction[i] = i == 0 ? 0 : 2 * viscosity * ThwaitesClosure.shear(lambda) / (edge.speed[i] * theta);
    }
}
