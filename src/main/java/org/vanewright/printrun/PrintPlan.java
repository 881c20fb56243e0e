package org.vanewright.printrun;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.vanewright.device.DeviceDocument;
import org.vanewright.engineering.printing.PieceMaterial;
import org.vanewright.record.Revision;

/**
 * What has to be printed for a layout, and what it takes.
 *
 * @param batches one for each kind of piece
 * @param minutesPerPlate for warming up and taking off
 * @param watts drawn on average; absent leaves energy out
 */
public record PrintPlan(List<Batch> batches, double minutesPerPlate, @Nullable Double watts) {
    /** How the figures come about. */
    public static final String METHOD = "Pieces are the devices of the station table and the spares asked for. Material of a "
            + "piece is a solid shell (surface times its thickness, at most the whole solid), the filled share of the rest, "
            + "and the raft as a slab under the foot with its margin. Time is pieces times the machine’s own rate, and the "
            + "minutes asked for each plate. An estimate: supports, skirts, purging and travel are in it only as far as the "
            + "rate, read off a real print, has them.";

    public PrintPlan {
        batches = List.copyOf(batches);
    }

    /**
     * Pieces of one solid.
     *
     * @param device exact revision
     * @param undersideRadiusMm of the skin its base is shaped for; absent prints the design's own
     * @param rows that carry it, as the layout calls them
     * @param fitted on all wings together
     * @param spares beyond those
     * @param piecesPerPlate on each plate in turn
     * @param each material of one piece
     * @param printMinutes without the plates' own
     */
    public record Batch(
            Revision<DeviceDocument> device,
            @Nullable Double undersideRadiusMm,
            List<String> rows,
            int fitted,
            int spares,
            List<Integer> piecesPerPlate,
            PieceMaterial each,
            double printMinutes) {
        public Batch {
            rows = List.copyOf(rows);
            piecesPerPlate = List.copyOf(piecesPerPlate);
        }

        public int pieces() {
            return fitted + spares;
        }

        /** Everything laid down for it, rafts included. */
        public double materialG() {
            return pieces() * each.depositedG();
        }
    }

    public int pieces() {
        return batches.stream().mapToInt(Batch::pieces).sum();
    }

    public int plates() {
        return batches.stream().mapToInt(b -> b.piecesPerPlate().size()).sum();
    }

    public double minutes() {
        return sum(Batch::printMinutes) + plates() * minutesPerPlate;
    }

    public double materialG() {
        return sum(Batch::materialG);
    }

    /** Mass of what is fitted, without rafts and spares. */
    public double fittedG() {
        return sum(b -> b.fitted() * b.each().pieceG());
    }

    /** Energy from the mains in kWh; absent where no power was given. */
    public @Nullable Double energyKWh() {
        return watts == null ? null : (Double) (watts / 1000 * minutes() / 60);
    }

    private double sum(ToDoubleFunction<Batch> figure) {
        return batches.stream().mapToDouble(figure).sum();
    }
}
