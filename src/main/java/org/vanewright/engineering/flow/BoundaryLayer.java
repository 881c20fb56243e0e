package org.vanewright.engineering.flow;

/** Follows one side's layer from the stagnation point to the trailing edge. */
final class BoundaryLayer {
    private BoundaryLayer() {}

    /**
     * @param viscosity ν over free-stream speed, in the section's unit: 1/Re of unit length
     * @param fixedX where the layer is made turbulent; NaN for free transition
     * @param tolerance relative error of one step of the turbulent integration
     */
    static Layer follow(EdgeFlow edge, double viscosity, double fixedX, double tolerance) {
        Layer layer = new Layer(edge);
        int first = LaminarLayer.follow(layer, viscosity, fixedX);
        if (first < edge.s.length) {
            if (layer.transition == Layer.NOWHERE) {
                // the edge flow stops while the layer is laminar
                layer.laminarSeparation = edge.s[first - 1];
                layer.transition = edge.s[first - 1];
                layer.momentumAtTransition = layer.momentum[first - 1];
            }
            TurbulentLayer.follow(layer, viscosity, first, tolerance);
        }
        return layer;
    }
}
