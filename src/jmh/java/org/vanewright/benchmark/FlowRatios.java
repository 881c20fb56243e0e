package org.vanewright.benchmark;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.util.Statistics;

/** What the flow's times are to the library's and to each other, by least times and by medians. */
final class FlowRatios {
    private static final double[] PERCENTILES = {0, 50};
    private static final int ANGLES = 21;

    private final Map<String, Statistics> times;

    private FlowRatios(Map<String, Statistics> times) {
        this.times = times;
    }

    /** Lines of text; none where not all of them ran. */
    static String of(Collection<RunResult> results) {
        FlowRatios ratios = new FlowRatios(results.stream()
                .collect(Collectors.toMap(
                        r -> Benchmarks.name(r.getParams()),
                        r -> r.getPrimaryResult().getStatistics())));
        return ratios.times.containsKey("FlowBenchmark.polarOf21Angles")
                        && ratios.times.containsKey("FlowBenchmark.libraryFactorsAndSolves200")
                ? ratios.lines()
                : "";
    }

    private String lines() {
        StringBuilder lines = new StringBuilder();
        for (double percentile : PERCENTILES) {
            double one = time("oneAngle", percentile);
            double passes = ANGLES * time("onePassOfBothLayers", percentile);
            lines.append(String.format(
                    Locale.ROOT,
                    "By %s: one angle %.2f times the library's factorisation and solution (at most 3); polar of 21 angles"
                            + " %.2f times one angle and 21 passes (at most 1.5)%n",
                    percentile == 0 ? "least times" : "medians",
                    one / time("libraryFactorsAndSolves200", percentile),
                    time("polarOf21Angles", percentile) / (one + passes)));
        }
        return lines.append('\n').toString();
    }

    private double time(String benchmark, double percentile) {
        Statistics found = times.get("FlowBenchmark." + benchmark);
        return found == null ? Double.NaN : found.getPercentile(percentile);
    }
}
