package org.vanewright.layout.web;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import org.vanewright.layout.FlightEvidence;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutFigures;
import org.vanewright.platform.RevisionDrawings;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Layouts as lists show them, in as many statements however many there are. */
@Component
class LayoutCards {
    private static final LayoutFigures.Figures UNPLACED =
            new LayoutFigures.Figures("an airframe that does not carry it", 0);

    private final LayoutFigures figures;
    private final List<FlightEvidence> evidence;

    LayoutCards(LayoutFigures figures, List<FlightEvidence> evidence) {
        this.figures = figures;
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

    List<Card> of(List<Revision<LayoutDocument>> layouts) {
        Map<RevisionRef, LayoutFigures.Figures> known = figures.of(layouts);
        Map<String, Integer> results = new HashMap<>();
        List<String> slugs = layouts.stream().map(Revision::slug).toList();
        evidence.forEach(e -> e.of(slugs).forEach((slug, found) -> results.merge(slug, found.size(), Integer::sum)));
        return layouts.stream()
                .map(r -> {
                    LayoutFigures.Figures own = known.getOrDefault(r.ref(), UNPLACED);
                    return new Card(
                            r,
                            own.airframeName(),
                            own.devices(),
                            RevisionDrawings.thumbnail("layouts", r),
                            results.getOrDefault(r.slug(), 0));
                })
                .toList();
    }
}
