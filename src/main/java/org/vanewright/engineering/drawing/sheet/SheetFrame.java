package org.vanewright.engineering.drawing.sheet;

import org.vanewright.engineering.drawing.Bounds;

/**
 * Where things go on a tiled sheet: header, a band on each side that names the neighbour, the drawing, footer.
 *
 * @param footerLines number of footer lines
 */
record SheetFrame(SheetSize sheet, double marginMm, int footerLines) {
    static final double HEADER_MM = 9;
    static final double BAND_MM = 5;
    static final double FOOTER_LINE_MM = 3.4;

    /** The part of the sheet a printer reaches. */
    Bounds printable() {
        return new Bounds(marginMm, marginMm, sheet.widthMm() - marginMm, sheet.heightMm() - marginMm);
    }

    /** The part that shows the drawing. */
    Bounds drawing() {
        Bounds all = printable();
        return new Bounds(
                all.minXMm() + BAND_MM,
                all.minYMm() + footerLines * FOOTER_LINE_MM + BAND_MM,
                all.maxXMm() - BAND_MM,
                all.maxYMm() - HEADER_MM - BAND_MM);
    }

    SheetFrame turned() {
        return new SheetFrame(sheet.turned(), marginMm, footerLines);
    }

    /** Sheet length beyond the drawing, left and right together. */
    double widthBesideDrawingMm() {
        return 2 * (marginMm + BAND_MM);
    }

    /** Sheet height beyond the drawing, above and below together. */
    double heightBesideDrawingMm() {
        return 2 * (marginMm + BAND_MM) + HEADER_MM + footerLines * FOOTER_LINE_MM;
    }
}
