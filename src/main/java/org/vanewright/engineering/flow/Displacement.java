package org.vanewright.engineering.flow;

import org.vanewright.engineering.section.SurfaceSide;

/**
 * Flow displaced by the layers of both sides, at the panel ends and positive along their order.
 *
 * <p>The outer flow feels it smoothed: along the skin over some momentum thicknesses, since what is shorter than a layer
 * is thick does not reach its edge, and about transition over a part of the length in which turbulence takes over. A
 * sudden transition puts a kink into the displaced flow, the kink a peak into the speed, and the peak pushes transition
 * away, so that no place of it would agree with its own outer flow. Smoothing ends at the trailing edge. Source of the
 * length, 5 Re_x^0.8 by Reynolds number: S. Dhawan, R. Narasimha, "Some properties of boundary layer flow during the
 * transition from laminar to turbulent motion", Journal of Fluid Mechanics 3 (1958) 418-436.
 */
final class Displacement {
    /** Both in θ: smoothing of what the outer flow feels, and of the step from one pass to the next. */
    private static final double FELT_OVER = 6;

    private static final double STEP_OVER = 5;
    /** Smoothing over the distance to the trailing edge, at most. */
    private static final double AT_TRAILING_EDGE = 0.2;

    private static final double OF_TRANSITION = 0.3;
    /** Longest transition over the length of the laminar layer. */
    private static final double LONGEST_TRANSITION = 0.6;

    private final CoupledFlow flow;
    private final DisplacementGrid grid;
    private final double viscosity;

    Displacement(CoupledFlow flow, DisplacementGrid grid, double viscosity) {
        this.flow = flow;
        this.grid = grid;
        this.viscosity = viscosity;
    }

    private interface AtStation {
        double of(Layer layer, int station);
    }

    /** As the outer flow feels it, on the grid. */
    double[] felt() {
        double[] displaced = grid.pick(both((layer, i) -> displaced(layer, i), -1));
        return Diffusion.of(displaced, grid.pick(both(this::feltOver, 1)), grid.arc());
    }

    /** A change of it without the ripples that the passes would amplify, on the grid. */
    double[] step(double[] change) {
        return Diffusion.of(change, grid.pick(both(Displacement::stepOver, 1)), grid.arc());
    }

    private double[] both(AtStation value, double signOfUpper) {
        double[] values = new double[flow.displaced().length];
        for (int i = 1; i <= flow.upper().last(); i++) {
            values[EdgeFlow.end(flow.stagnation(), SurfaceSide.UPPER, i)] = signOfUpper * value.of(flow.upper(), i);
        }
        for (int i = 1; i <= flow.lower().last(); i++) {
            values[EdgeFlow.end(flow.stagnation(), SurfaceSide.LOWER, i)] = value.of(flow.lower(), i);
        }
        return values;
    }

    /** The laminar layer counts with the shape factor that it gets at transition. */
    private static double displaced(Layer layer, int i) {
        double shape = layer.regime[i] == Regime.LAMINAR ? TurbulentLayer.INITIAL_SHAPE : layer.shape[i];
        return Math.max(0, layer.edge.speed[i]) * layer.momentum[i] * shape;
    }

    private double feltOver(Layer layer, int i) {
        double length = FELT_OVER * layer.momentum[i];
        if (layer.transition != Layer.NOWHERE) {
            double extent = Math.min(
                    5 * Math.pow(layer.transition / viscosity, 0.8) * viscosity, LONGEST_TRANSITION * layer.transition);
            double away = (layer.edge.s[i] - layer.transition) / extent;
            length = Math.max(length, OF_TRANSITION * extent * Math.exp(-away * away));
        }
        double behind = layer.edge.s[layer.last()] - layer.edge.s[i];
        return square(Math.min(length, AT_TRAILING_EDGE * behind));
    }

    /** Nothing at the trailing edge itself, which halves the smoothing beside it: by trial that takes the fewest passes. */
    private static double stepOver(Layer layer, int i) {
        return i == layer.last() ? 0 : square(STEP_OVER * layer.momentum[i]);
    }

    private static double square(double length) {
        return length * length;
    }
}
