package org.vanewright.printrun.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceSolids;
import org.vanewright.engineering.printing.PieceMaterial;
import org.vanewright.engineering.printing.PrintRate;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.RowDocument;
import org.vanewright.printrun.OutcomeDocument;
import org.vanewright.printrun.PrintPlanQuery;
import org.vanewright.printrun.PrintRunDocument;
import org.vanewright.printrun.PrintRunService;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Rates that published runs show, to start a plan from. */
@Component
class RunRates {
    private static final int LOOKED_AT = 50;
    private static final int OFFERED = 8;

    private final PrintRunService runs;
    private final DeviceSolids solids;

    RunRates(PrintRunService runs, DeviceSolids solids) {
        this.runs = runs;
        this.solids = solids;
    }

    /**
     * A rate read off a run.
     *
     * @param words what it is
     * @param kind for the address of a plan
     * @param value for the address of a plan
     * @param samePiece whether the run printed a device of this layout
     */
    public record RunRate(
            Revision<PrintRunDocument> run, String words, String kind, String value, boolean samePiece) {}

    /** Rates of the newest runs with a time; those of this layout's own devices first. */
    List<RunRate> of(LayoutDocument layout, PrintPlanQuery query) {
        Set<String> own = layout.rows().stream()
                .map(RowDocument::device)
                .flatMap(Stream::ofNullable)
                .map(RevisionRef::slug)
                .collect(Collectors.toSet());
        List<RunRate> same = new ArrayList<>();
        List<RunRate> others = new ArrayList<>();
        for (Revision<PrintRunDocument> run : runs.list(null, LOOKED_AT).items()) {
            OutcomeDocument outcome = run.content().outcome();
            if (outcome.minutes() != null && outcome.pieces() != null) {
                boolean samePiece = own.contains(
                        Objects.requireNonNull(run.content().device()).slug());
                runs.device(run.content())
                        .map(device -> rate(run, device, query, samePiece))
                        .ifPresent((samePiece ? same : others)::add);
            }
        }
        same.addAll(others);
        return same.stream().limit(OFFERED).toList();
    }

    private RunRate rate(
            Revision<PrintRunDocument> run, Revision<DeviceDocument> device, PrintPlanQuery query, boolean samePiece) {
        double minutes = Objects.requireNonNull(run.content().outcome().minutes());
        int pieces = Objects.requireNonNull(run.content().outcome().pieces());
        if (samePiece) {
            String words = String.format(Locale.ROOT, "%.1f min a piece", minutes / pieces);
            return new RunRate(
                    run,
                    words,
                    PrintRate.Kind.MINUTES_PER_PIECE.name(),
                    PrintPlanForm.rateValue(minutes / pieces),
                    true);
        }
        PieceMaterial material =
                PieceMaterial.of(solids.exact(device.content().design()), query.settings());
        double rate = PrintRate.cm3PerHour(minutes, pieces, material.depositedMm3());
        return new RunRate(
                run,
                String.format(Locale.ROOT, "%.1f cm³ an hour, by the settings above", rate),
                PrintRate.Kind.CM3_PER_HOUR.name(),
                PrintPlanForm.rateValue(rate),
                false);
    }
}
