package org.vanewright.engineering.drawing.sheet;

/** Size of a sheet as it lies before the reader. */
public record SheetSize(double widthMm, double heightMm) {
    /** The same sheet turned by a quarter. */
    @SuppressWarnings("ArgumentSelectionDefectChecker")
    public SheetSize turned() {
        return new SheetSize(heightMm, widthMm);
    }

    double areaMm2() {
        return widthMm * heightMm;
    }
}
