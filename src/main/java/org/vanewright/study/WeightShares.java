package org.vanewright.study;

import java.util.List;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.SurfaceDocument;
import org.vanewright.airframe.Surfaces;

/** Which part of the weight each surface carries in level flight. */
final class WeightShares {
    private WeightShares() {}

    /** By area among the wings; a stabiliser or fin is taken to carry nothing (common practice, no source). */
    static double of(AirframeDocument airframe, String surfaceName) {
        SurfaceDocument surface = Surfaces.named(airframe, surfaceName).orElseThrow();
        if (!isWing(surface)) {
            return 0;
        }
        List<SurfaceDocument> wings =
                airframe.surfaces().stream().filter(WeightShares::isWing).toList();
        double all = wings.stream().mapToDouble(Surfaces::areaM2).sum();
        return wings.size() == 1 ? 1 : Surfaces.areaM2(surface) / all;
    }

    private static boolean isWing(SurfaceDocument surface) {
        return surface.kind() == null || surface.kind() == SurfaceDocument.Kind.WING;
    }
}
