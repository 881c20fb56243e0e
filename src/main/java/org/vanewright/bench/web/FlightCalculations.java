package org.vanewright.bench.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.bench.ComparisonCalculation;
import org.vanewright.bench.ComparisonRequest;
import org.vanewright.bench.ComparisonResult;
import org.vanewright.bench.GpsAirspeedCalculation;
import org.vanewright.bench.GpsAirspeedRequest;
import org.vanewright.bench.GpsAirspeedResult;
import org.vanewright.bench.RetentionCalculation;
import org.vanewright.bench.RetentionRequest;
import org.vanewright.bench.RetentionResult;
import org.vanewright.bench.SampleSizeCalculation;
import org.vanewright.bench.SampleSizeRequest;
import org.vanewright.bench.SampleSizeResult;
import org.vanewright.bench.StallReductionCalculation;
import org.vanewright.bench.StallReductionRequest;
import org.vanewright.bench.StallReductionResult;

/** Calculations with what was read in flight and seen after it. */
@RestController
@RequestMapping(
        path = "/api/v1/calculations",
        consumes = MediaType.APPLICATION_JSON_VALUE,
        produces = MediaType.APPLICATION_JSON_VALUE)
@Tag(name = Calculations.TAG)
class FlightCalculations {
    @PostMapping("/gps-airspeed")
    @Operation(
            summary = "True airspeed and wind from ground speeds",
            description = "Three or more straight legs at one airspeed, with their tracks or with their headings. The"
                    + " answer has the other of the two.")
    GpsAirspeedResult gpsAirspeed(@RequestBody GpsAirspeedRequest request) {
        return GpsAirspeedCalculation.run(request);
    }

    @PostMapping("/stall-reduction")
    @Operation(
            summary = "Stalls at the standard mass",
            description =
                    "Each at the standard mass and a load factor of 1, their mean and scatter, and the speed at an"
                            + " entry rate of 1 kt/s where rates vary enough for a slope.")
    StallReductionResult stallReduction(@RequestBody StallReductionRequest request) {
        return StallReductionCalculation.run(request);
    }

    @PostMapping("/comparison")
    @Operation(
            summary = "Two configurations by Welch's test",
            description = "Values flown independently, in any unit. No verdict: a difference with its interval.")
    ComparisonResult comparison(@RequestBody ComparisonRequest request) {
        return ComparisonCalculation.run(request);
    }

    @PostMapping("/sample-size")
    @Operation(
            summary = "How many repeats show a change",
            description = "Of each configuration, exactly by the non-central t distribution.")
    SampleSizeResult sampleSize(@RequestBody SampleSizeRequest request) {
        return SampleSizeCalculation.run(request);
    }

    @PostMapping("/retention")
    @Operation(
            summary = "How long devices stay on",
            description = "Product-limit curves of groups with their limits, and the log-rank test between them.")
    RetentionResult retention(@RequestBody RetentionRequest request) {
        return RetentionCalculation.run(request);
    }
}
