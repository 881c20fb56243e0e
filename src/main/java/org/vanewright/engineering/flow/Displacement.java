package org.vanewright.engineering.flow;

import java.util.stream.IntStream;
import org.vanewright.engineering.section.SurfaceSide;

/**
 * Flow displaced by the layers of both sides, on the grid and positive along the order of the panels.
 *
 * <p>The outer flow feels it smoothed: along the skin over some momentum thicknesses, since what is shorter than a layer
 * is thick does not reach its edge, and about transition over a part of the length in which turbulence takes over. A
 * sudden transition puts a kink into the displaced flow, the kink a peak into the speed, and the peak pushes transition
 * away, so that no place of it would agree with its own outer flow. Smoothing ends at the trailing edge. Source of the
 * length, 5 Re_x^0.8 by Reynolds number: S. Dhawan, R. Narasimha, "Some properties of boundary layer flow during the
 * transition from laminar to turbulent motion", Journal of Fluid Mechanics 3 (1958) 418-436.
 */
final class Displacement {
    /** In θ. */
    private static final double FELT_OVER = 6;
    /** Smoothing over the distance to the trailing edge, at most. */
    private static final double AT_TRAILING_EDGE = 0.2;

    private static final double OF_TRANSITION = 0.3;
    /** Longest transition over the length of the laminar layer. */
    private static final double LONGEST_TRANSITION = 0.6;

    /** Share of an exponential beyond which nothing is felt of transition. */
    private static final double FAR = 5;

    private final CoupledFlow flow;
    private final DisplacementGrid grid;
    private final double viscosity;
    /** At the places of the grid: displaced flow, the square of the length of smoothing, and gain by vorticity. */
    private final double[] displaced;

    private final double[] over;

    Displacement(CoupledFlow flow, DisplacementGrid grid, double viscosity) {
        this.flow = flow;
        this.grid = grid;
        this.viscosity = viscosity;
        int places = grid.arc().length;
        displaced = new double[places];
        over = new double[places];
        int parting = flow.stagnation().end();
        double upperExtent = extent(flow.upper());
        double lowerExtent = extent(flow.lower());
        for (int k = 0; k < places; k++) {
            int end = grid.end(k);
            if (end <= parting) {
                set(k, flow.upper(), parting + 1 - end, upperExtent);
                displaced[k] = -displaced[k];
            } else {
                set(k, flow.lower(), end - parting, lowerExtent);
            }
        }
    }

    private void set(int place, Layer layer, int station, double extent) {
        displaced[place] = Math.max(0, layer.edge.speed[station]) * thickness(layer, station);
        over[place] = feltOver(layer, station, extent);
    }

    /** As the outer flow feels it, on the grid. */
    double[] felt() {
        return Diffusion.of(displaced, over, grid.arc());
    }

    /** How the layers would follow a small change of the outer flow, and it them. */
    Interaction interaction(OuterResponse outer) {
        int[] places =
                IntStream.range(0, displaced.length).filter(k -> turbulent(k)).toArray();
        double[][] answers = new double[places.length][places.length];
        double[][] rows = new double[flow.outer().vorticity().length][];
        for (int i = 0; i < places.length; i++) {
            rows[grid.end(places[i])] = answers[i];
        }
        for (SurfaceSide side : SurfaceSide.values()) {
            new LayerAnswer(flow, side, outer, places).into(rows);
        }
        return new Interaction(places, answers, Diffusion.diagonals(over, grid.arc()));
    }

    private boolean turbulent(int place) {
        int end = grid.end(place);
        int parting = flow.stagnation().end();
        Regime regime = end <= parting ? flow.upper().regime[parting + 1 - end] : flow.lower().regime[end - parting];
        return regime != Regime.LAMINAR;
    }

    /** The laminar layer counts with the shape factor that it gets at transition. */
    private static double thickness(Layer layer, int i) {
        return layer.momentum[i] * (layer.regime[i] == Regime.LAMINAR ? TurbulentLayer.INITIAL_SHAPE : layer.shape[i]);
    }

    /** Length of transition. */
    private double extent(Layer layer) {
        double from = layer.transition;
        return from == Layer.NOWHERE
                ? 0
                : Math.min(5 * Math.pow(from / viscosity, 0.8) * viscosity, LONGEST_TRANSITION * from);
    }

    private static double feltOver(Layer layer, int i, double extent) {
        double length = FELT_OVER * layer.momentum[i];
        double away = Math.abs(layer.edge.s[i] - layer.transition);
        if (away < FAR * extent) {
            double part = away / extent;
            length = Math.max(length, OF_TRANSITION * extent * Math.exp(-part * part));
        }
        double behind = layer.edge.s[layer.last()] - layer.edge.s[i];
        double felt = Math.min(length, AT_TRAILING_EDGE * behind);
        return felt * felt;
    }
}
