package org.vanewright.engineering.gauge;

import java.util.List;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;

/**
 * What a person may choose of a gauge. Defaults and bounds are common practice, no source.
 *
 * @param clearanceMm between skin and shell everywhere, so that the print slides on
 * @param gapMm that the shell may stand off further where the wing differs from the section it was cut for
 * @param placeMm that the slot may be off its distance along the skin at either end of the gauge's range
 * @param thicknessMm of the shell
 * @param widthMm along the span at least; more where pitch and unit ask for it
 * @param wrapMm that the hook reaches along the other side
 */
public record GaugeSettings(
        double clearanceMm, double gapMm, double placeMm, double thicknessMm, double widthMm, double wrapMm) {
    public static final GaugeSettings USUAL = new GaugeSettings(0.2, 0.3, 2, 3, 60, 30);

    /** Every value out of bounds, fields named as here. */
    public List<FieldProblem> problems() {
        Checks checks = new Checks();
        checks.range("clearanceMm", clearanceMm, 0, 2, "mm");
        checks.range("gapMm", gapMm, 0.05, 3, "mm");
        checks.range("placeMm", placeMm, 0.1, 5, "mm");
        checks.range("thicknessMm", thicknessMm, 1.2, 10, "mm");
        checks.range("widthMm", widthMm, 20, 200, "mm");
        checks.range("wrapMm", wrapMm, 10, 120, "mm");
        return checks.problems();
    }

    /** How far the shell may press in: the clearance is all there is. */
    double pressMm() {
        return Math.min(gapMm, clearanceMm);
    }
}
