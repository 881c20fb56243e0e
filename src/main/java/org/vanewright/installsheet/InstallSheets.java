package org.vanewright.installsheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.adhesive.AdhesiveDocument;
import org.vanewright.device.DeviceSolids;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.layout.StationTolerance;
import org.vanewright.printrun.PrintRunDocument;
import org.vanewright.record.Revision;

/** Gathers what an install sheet says. */
@Service
public class InstallSheets {
    /** Of every row and wing: enough to see a trend along the span, few enough to be done. */
    static final int SAMPLE = 5;

    private final LayoutPlanner planner;
    private final DeviceSolids solids;

    InstallSheets(LayoutPlanner planner, DeviceSolids solids) {
        this.planner = planner;
        this.solids = solids;
    }

    /** @throws InvalidInputException field {@code side} where the layout has nothing on that wing */
    public InstallFacts of(
            Revision<LayoutDocument> layout,
            @Nullable Revision<AdhesiveDocument> adhesive,
            @Nullable Revision<PrintRunDocument> run,
            @Nullable Wing wing) {
        LayoutPlan plan = planner.plan(layout.content());
        List<StationTolerance> sample = sample(StationTolerance.of(plan).stream()
                .filter(s -> wing == null || s.wing() == wing)
                .toList());
        if (sample.isEmpty()) {
            throw new InvalidInputException(
                    new FieldProblem("side", String.valueOf(wing), "the other wing: this one carries no row"));
        }
        return new InstallFacts(layout, plan, adhesive, run, wing, sample, SetMass.of(plan, solids));
    }

    /** First, last and some evenly between of every row and wing. */
    private static List<StationTolerance> sample(List<StationTolerance> all) {
        Map<String, List<StationTolerance>> groups = all.stream()
                .collect(Collectors.groupingBy(
                        s -> String.format(Locale.ROOT, "%03d %s", s.row(), s.wing()),
                        TreeMap::new,
                        Collectors.toList()));
        List<StationTolerance> chosen = new ArrayList<>();
        for (List<StationTolerance> group : groups.values()) {
            Set<Integer> indices = new LinkedHashSet<>();
            for (int i = 0; i < SAMPLE; i++) {
                indices.add((int) Math.round((group.size() - 1) * i / (double) (SAMPLE - 1)));
            }
            indices.forEach(i -> chosen.add(group.get(i)));
        }
        return chosen;
    }
}
