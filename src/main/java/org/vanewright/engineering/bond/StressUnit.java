package org.vanewright.engineering.bond;

/** Units of a force over an area of the bond; exact by the definitions named at {@link LineLoadUnit}. */
public enum StressUnit {
    KPA("kPa", 1),
    MPA("MPa", 1_000),
    PSI("psi", Exact.POUND_FORCE_N / (Exact.INCH_CM * Exact.INCH_CM) * 10);

    private final String symbol;
    private final double inKPa;

    StressUnit(String symbol, double inKPa) {
        this.symbol = symbol;
        this.inKPa = inKPa;
    }

    public String symbol() {
        return symbol;
    }

    /** A value in this unit, in kPa. */
    public double toKPa(double given) {
        return given * inKPa;
    }

    /** A value in kPa, in this unit. */
    public double fromKPa(double kPa) {
        return kPa / inKPa;
    }
}
