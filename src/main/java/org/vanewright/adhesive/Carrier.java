package org.vanewright.adhesive;

/**
 * What carries the adhesive. Each comes with a stiffness through its thickness for adhesives that state none: engineering
 * judgement, no source.
 */
public enum Carrier {
    FOAM("Foam", 600),
    FILM("Film", 5_000),
    GEL("Gel-like, clear", 1_000),
    NONE("None: glue", 1_000_000);

    private final String label;
    private final double usualModulusKPa;

    Carrier(String label, double usualModulusKPa) {
        this.label = label;
        this.usualModulusKPa = usualModulusKPa;
    }

    public String label() {
        return label;
    }

    /** Tensile modulus through the thickness where none is stated. */
    public double usualModulusKPa() {
        return usualModulusKPa;
    }
}
