package org.vanewright.engineering.printing;

import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * How a piece is filled and what it stands on.
 *
 * @param shellMm thickness of the solid shell, 0.2 to 10
 * @param infillFraction of the inside that is filled, 0 to 1
 * @param raftMm thickness of solid material that the raft amounts to, 0 to 5
 * @param raftMarginMm by which the raft reaches beyond the foot all round, 0 to 20
 * @param densityKgM3 of the material
 */
public record PrintSettings(
        double shellMm, double infillFraction, double raftMm, double raftMarginMm, double densityKgM3) {
    /** Three lines of a usual nozzle, a quarter filled, on a thin raft; common practice, no source. */
    public static final PrintSettings USUAL = new PrintSettings(1.2, 0.25, 0.6, 3, 1040);

    /** @throws InvalidInputException naming each value out of range */
    public PrintSettings {
        Checks checks = new Checks();
        checks.range("shellMm", shellMm, 0.2, 10, "mm");
        checks.range("infillFraction", infillFraction, 0, 1, "");
        checks.range("raftMm", raftMm, 0, 5, "mm");
        checks.range("raftMarginMm", raftMarginMm, 0, 20, "mm");
        checks.range("densityKgM3", densityKgM3, 100, 23_000, "kg/m³");
        checks.throwIfAny();
    }
}
