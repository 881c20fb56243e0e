package org.vanewright.engineering.drawing.sheet;

/**
 * Paper a club or a copy shop has. Sizes: ISO 216:2007 (A4, A3) and ANSI/ASME Y14.1 (letter is size A, tabloid size B;
 * 8.5 in by 11 in and 11 in by 17 in).
 */
public enum Paper {
    A4("A4", 210, 297),
    A3("A3", 297, 420),
    LETTER("US Letter", 215.9, 279.4),
    TABLOID("Tabloid", 279.4, 431.8),
    /** A plotter's roll; its width comes with the job. */
    ROLL("Roll", 0, 0);

    private final String label;
    private final SheetSize portrait;

    Paper(String label, double widthMm, double heightMm) {
        this.label = label;
        this.portrait = new SheetSize(widthMm, heightMm);
    }

    /** Its name as people say it. */
    public String label() {
        return label;
    }

    public boolean isRoll() {
        return this == ROLL;
    }

    /**
     * Its size standing upright.
     *
     * @throws IllegalStateException for a roll, which has no length
     */
    public SheetSize portrait() {
        if (isRoll()) {
            throw new IllegalStateException("a roll has no sheet size");
        }
        return portrait;
    }
}
