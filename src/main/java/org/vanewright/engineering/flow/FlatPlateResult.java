package org.vanewright.engineering.flow;

import java.util.List;

/**
 * The boundary layer at a place on a flat plate.
 *
 * @param reynolds of the distance from the leading edge
 * @param thicknessMm to 99 % of the free-stream speed
 * @param displacementThicknessMm δ*
 * @param momentumThicknessMm θ
 * @param skinFrictionCoefficient local
 * @param method how it was computed
 * @param sources citations
 * @param validity warnings
 */
public record FlatPlateResult(
        double reynolds,
        double thicknessMm,
        double displacementThicknessMm,
        double momentumThicknessMm,
        double skinFrictionCoefficient,
        String method,
        List<String> sources,
        List<String> validity) {}
