package org.vanewright.benchmark;

import java.util.List;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.vanewright.engineering.section.SectionSpec;
import org.vanewright.record.CanonicalJson;

/** Writing and hashing a document as large as an uploaded section of 200 points, and reading it back. */
@State(Scope.Benchmark)
public class CanonicalJsonBenchmark {
    private final CanonicalJson json = new CanonicalJson();
    private final SectionSpec section = new SectionSpec(null, null, loop(200), "two hundred points");
    private final String canonical = json.write(section);

    private static List<List<Double>> loop(int points) {
        return IntStream.range(0, points)
                .mapToObj(i -> 2 * Math.PI * i / points)
                .map(angle -> List.of(0.5 + 0.5 * Math.cos(angle), 0.06 * Math.sin(angle)))
                .toList();
    }

    @Benchmark
    public String writeAndHash() {
        return json.sha256(json.write(section));
    }

    @Benchmark
    public SectionSpec read() {
        return json.read(canonical, SectionSpec.class);
    }
}
