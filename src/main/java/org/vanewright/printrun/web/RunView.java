package org.vanewright.printrun.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.vanewright.device.DeviceDocument;
import org.vanewright.engineering.inference.Interval;
import org.vanewright.engineering.solid.DeviceDesign.Vane;
import org.vanewright.printrun.DefectDocument;
import org.vanewright.printrun.OutcomeDocument;
import org.vanewright.printrun.PrintRunDocument;
import org.vanewright.printrun.RunResult;
import org.vanewright.record.Revision;

/**
 * What a run shows, in words with as many digits as they deserve.
 *
 * @param facts label and value
 * @param faults kinds that were found
 * @param dimensions measured against nominal
 * @param method how the figures come about
 */
public record RunView(List<Fact> facts, List<Fact> faults, List<Dimension> dimensions, String method) {
    static final String METHOD = "Time and material of a piece are those of the whole run shared among its pieces. A mean "
            + "stands with the standard deviation of the sample (n − 1) and a 95 % interval of the mean by Student’s t, "
            + "which takes the measured pieces as drawn at random from the run and its scatter as normal. Tolerance is "
            + "the contributor’s own.";

    /** A figure with its name. */
    public record Fact(String label, String value) {}

    /**
     * A dimension.
     *
     * @param tolerance how many are within it, in words; null where none was set
     */
    public record Dimension(
            String name, String nominal, String mean, String scatter, String interval, @Nullable String tolerance) {}

    static RunView of(PrintRunDocument run, @Nullable Revision<DeviceDocument> device) {
        Vane vane = device == null ? null : device.content().vane();
        RunResult result = RunResult.of(
                run, vane == null ? null : vane.heightMm(), vane == null ? null : vane.thicknessMm());
        List<Dimension> dimensions = new ArrayList<>();
        add(dimensions, "Height of the vane", result.height(), run.outcome().toleranceMm());
        add(dimensions, "Thickness of the vane", result.thickness(), run.outcome().toleranceMm());
        return new RunView(facts(run.outcome(), result), faults(run.outcome()), dimensions, METHOD);
    }

    private static List<Fact> facts(OutcomeDocument outcome, RunResult result) {
        List<Fact> facts = new ArrayList<>();
        if (outcome.pieces() != null) {
            facts.add(new Fact("Pieces", outcome.pieces() + " printed, " + result.usable() + " fit for use"));
        }
        if (outcome.minutes() != null && result.minutesPerPiece() != null) {
            facts.add(new Fact(
                    "Time",
                    format("%.0f min in all, %.1f min a piece", outcome.minutes(), result.minutesPerPiece())));
        }
        if (outcome.materialG() != null && result.gramsPerPiece() != null) {
            facts.add(new Fact(
                    "Material", format("%.1f g in all, %.2f g a piece", outcome.materialG(), result.gramsPerPiece())));
        }
        if (outcome.energyKWh() != null) {
            facts.add(new Fact("Energy", format("%.2f kWh", outcome.energyKWh())));
        }
        return facts;
    }

    private static List<Fact> faults(OutcomeDocument outcome) {
        return outcome.defects().stream()
                .filter(d -> d.kind() != null && d.count() != null && d.count() > 0)
                .map(d -> new Fact(Objects.requireNonNull(d.kind()).label(), pieces(d)))
                .toList();
    }

    private static String pieces(DefectDocument defect) {
        int count = Objects.requireNonNull(defect.count());
        return count == 1 ? "1 piece" : count + " pieces";
    }

    private static void add(
            List<Dimension> dimensions,
            String name,
            RunResult.@Nullable Measured measured,
            @Nullable Double toleranceMm) {
        if (measured == null) {
            return;
        }
        Double scatter = measured.standardDeviationMm();
        Interval interval = measured.meanIntervalMm();
        Integer outside = measured.outside();
        dimensions.add(new Dimension(
                name + ", " + measured.count() + (measured.count() == 1 ? " piece" : " pieces"),
                format("%.2f mm", measured.nominalMm()),
                format("%.2f mm (%+.2f)", measured.meanMm(), measured.deviationMm())
                        .replace('-', '\u2212'),
                scatter == null ? "–" : format("%.2f mm", scatter),
                interval == null ? "–" : format("%.2f to %.2f mm", interval.low(), interval.high()),
                outside == null || toleranceMm == null
                        ? null
                        : format("%d of %d within ±%.2f mm", measured.count() - outside, measured.count(), toleranceMm)));
    }

    private static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
