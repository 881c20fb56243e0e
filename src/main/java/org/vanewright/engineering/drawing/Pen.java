package org.vanewright.engineering.drawing;

/** How a line is drawn. Widths follow the ISO 128 series; dash and gap lengths in mm. */
public enum Pen {
    FINE(0.13),
    THIN(0.25),
    THICK(0.5),
    /** Short dashes: hidden edges, folds. */
    DASHED(0.25, 3, 1.5),
    /** Long-short: centre lines. */
    CENTRE(0.18, 8, 1.5, 1, 1.5);

    private final double widthMm;
    private final double[] dashMm;

    Pen(double widthMm, double... dashMm) {
        this.widthMm = widthMm;
        this.dashMm = dashMm;
    }

    public double widthMm() {
        return widthMm;
    }

    /** Alternating dash and gap lengths in mm; empty for a solid line. */
    public double[] dashMm() {
        return dashMm.clone();
    }
}
