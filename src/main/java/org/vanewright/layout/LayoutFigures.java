package org.vanewright.layout;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.Summaries;

/** What placing the devices of published layouts comes to, for lists: worked out once for each revision. */
@Service
public class LayoutFigures {
    private static final Summaries.Kind<Figures> KIND = new Summaries.Kind<>("layout", 1, Figures.class);

    private final LayoutPlanner planner;
    private final Summaries summaries;

    LayoutFigures(LayoutPlanner planner, Summaries summaries) {
        this.planner = planner;
        this.summaries = summaries;
    }

    /**
     * Of one layout.
     *
     * @param airframeName what it is for
     * @param devices how many, both wings together
     */
    public record Figures(String airframeName, int devices) {}

    /** Of public revisions, in as many statements however many there are; those that cannot be placed are left out. */
    public Map<RevisionRef, Figures> of(List<Revision<LayoutDocument>> layouts) {
        return summaries.of(KIND, layouts.stream().map(Revision::ref).toList(), missing -> figures(layouts, missing));
    }

    private Map<RevisionRef, Figures> figures(List<Revision<LayoutDocument>> layouts, List<RevisionRef> wanted) {
        Map<RevisionRef, Revision<LayoutDocument>> byRef =
                layouts.stream().collect(Collectors.toMap(Revision::ref, Function.identity()));
        Map<RevisionRef, Figures> figures = new HashMap<>();
        planner.plans(wanted.stream()
                        .map(ref -> Objects.requireNonNull(byRef.get(ref)))
                        .toList())
                .forEach((ref, plan) -> figures.put(ref, figures(plan)));
        return figures;
    }

    private static Figures figures(LayoutPlan plan) {
        int devices = plan.surfaces().stream()
                .mapToInt(s -> s.placement().stations().size())
                .sum();
        return new Figures(plan.airframe().content().name(), devices);
    }
}
