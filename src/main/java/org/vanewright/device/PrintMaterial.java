package org.vanewright.device;

/**
 * Classes of material that such pieces are printed in, with the density of the solid material. The figures are typical
 * ones from memory; the data sheet of the material at hand decides.
 */
public enum PrintMaterial {
    ABS("ABS", 1030, 1070),
    ASA("ASA", 1050, 1080),
    PETG("PETG", 1240, 1290),
    PLA("PLA", 1230, 1260),
    NYLON("Nylon (PA 6, PA 12)", 1000, 1150),
    POLYCARBONATE("Polycarbonate", 1180, 1220),
    PHOTOPOLYMER("Photopolymer resin", 1100, 1220);

    private final String label;
    private final double lowKgM3;
    private final double highKgM3;

    PrintMaterial(String label, double lowKgM3, double highKgM3) {
        this.label = label;
        this.lowKgM3 = lowKgM3;
        this.highKgM3 = highKgM3;
    }

    public String label() {
        return label;
    }

    public double lowKgM3() {
        return lowKgM3;
    }

    public double highKgM3() {
        return highKgM3;
    }
}
