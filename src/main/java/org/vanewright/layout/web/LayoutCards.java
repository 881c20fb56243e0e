package org.vanewright.layout.web;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import org.vanewright.layout.FlightEvidence;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.platform.Thumbnails;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.Summaries;

/** Layouts as lists show them, in as many statements however many there are. */
@Component
class LayoutCards {
    private static final Summaries.Kind<Figures> FIGURES = new Summaries.Kind<>("layout", 1, Figures.class);

    private final LayoutPlanner planner;
    private final Summaries summaries;
    private final List<FlightEvidence> evidence;

    LayoutCards(LayoutPlanner planner, Summaries summaries, List<FlightEvidence> evidence) {
        this.planner = planner;
        this.summaries = summaries;
        this.evidence = List.copyOf(evidence);
    }

    /**
     * A layout in the list.
     *
     * @param airframeName what it is for
     * @param devices how many, both wings together
     * @param picture address of its first surface in plan, without lettering
     * @param results how many results of flights there are
     */
    public record Card(
            Revision<LayoutDocument> revision, String airframeName, int devices, String picture, int results) {}

    /** What placing its devices comes to; none where they cannot be placed. */
    record Figures(String airframeName, int devices) {}

    List<Card> of(List<Revision<LayoutDocument>> layouts) {
        Map<RevisionRef, Figures> figures = summaries.of(
                FIGURES, layouts.stream().map(Revision::ref).toList(), missing -> figures(layouts, missing));
        Map<String, Integer> results = new HashMap<>();
        List<String> slugs = layouts.stream().map(Revision::slug).toList();
        evidence.forEach(e -> e.of(slugs).forEach((slug, found) -> results.merge(slug, found.size(), Integer::sum)));
        return layouts.stream()
                .map(r -> {
                    Figures known = figures.getOrDefault(r.ref(), new Figures("an airframe it does not fit", 0));
                    return new Card(
                            r,
                            known.airframeName(),
                            known.devices(),
                            Thumbnails.address("layouts", r),
                            results.getOrDefault(r.slug(), 0));
                })
                .toList();
    }

    private Map<RevisionRef, Figures> figures(List<Revision<LayoutDocument>> layouts, List<RevisionRef> wanted) {
        Map<RevisionRef, Revision<LayoutDocument>> byRef =
                layouts.stream().collect(Collectors.toMap(Revision::ref, Function.identity()));
        Map<RevisionRef, Figures> figures = new HashMap<>();
        planner.plans(wanted.stream()
                        .map(ref -> Objects.requireNonNull(byRef.get(ref)))
                        .toList())
                .forEach((ref, plan) -> figures.put(
                        ref,
                        new Figures(
                                plan.airframe().content().name(),
                                plan.surfaces().stream()
                                        .mapToInt(s -> s.placement().stations().size())
                                        .sum())));
        return figures;
    }
}
