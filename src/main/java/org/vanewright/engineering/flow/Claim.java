package org.vanewright.engineering.flow;

import org.jspecify.annotations.Nullable;

/**
 * What a coupled flow may claim: lift and drag, as long as turbulent separation stands in the last tenth of the chord or
 * nowhere, and layers and outer flow agree.
 *
 * @param attached true where separation stands no further ahead than that on either side
 * @param agreed true where the residual leaves lift uncertain by less than about 1 %
 * @param squireYoung profile drag by Squire and Young, whether claimed or not
 */
record Claim(boolean attached, boolean agreed, double squireYoung) {
    /** Part of the chord, from the leading edge, ahead of which separation ends what is claimed. */
    static final double SEPARATION_BEHIND = 0.9;

    private static final double AGREED_WITHIN = 0.02;

    static Claim of(CoupledFlow flow) {
        boolean attached = holds(flow, flow.upper()) && holds(flow, flow.lower());
        return new Claim(attached, flow.residual() < AGREED_WITHIN, drag(flow.upper()) + drag(flow.lower()));
    }

    boolean holds() {
        return attached && agreed;
    }

    @Nullable
    Double drag() {
        return holds() ? squireYoung : null;
    }

    private static boolean holds(CoupledFlow flow, Layer layer) {
        if (layer.attached()) {
            return true;
        }
        PanelGeometry g = flow.outer().geometry();
        double front = g.x[g.leadingEdge];
        double rear = layer.edge.x[layer.last()];
        double where = layer.edge.along(layer.edge.x, layer.separation);
        return where >= front + SEPARATION_BEHIND * (rear - front);
    }

    private static double drag(Layer layer) {
        int last = layer.last();
        return SquireYoung.drag(layer.momentum[last], Math.max(0, layer.edge.speed[last]), layer.shape[last]);
    }
}
