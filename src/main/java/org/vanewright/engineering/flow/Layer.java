package org.vanewright.engineering.flow;

import java.util.Arrays;

/** One side's boundary layer at the stations of its edge flow, lengths in the section's unit. */
final class Layer {
    static final double NOWHERE = Double.POSITIVE_INFINITY;

    final EdgeFlow edge;
    /** θ. */
    final double[] momentum;
    /** H. */
    final double[] shape;
    /** (δ₉₉ − δ*)/θ. */
    final double[] excess;

    final double[] friction;
    final Regime[] regime;
    /** Arc lengths from the stagnation point; {@link #NOWHERE} where there is none. */
    double laminarSeparation = NOWHERE;

    double transition = NOWHERE;
    double separation = NOWHERE;
    double momentumAtTransition;
    /** True where a laminar layer separated ahead of the place at which transition was to be fixed. */
    boolean trippedTooLate;

    Layer(EdgeFlow edge) {
        this.edge = edge;
        int n = edge.s.length;
        momentum = new double[n];
        shape = new double[n];
        excess = new double[n];
        friction = new double[n];
        regime = new Regime[n];
        Arrays.fill(regime, Regime.LAMINAR);
    }

    double displacement(int station) {
        return momentum[station] * shape[station];
    }

    int last() {
        return edge.s.length - 1;
    }

    boolean attached() {
        return separation == NOWHERE;
    }
}
