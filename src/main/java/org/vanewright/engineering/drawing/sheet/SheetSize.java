package org.vanewright.engineering.drawing.sheet;

/** Size of a sheet as it lies before the reader. */
public record SheetSize(double widthMm, double heightMm) {
    public SheetSize turned() {
        return new SheetSize(heightMm, widthMm);
    }

    double areaMm2() {
        return widthMm * heightMm;
    }
}
