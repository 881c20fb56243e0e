package org.vanewright.bench;

import java.util.List;

/**
 * The airspeeds that belong together.
 *
 * @param method how they were computed
 * @param sources citations
 * @param validity warnings; empty inside the method's range
 */
public record AirspeedResult(
        double impactPressurePa,
        double calibratedAirspeedKt,
        double equivalentAirspeedKt,
        double trueAirspeedKt,
        double mach,
        String method,
        List<String> sources,
        List<String> validity) {}
