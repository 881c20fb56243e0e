package org.vanewright.engineering.flow;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * One side of a section in a flow, from the stagnation point rearward.
 *
 * @param transitionX where the layer becomes turbulent; absent where it is laminar to the trailing edge, or not computed
 * @param separationX where the turbulent layer separates; absent where it stays attached, or not computed
 * @param laminarSeparationX where the laminar layer separates and is taken to become turbulent; absent where it does not
 * @param stations the stagnation point, then the panel ends
 */
public record SideFlow(
        @Nullable Double transitionX,
        @Nullable Double separationX,
        @Nullable Double laminarSeparationX,
        List<LayerStation> stations) {

    static SideFlow of(Layer layer) {
        return new SideFlow(
                x(layer, layer.transition),
                x(layer, layer.separation),
                x(layer, layer.laminarSeparation),
                IntStream.rangeClosed(0, layer.last())
                        .mapToObj(i -> LayerStation.of(layer, i))
                        .toList());
    }

    static SideFlow bare(EdgeFlow edge) {
        return new SideFlow(
                null,
                null,
                null,
                IntStream.range(0, edge.s.length)
                        .mapToObj(i -> LayerStation.bare(edge, i))
                        .toList());
    }

    static @Nullable Double x(Layer layer, double arc) {
        return arc == Layer.NOWHERE ? null : layer.edge.along(layer.edge.x, arc);
    }
}
