package org.vanewright.method;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.util.function.SingletonSupplier;
import org.vanewright.engineering.flow.PublishedChecks;

/** Every published figure with what is computed here, worked out once, when somebody first asks. */
@Service
public class ComputedChecks {
    private final Supplier<Map<String, List<ComputedCheck>>> groups = SingletonSupplier.of(ComputedChecks::compute);

    /** By group, in the order of the groups. */
    public Map<String, List<ComputedCheck>> byGroup() {
        return groups.get();
    }

    private static Map<String, List<ComputedCheck>> compute() {
        return Stream.of(
                        AirChecks.list(),
                        PublishedChecks.all(),
                        FlightChecks.list(),
                        StatisticsChecks.list(),
                        BondChecks.list())
                .flatMap(List::stream)
                .map(check -> new ComputedCheck(check, check.computed().getAsDouble()))
                .collect(Collectors.groupingBy(c -> c.check().group(), LinkedHashMap::new, Collectors.toList()));
    }
}
