package org.vanewright.bench;

import java.util.List;

/**
 * How many repeats it takes.
 *
 * @param perGroup values of each configuration
 * @param normalApproximation the same by the normal distribution, not rounded
 * @param method how it was computed
 * @param sources citations
 * @param validity warnings
 */
public record SampleSizeResult(
        int perGroup, double normalApproximation, String method, List<String> sources, List<String> validity) {}
