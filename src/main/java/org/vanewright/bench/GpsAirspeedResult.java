package org.vanewright.bench;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Airspeed and wind.
 *
 * @param trueAirspeedKt through the air
 * @param windSpeedKt over the ground
 * @param windFromDeg where it blows from, true
 * @param headingsDeg of each leg; absent where headings were given
 * @param tracksDeg of each leg; absent where tracks were given
 * @param residualKt scatter of a leg about the fit, √(Σ r²/(n − 3)); null with three legs
 * @param method how it was computed
 * @param sources citations
 * @param validity warnings
 */
public record GpsAirspeedResult(
        double trueAirspeedKt,
        double windSpeedKt,
        double windFromDeg,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable List<Double> headingsDeg,
        @JsonInclude(JsonInclude.Include.NON_NULL) @Nullable List<Double> tracksDeg,
        @Nullable Double residualKt,
        String method,
        List<String> sources,
        List<String> validity) {}
