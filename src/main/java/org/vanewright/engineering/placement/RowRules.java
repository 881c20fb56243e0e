package org.vanewright.engineering.placement;

import java.util.List;
import java.util.Locale;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.wing.WingShape;

/** Bounds on a row that hold before anything is placed. */
public final class RowRules {
    /** Units per row and wing; keeps hostile input from asking for millions. */
    static final int MAX_UNITS = 500;

    private static final double MAX_ANGLE_DEG = 45;
    private static final double MAX_PITCH_MM = 5_000;

    private RowRules() {}

    /** Every problem of one row, fields named as in {@link RowPlan}. */
    public static List<FieldProblem> check(RowPlan row, WingShape wing) {
        Checks checks = new Checks();
        double inner = wing.innerStationMm();
        double outer = wing.outerStationMm();
        boolean fromKnown = checks.range("fromMm", row.fromMm(), inner, outer, "mm");
        boolean toKnown = checks.range("toMm", row.toMm(), inner, outer, "mm");
        boolean spanKnown = fromKnown && toKnown;
        if (spanKnown) {
            checks.require(row.toMm() >= row.fromMm(), "toMm", row.toMm(), "not less than fromMm");
        }
        checkPosition(row.position(), checks);
        checkAngle(row, checks);
        boolean pitchKnown = checks.range("pitchMm", row.pitchMm(), 1, MAX_PITCH_MM, "mm");
        if (pitchKnown && spanKnown) {
            checkSpacing(row, checks);
        }
        return checks.problems();
    }

    private static void checkPosition(ChordPosition position, Checks checks) {
        if (position instanceof ChordPosition.FractionOfChord fraction) {
            checks.range("chordFraction", fraction.xOverC(), 0, 1, "");
        } else if (position instanceof ChordPosition.DistanceAlongSkin distance) {
            checks.range("arcDistanceMm", distance.distanceMm(), 0, 10_000, "mm");
        }
    }

    private static void checkAngle(RowPlan row, Checks checks) {
        if (row.footprint().pairOnOneBase()) {
            checks.require(
                    row.arrangement().paired(),
                    "arrangement",
                    row.arrangement(),
                    "a counter-rotating arrangement, because this device holds a pair");
        } else if (row.arrangement().paired()) {
            checks.range("angleDeg", row.angleDeg(), 0, MAX_ANGLE_DEG, "°");
        } else {
            checks.range("angleDeg", row.angleDeg(), -MAX_ANGLE_DEG, MAX_ANGLE_DEG, "°");
        }
    }

    private static void checkSpacing(RowPlan row, Checks checks) {
        double units = Math.floor((row.toMm() - row.fromMm()) / row.pitchMm()) + 1;
        checks.require(
                units <= MAX_UNITS, "pitchMm", row.pitchMm(), "large enough for at most " + MAX_UNITS + " units");
        double width = 2 * row.footprint().halfSpanMm(row.twoDevicesPerUnit() ? row.angleDeg() : rowAngle(row));
        double unitWidth = width;
        if (row.twoDevicesPerUnit()) {
            boolean gapOk = checks.range("pairGapMm", row.pairGapMm(), 0, MAX_PITCH_MM, "mm")
                    && checks.require(
                            row.pairGapMm() >= width,
                            "pairGapMm",
                            row.pairGapMm(),
                            "at least " + millimetres(width) + ", or the two bases overlap");
            if (!gapOk) {
                return;
            }
            unitWidth = row.pairGapMm() + width;
        }
        checks.require(
                units <= 1 || row.pitchMm() >= unitWidth,
                "pitchMm",
                row.pitchMm(),
                "at least " + millimetres(unitWidth) + ", or neighbouring bases overlap");
    }

    private static double rowAngle(RowPlan row) {
        return row.footprint().pairOnOneBase() ? 0 : row.angleDeg();
    }

    /** Rounded up, so that the number shown is itself allowed. */
    private static String millimetres(double mm) {
        return String.format(Locale.ROOT, "%.1f mm", Math.ceil(mm * 10 - 1e-9) / 10);
    }
}
