package org.vanewright.engineering.drawing.sheet;

/** Edge of a sheet, seen from its reader. */
public enum Edge {
    LEFT(0, -1),
    ABOVE(-1, 0),
    RIGHT(0, 1),
    BELOW(1, 0);

    final int rowStep;
    final int columnStep;

    Edge(int rowStep, int columnStep) {
        this.rowStep = rowStep;
        this.columnStep = columnStep;
    }

    /** Sheets lie on their neighbours to the left and above, so these are the edges to cut. */
    public boolean isCut() {
        return this == LEFT || this == ABOVE;
    }

    boolean isUpright() {
        return rowStep == 0;
    }
}
