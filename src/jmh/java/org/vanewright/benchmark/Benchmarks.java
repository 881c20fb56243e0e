package org.vanewright.benchmark;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.Options;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Runs the benchmarks and prints a table. An argument is a regular expression for which ones; none means all. */
public final class Benchmarks {
    private Benchmarks() {}

    public static void main(String[] arguments) throws RunnerException {
        String which = arguments.length == 0 || arguments[0].isBlank() ? ".*" : arguments[0];
        Options options = new OptionsBuilder()
                .include(which)
                .mode(Mode.AverageTime)
                .timeUnit(TimeUnit.MICROSECONDS)
                .forks(1)
                .warmupIterations(3)
                .warmupTime(TimeValue.seconds(1))
                .measurementIterations(5)
                .measurementTime(TimeValue.seconds(1))
                .shouldFailOnError(true)
                .verbosity(VerboseMode.SILENT)
                .build();
        System.out.print(table(new Runner(options).run()));
    }

    static String table(Collection<RunResult> results) {
        List<RunResult> sorted = results.stream()
                .sorted(Comparator.comparing((RunResult r) -> name(r.getParams())))
                .toList();
        int width = sorted.stream()
                .mapToInt(r -> name(r.getParams()).length())
                .max()
                .orElse(9);
        String format = "%-" + width + "s  %14s  %12s  %14s%n";
        StringBuilder table = new StringBuilder("\n")
                .append(String.format(Locale.ROOT, format, "benchmark", "time, ms", "± 99.9 %", "per second"));
        for (RunResult run : sorted) {
            Result<?> micros = run.getPrimaryResult();
            table.append(String.format(
                    Locale.ROOT,
                    format,
                    name(run.getParams()),
                    String.format(Locale.ROOT, "%.4f", micros.getScore() / 1000),
                    String.format(Locale.ROOT, "%.4f", micros.getScoreError() / 1000),
                    String.format(Locale.ROOT, "%.1f", 1e6 / micros.getScore())));
        }
        return table.append('\n').toString();
    }

    /** Class, method and parameters, without the package. */
    private static String name(BenchmarkParams params) {
        String qualified = params.getBenchmark();
        String shortName = qualified.substring(qualified.lastIndexOf('.', qualified.lastIndexOf('.') - 1) + 1);
        String values = params.getParamsKeys().stream()
                .map(key -> key + "=" + params.getParam(key))
                .collect(Collectors.joining(", "));
        return values.isEmpty() ? shortName : shortName + " (" + values + ")";
    }
}
