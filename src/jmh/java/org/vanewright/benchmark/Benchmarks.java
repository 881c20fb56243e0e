package org.vanewright.benchmark;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;
import org.openjdk.jmh.util.Statistics;

/**
 * Runs the benchmarks and prints a table of least times, medians and quartiles, which a busy machine moves less than means,
 * and what the flow's times are to each other. An argument is a regular expression for which ones; none means all.
 */
public final class Benchmarks {
    private Benchmarks() {}

    public static void main(String[] arguments) throws RunnerException, IOException, InterruptedException {
        String which = arguments.length == 0 || arguments[0].isBlank() ? ".*" : arguments[0];
        if ("StartAndMemory".matches(which)) {
            System.out.print(StartAndMemory.table(Path.of("")));
        }
        if (!which.equals("StartAndMemory")) {
            measure(which);
        }
    }

    private static void measure(String which) throws RunnerException {
        Options options = new OptionsBuilder()
                .include(which)
                .mode(Mode.SampleTime)
                .timeUnit(TimeUnit.MICROSECONDS)
                .forks(1)
                .warmupIterations(3)
                .warmupTime(TimeValue.seconds(1))
                .measurementIterations(5)
                .measurementTime(TimeValue.seconds(1))
                .shouldFailOnError(true)
                .verbosity(VerboseMode.SILENT)
                .build();
        Collection<RunResult> results = new Runner(options).run();
        System.out.print(table(results));
        System.out.print(FlowRatios.of(results));
    }

    static String table(Collection<RunResult> results) {
        List<RunResult> sorted = results.stream()
                .sorted(Comparator.comparing((RunResult r) -> name(r.getParams())))
                .toList();
        int width = sorted.stream()
                .mapToInt(r -> name(r.getParams()).length())
                .max()
                .orElse(9);
        String format = "%-" + width + "s  %12s  %12s  %12s  %12s%n";
        StringBuilder table = new StringBuilder("\n")
                .append(String.format(
                        Locale.ROOT, format, "benchmark", "least, ms", "quartile, ms", "median, ms", "quartile, ms"));
        for (RunResult run : sorted) {
            Statistics micros = run.getPrimaryResult().getStatistics();
            table.append(String.format(
                    Locale.ROOT,
                    format,
                    name(run.getParams()),
                    millis(micros, 0),
                    millis(micros, 25),
                    millis(micros, 50),
                    millis(micros, 75)));
        }
        return table.append('\n').toString();
    }

    private static String millis(Statistics micros, double percentile) {
        return String.format(Locale.ROOT, "%.4f", micros.getPercentile(percentile) / 1000);
    }

    /** Class, method and parameters, without the package. */
    static String name(BenchmarkParams params) {
        String qualified = params.getBenchmark();
        String shortName = qualified.substring(qualified.lastIndexOf('.', qualified.lastIndexOf('.') - 1) + 1);
        String values = params.getParamsKeys().stream()
                .map(key -> key + "=" + params.getParam(key))
                .collect(Collectors.joining(", "));
        return values.isEmpty() ? shortName : shortName + " (" + values + ")";
    }
}
