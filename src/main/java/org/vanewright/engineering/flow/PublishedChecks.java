package org.vanewright.engineering.flow;

import java.util.List;
import java.util.stream.Stream;

/** Everything of this package that is set beside published values, the bad figures too. */
public final class PublishedChecks {
    private static final List<PublishedCheck> ALL = Stream.of(
                    ShapeChecks.list(),
                    PotentialChecks.list(),
                    ClosureChecks.list(),
                    LaminarChecks.list(),
                    TurbulentChecks.list(),
                    StratfordChecks.list(),
                    SectionChecks.list())
            .flatMap(List::stream)
            .toList();

    private PublishedChecks() {}

    /** In the order of the groups; working out all takes a few seconds. */
    public static List<PublishedCheck> all() {
        return ALL;
    }
}
