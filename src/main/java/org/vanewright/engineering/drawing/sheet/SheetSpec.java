package org.vanewright.engineering.drawing.sheet;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.InvalidInputException;

/**
 * How a drawing goes onto paper.
 *
 * @param paper kind of sheet or roll
 * @param rollWidthMm width of the roll, 250 to 2,000 mm; needed for {@link Paper#ROLL}, else ignored
 * @param marginMm left free at every edge of a sheet, 3 to 25 mm
 * @param overlapMm width of the strip two neighbouring sheets share, 6 to 50 mm
 * @param headerLine what the sheets are, on every sheet
 * @param footerLines which revision they show, on every sheet; at most 4 lines, each shortened to the width of the
 *     sheet (about 130 characters on A4 upright)
 * @param cautions paragraphs, on the first sheet; at most 20
 * @param created recorded in the file
 */
public record SheetSpec(
        Paper paper,
        @Nullable Double rollWidthMm,
        double marginMm,
        double overlapMm,
        String headerLine,
        List<String> footerLines,
        List<String> cautions,
        Instant created) {
    public static final double DEFAULT_MARGIN_MM = 10;
    public static final double DEFAULT_OVERLAP_MM = 10;

    /** @throws InvalidInputException naming every value outside its range */
    public SheetSpec {
        footerLines = List.copyOf(footerLines);
        cautions = List.copyOf(cautions);
        Checks checks = new Checks();
        if (paper.isRoll()) {
            checks.range("rollWidthMm", rollWidthMm, 250, 2000, "mm");
        }
        checks.range("marginMm", marginMm, 3, 25, "mm");
        checks.range("overlapMm", overlapMm, 6, 50, "mm");
        checks.text("headerLine", headerLine, 200);
        checks.require(footerLines.size() <= 4, "footerLines", footerLines.size(), "at most 4 lines");
        for (int i = 0; i < footerLines.size(); i++) {
            checks.text("footerLines[" + i + "]", footerLines.get(i), 300);
        }
        checks.require(cautions.size() <= 20, "cautions", cautions.size(), "at most 20 paragraphs");
        for (int i = 0; i < cautions.size(); i++) {
            checks.text("cautions[" + i + "]", cautions.get(i), 1000);
        }
        checks.throwIfAny();
    }

    /** With the usual margin and overlap. */
    public static SheetSpec of(
            Paper paper,
            @Nullable Double rollWidthMm,
            String headerLine,
            List<String> footerLines,
            List<String> cautions,
            Instant created) {
        return new SheetSpec(
                paper, rollWidthMm, DEFAULT_MARGIN_MM, DEFAULT_OVERLAP_MM, headerLine, footerLines, cautions, created);
    }

    double requiredRollWidthMm() {
        if (rollWidthMm == null) {
            throw new IllegalStateException("checked on creation for a roll");
        }
        return rollWidthMm;
    }
}
