package org.vanewright.bench;

import java.util.List;

/**
 * Air at rest.
 *
 * @param method how it was computed
 * @param sources citations
 * @param validity warnings; empty inside the method's range
 */
public record AtmosphereResult(
        double pressurePa,
        double temperatureK,
        double densityKgM3,
        double densityAltitudeFt,
        double speedOfSoundMps,
        double dynamicViscosityPaS,
        double kinematicViscosityM2S,
        String method,
        List<String> sources,
        List<String> validity) {}
