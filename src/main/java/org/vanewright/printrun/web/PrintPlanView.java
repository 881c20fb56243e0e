package org.vanewright.printrun.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.vanewright.device.DeviceDocument;
import org.vanewright.printrun.PrintPlan;
import org.vanewright.record.Revision;

/**
 * A print plan in words with as many digits as they deserve.
 *
 * @param totals label and value
 * @param batches a line for each kind of piece
 */
public record PrintPlanView(List<RunView.Fact> totals, List<BatchView> batches) {
    /** As many as the page of one device's plates draws. */
    private static final int MOST_ON_PLATES = 500;

    /**
     * Pieces of one solid.
     *
     * @param underside in words
     * @param undersideRadiusMm for addresses; null for the design's own
     * @param platesOffered whether the page of plates takes so many pieces
     */
    public record BatchView(
            Revision<DeviceDocument> device,
            String underside,
            @Nullable String undersideRadiusMm,
            String rows,
            int fitted,
            int spares,
            int pieces,
            boolean platesOffered,
            String plates,
            String each,
            String material,
            String time) {}

    static PrintPlanView of(PrintPlan plan) {
        List<RunView.Fact> totals = new ArrayList<>();
        totals.add(new RunView.Fact(
                "Pieces", plan.pieces() + " on " + plan.plates() + (plan.plates() == 1 ? " plate" : " plates")));
        totals.add(new RunView.Fact("Time", hours(plan.minutes())));
        totals.add(new RunView.Fact("Material", grams(plan.materialG()) + ", rafts and spares included"));
        totals.add(new RunView.Fact("Mass of what is fitted", grams(plan.fittedG()) + ", without tape"));
        Double energy = plan.energyKWh();
        if (energy != null) {
            totals.add(new RunView.Fact("Energy", String.format(Locale.ROOT, "%.1f kWh", energy)));
        }
        return new PrintPlanView(
                totals, plan.batches().stream().map(PrintPlanView::batch).toList());
    }

    private static BatchView batch(PrintPlan.Batch b) {
        Double radius = b.undersideRadiusMm();
        return new BatchView(
                b.device(),
                radius == null
                        ? "as designed"
                        : String.format(Locale.ROOT, "shaped to a radius of %.0f mm", radius),
                radius == null ? null : String.format(Locale.ROOT, "%.0f", radius),
                String.join(", ", b.rows()),
                b.fitted(),
                b.spares(),
                b.pieces(),
                b.pieces() <= MOST_ON_PLATES,
                b.piecesPerPlate().stream().map(String::valueOf).collect(Collectors.joining(" + ")),
                String.format(
                        Locale.ROOT,
                        "%.2f g, of it %.2f g raft",
                        b.each().depositedG(),
                        b.each().depositedG() - b.each().pieceG()),
                grams(b.materialG()),
                hours(b.printMinutes()));
    }

    static String grams(double grams) {
        return String.format(Locale.ROOT, grams < 100 ? "%.1f g" : "%.0f g", grams);
    }

    static String hours(double minutes) {
        long whole = Math.round(minutes);
        return whole < 60 ? whole + " min" : whole / 60 + " h " + whole % 60 + " min";
    }
}
