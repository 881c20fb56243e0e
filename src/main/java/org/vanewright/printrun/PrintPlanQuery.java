package org.vanewright.printrun;

import org.jspecify.annotations.Nullable;
import org.vanewright.device.PrintMaterial;
import org.vanewright.engineering.printing.PrintRate;
import org.vanewright.engineering.printing.PrintSettings;
import org.vanewright.engineering.printing.Spares;

/**
 * How the pieces of a layout are to be printed.
 *
 * @param spares beyond those that are fitted, of each kind of piece
 * @param shaped whether bases are printed to fit the skin under the middle of each row
 * @param bed of the machine
 * @param material class of it
 * @param settings how pieces are filled
 * @param rate how fast the machine prints
 * @param minutesPerPlate for warming up and taking off
 * @param watts the machine draws on average; absent leaves energy out
 */
public record PrintPlanQuery(
        Spares spares,
        boolean shaped,
        Bed bed,
        PrintMaterial material,
        PrintSettings settings,
        PrintRate rate,
        double minutesPerPlate,
        @Nullable Double watts) {
    /**
     * A printer's bed.
     *
     * @param widthMm from left to right, 50 to 1000
     * @param depthMm from front to back, 50 to 1000
     * @param spacingMm clear between pieces, 1 to 50
     */
    public record Bed(double widthMm, double depthMm, double spacingMm) {}
}
