package org.vanewright.engineering.flow;

import org.jspecify.annotations.Nullable;

/**
 * Flow and boundary layer at one place of the skin; lengths in the section's unit. Without a boundary layer, or behind
 * turbulent separation, the layer's figures are absent.
 *
 * @param x chordwise position
 * @param y height
 * @param arcLength along the skin from the stagnation point
 * @param speedRatio speed at the layer's edge over the free stream's
 * @param pressureCoefficient 1 − speedRatio²
 * @param thickness where the speed reaches 99 % of the edge's (laminar), or the entrainment method's thickness
 * @param displacementThickness δ*
 * @param momentumThickness θ
 * @param shapeFactor δ* over θ
 * @param skinFrictionCoefficient wall shear over the dynamic pressure at the edge; 0 at the stagnation point
 * @param regime absent where no layer was computed
 */
public record LayerStation(
        double x,
        double y,
        double arcLength,
        double speedRatio,
        double pressureCoefficient,
        @Nullable Double thickness,
        @Nullable Double displacementThickness,
        @Nullable Double momentumThickness,
        @Nullable Double shapeFactor,
        @Nullable Double skinFrictionCoefficient,
        @Nullable Regime regime) {

    static LayerStation of(Layer layer, int i) {
        EdgeFlow e = layer.edge;
        double u = e.speed[i];
        if (layer.regime[i] == Regime.SEPARATED) {
            return new LayerStation(
                    e.x[i], e.y[i], e.s[i], u, 1 - u * u, null, null, null, null, null, Regime.SEPARATED);
        }
        double theta = layer.momentum[i];
        double displacement = layer.displacement(i);
        return new LayerStation(
                e.x[i],
                e.y[i],
                e.s[i],
                u,
                1 - u * u,
                displacement + layer.excess[i] * theta,
                displacement,
                theta,
                layer.shape[i],
                layer.friction[i],
                layer.regime[i]);
    }

    static LayerStation bare(EdgeFlow e, int i) {
        double u = e.speed[i];
        return new LayerStation(e.x[i], e.y[i], e.s[i], u, 1 - u * u, null, null, null, null, null, null);
    }
}
