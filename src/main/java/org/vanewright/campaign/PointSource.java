package org.vanewright.campaign;

/** How a test point came into the record. */
public enum PointSource {
    TYPED("typed"),
    IMPORTED("from a file"),
    LOGGED("from a recorded log");

    private final String label;

    PointSource(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
