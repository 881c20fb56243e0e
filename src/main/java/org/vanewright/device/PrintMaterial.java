package org.vanewright.device;

import org.vanewright.engineering.printing.Softening;
import org.vanewright.engineering.printing.Softening.UvStanding;

/**
 * Classes of material that such pieces are printed in: the density of the solid material, the range of temperatures in
 * which its grades soften (glass transition or heat deflection at 0.45 MPa, the lower end of either), and how it stands
 * sunlight. The figures are typical ones from memory; the data sheet of the material at hand decides.
 */
public enum PrintMaterial {
    ABS("ABS", 1030, 1070, new Softening(85, 108, UvStanding.POOR)),
    ASA("ASA", 1050, 1080, new Softening(85, 105, UvStanding.GOOD)),
    PETG("PETG", 1240, 1290, new Softening(65, 82, UvStanding.FAIR)),
    PLA("PLA", 1230, 1260, new Softening(50, 60, UvStanding.POOR)),
    NYLON("Nylon (PA 6, PA 12)", 1000, 1150, new Softening(120, 175, UvStanding.FAIR)),
    POLYCARBONATE("Polycarbonate", 1180, 1220, new Softening(115, 150, UvStanding.FAIR)),
    PHOTOPOLYMER("Photopolymer resin", 1100, 1220, new Softening(45, 80, UvStanding.POOR));

    private final String label;
    private final double lowKgM3;
    private final double highKgM3;
    private final Softening softening;

    PrintMaterial(String label, double lowKgM3, double highKgM3, Softening softening) {
        this.label = label;
        this.lowKgM3 = lowKgM3;
        this.highKgM3 = highKgM3;
        this.softening = softening;
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

    /** The middle of the range of densities. */
    public double usualKgM3() {
        return (lowKgM3 + highKgM3) / 2;
    }

    public Softening softening() {
        return softening;
    }
}
