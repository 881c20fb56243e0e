package org.vanewright.benchmark.load;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.HdrHistogram.Histogram;
import org.vanewright.load.CatalogueSize;

/** The results as a table in Markdown, with what they were measured on. */
final class LoadTable {
    private LoadTable() {}

    /**
     * @param spent on each kind of request, by the label's beginning
     */
    static String of(Recorder recorder, Map<String, LoadBenchmark.Spent> spent) {
        double empty = recorder.of(Scenarios.EMPTY).millis(95);
        StringBuilder table = new StringBuilder(
                "| request | per second | p50, ms | p95, ms | p99, ms | p95 over the empty page's | kB an answer | processor of the service, ms | failed |\n"
                        + "| --- | --- | --- | --- | --- | --- | --- | --- | --- |\n");
        Map<String, Recorder.Noted> rows =
                new TreeMap<>(Comparator.comparing(LoadTable::place).thenComparing(l -> l));
        recorder.all().forEach((label, noted) -> {
            rows.put(label, noted);
            String group = group(label);
            if (!group.equals(label) && !List.of("other", "write", "sign-in").contains(group)) {
                Recorder.Noted all = rows.computeIfAbsent(group, g -> new Recorder.Noted());
                all.micros.add(noted.micros);
                all.bytes.addAndGet(noted.bytes.get());
                all.failures.addAndGet(noted.failures.get());
            }
        });
        Map<String, Long> answers = new TreeMap<>();
        recorder.all().forEach((label, noted) -> answers.merge(group(label), noted.micros.getTotalCount(), Long::sum));
        rows.forEach((label, noted) -> {
            if (noted.micros.getTotalCount() > 0) {
                LoadBenchmark.Spent own =
                        spent.getOrDefault(group(label), new LoadBenchmark.Spent(Duration.ofSeconds(1), 0));
                table.append(row(label, noted, empty, own, answers.getOrDefault(group(label), 1L)));
            }
        });
        return table.toString();
    }

    private static String row(
            String label, Recorder.Noted noted, double empty, LoadBenchmark.Spent spent, long answers) {
        Histogram micros = noted.micros;
        return String.format(
                Locale.ROOT,
                "| %s | %.1f | %.1f | %.1f | %.1f | %.1f | %.1f | %s | %d |%n",
                label.contains(": ") ? "– " + label.replaceFirst("^.*?: ", "") + " (" + group(label) + ")" : label,
                micros.getTotalCount() * 1000.0 / spent.time().toMillis(),
                noted.millis(50),
                noted.millis(95),
                noted.millis(99),
                noted.millis(95) / empty,
                noted.bytes.get() / 1024.0 / micros.getTotalCount(),
                label.contains(": ")
                        ? ""
                        : String.format(Locale.ROOT, "%.1f", (double) spent.processorMillis() / answers),
                noted.failures.get());
    }

    static String group(String label) {
        return label.replaceFirst(": .*$", "");
    }

    private static int place(String label) {
        return List.of(
                        Scenarios.EMPTY,
                        "browse",
                        "search",
                        "show",
                        "other",
                        "template, cold",
                        "template, warm",
                        "drawing, cold",
                        "drawing, warm",
                        "API read",
                        "write")
                .indexOf(group(label));
    }

    /** Machine, versions, date and sizes in a sentence or two. */
    static String circumstances(LoadDatabase database, String version, Settings settings) {
        CatalogueSize size = settings.size();
        return String.format(
                Locale.ROOT,
                "%s; %s; service with a heap of %d MB, JDK %s; %d cores of %s, %d GB, load average %s before; %s."
                        + " %d layouts, %d airframes, %d devices, %d campaigns with %d test points, %d retention records,"
                        + " %d people. %d clients on the same machine in a closed loop, each kind of request warmed up for"
                        + " %d s and measured for %d s, %d times in turn.",
                version,
                database.isPostgres() ? "every commit on disk" : "in a file",
                settings.heapMb(),
                Runtime.version(),
                Runtime.getRuntime().availableProcessors(),
                fact("/proc/cpuinfo", "model name").replaceAll("\\s+", " "),
                Math.round(Double.parseDouble(fact("/proc/meminfo", "MemTotal").replaceAll("[^0-9]", "")) / 1048576),
                first("/proc/loadavg").replaceAll("^(\\S+ \\S+ \\S+).*", "$1"),
                LocalDateTime.now().format(DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT)),
                size.layouts(),
                size.airframes(),
                size.devices(),
                size.campaigns(),
                size.points(),
                size.retentionRecords(),
                size.people(),
                settings.clients(),
                settings.warmUp().toSeconds(),
                settings.measured().toSeconds(),
                settings.rounds());
    }

    private static String first(String file) {
        try {
            return Files.readAllLines(Path.of(file)).get(0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String fact(String file, String name) {
        try {
            return Files.readAllLines(Path.of(file)).stream()
                    .filter(line -> line.startsWith(name))
                    .map(line -> line.replaceFirst("^[^:]*:\\s*", ""))
                    .findFirst()
                    .orElse("0");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
