package org.vanewright.study;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.flow.LayerStation;
import org.vanewright.engineering.flow.Regime;
import org.vanewright.engineering.flow.SideFlow;

/**
 * The boundary layer at one place of a wing; the layer's figures are absent behind separation.
 *
 * @param chordFraction x/c
 * @param arcMm along the skin from the stagnation point
 * @param speedRatio at the edge of the layer over the free stream
 * @param thicknessMm to 99 % of the speed at the edge
 * @param displacementMm displacement thickness
 * @param momentumMm momentum thickness
 * @param shapeFactor displacement over momentum thickness
 * @param regime of the layer
 */
public record LayerHere(
        double chordFraction,
        double arcMm,
        double speedRatio,
        @Nullable Double thicknessMm,
        @Nullable Double displacementMm,
        @Nullable Double momentumMm,
        @Nullable Double shapeFactor,
        @Nullable Regime regime) {
    /** On that side at that place, between the stations that were computed. */
    static LayerHere of(SideFlow side, double chordFraction, double chordMm) {
        List<LayerStation> stations = side.stations();
        int after = stations.size() - 1;
        // From the trailing edge forward: near the nose an x can come twice, and the rearward one is meant.
        while (after > 1 && stations.get(after - 1).x() > chordFraction) {
            after--;
        }
        LayerStation a = stations.get(after - 1);
        LayerStation b = stations.get(after);
        double span = b.x() - a.x();
        double t = span == 0 ? 0 : Math.min(1, Math.max(0, (chordFraction - a.x()) / span));
        return new LayerHere(
                chordFraction,
                mix(a.arcLength(), b.arcLength(), t) * chordMm,
                mix(a.speedRatio(), b.speedRatio(), t),
                scaled(a.thickness(), b.thickness(), t, chordMm),
                scaled(a.displacementThickness(), b.displacementThickness(), t, chordMm),
                scaled(a.momentumThickness(), b.momentumThickness(), t, chordMm),
                scaled(a.shapeFactor(), b.shapeFactor(), t, 1),
                t < 0.5 ? a.regime() : b.regime());
    }

    private static @Nullable Double scaled(@Nullable Double a, @Nullable Double b, double t, double scale) {
        return a == null || b == null ? null : Double.valueOf(mix(a, b, t) * scale);
    }

    private static double mix(double a, double b, double t) {
        return a + t * (b - a);
    }

    /** Along the skin from the stagnation point to a place behind it, in mm. */
    static double arcMm(SideFlow side, double chordFraction, double chordMm) {
        return of(side, chordFraction, chordMm).arcMm();
    }
}
